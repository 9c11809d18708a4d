/**
 * How stiff one orthosis is, beside other wraps of the same finger under the same moment.
 *
 * <p>Promise: every curve is made from a real mesh of its own. Input: {@link
 * org.midlateral.recipe.Orthosis}. Output: {@link org.midlateral.recipe.rigidity.Rigidity}; bands
 * under tape error by seeded sampling ({@link org.midlateral.recipe.rigidity.Bands}).
 */
package org.midlateral.recipe.rigidity;
