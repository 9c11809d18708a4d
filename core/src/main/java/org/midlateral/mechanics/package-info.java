/**
 * How stiff the pieces are, and with what force and pressure they hold the joint.
 *
 * <p>Promise: every figure comes from the real cut of the solids as they were meshed. A plane
 * normal to the centreline cuts a solid into closed loops; Green's theorem gives area, centroid and
 * second moments; a sweep round the finger gives torsion constant and shear area; a beam of the
 * stations' rigidities gives deflection and extension lost under the three forces that hold the
 * joint.
 *
 * <p>Inputs: {@link org.midlateral.digit.DigitSurface}, {@link org.midlateral.solid.Solid}, {@link
 * org.midlateral.measurement.Material}. Outputs: {@link org.midlateral.mechanics.Section}, {@link
 * org.midlateral.mechanics.Profile}, {@link org.midlateral.mechanics.ThreePoint}. Millimetres, N,
 * MPa, radians.
 *
 * <p>Sources: thin sections and Bredt's formula as in W. D. Pilkey, Analysis and Design of Elastic
 * Beams, Wiley 2002; beams as in any handbook, by virtual work.
 *
 * <p>What it does not do: beam theory does not see the section close up under a strap; the shell
 * finite elements of {@code mechanics.finite} do. Every figure is an estimate, for comparison; none
 * clears a piece for use.
 */
package org.midlateral.mechanics;
