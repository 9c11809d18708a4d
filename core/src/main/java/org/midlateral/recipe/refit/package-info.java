/**
 * How a piece made from one set of measurements sits on a finger measured later.
 *
 * <p>Promise: told by station and side, tight, fits or loose. Output: {@link
 * org.midlateral.recipe.refit.Refit}. Millimetres.
 */
package org.midlateral.recipe.refit;
