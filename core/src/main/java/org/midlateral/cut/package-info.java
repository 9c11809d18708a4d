/**
 * The cut at the mid-lateral line: the trough's finished edge in the unrolled plane.
 *
 * <p>Promise: the flanks lie at wrap·C/2 on both sides from the web clearance station to the distal
 * corners (invariant G2); nothing of the outline lies proximal of the palmar crease's margin, and
 * proximal of the web clearance station the edge only runs inward (G11); no corner is sharper than
 * 1.5 mm. Input: measurements, the trough's design, the digit surface. Output: {@link
 * org.midlateral.cut.Outline}, a JTS polygon with x = girth and y = station (mm). A design without
 * room is refused ({@link org.midlateral.measurement.DesignRefused}).
 *
 * <p>The unrolled plane keeps girths and stations, not lengths in between; whoever needs true
 * lengths measures on the surface.
 */
package org.midlateral.cut;
