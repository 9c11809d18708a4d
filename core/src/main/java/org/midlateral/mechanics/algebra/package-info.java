/**
 * Matrices as the mechanics has them: of rows that know which body they belong to.
 *
 * <p>Promise: plain products of real numbers, without units. Knows nothing of fingers.
 */
package org.midlateral.mechanics.algebra;
