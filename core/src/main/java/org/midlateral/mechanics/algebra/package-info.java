/**
 * Matrices as the mechanics has them: of rows that know which body they belong to, and dense ones
 * to be eliminated.
 *
 * <p>Promise: plain algebra of real numbers, without units. Knows nothing of fingers.
 */
package org.midlateral.mechanics.algebra;
