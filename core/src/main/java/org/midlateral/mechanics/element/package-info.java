/**
 * One flat triangle of a shell: its axes, its membrane strains and its bending strains, and the
 * parabola nearest to the points about it.
 *
 * <p>Promise: rows that turn the triangle's 18 local degrees of freedom into strains, as published
 * by Felippa (2003) and Katili (1993); see {@link org.midlateral.mechanics.finite}. Any consistent
 * units; Midlateral uses mm, N, MPa and radians.
 */
package org.midlateral.mechanics.element;
