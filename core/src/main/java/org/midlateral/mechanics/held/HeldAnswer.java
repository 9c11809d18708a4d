package org.midlateral.mechanics.held;

import org.midlateral.mechanics.finite.WallFace;

/**
 * How a piece gives way under the load of a held joint, by shell finite elements. An estimate, for
 * comparison of designs.
 *
 * @param unknowns of the equations
 * @param proximalForce on the floor (N)
 * @param distalForce on the floor (N)
 * @param closureForce on the rims, or on the dorsal shell (N)
 * @param deflectionAtPip rise of the floor at the PIP axis over the chord through the middles of
 *     the two zones (mm)
 * @param extensionLost slope of the floor over the proximal zone less that over the distal one
 *     (degrees)
 * @param opening change of the distance between the trough's rims (mm)
 * @param largestStrain on any surface, and where
 * @param reaction largest force of the six supports that take the rigid motion (N); rounding
 * @param energyGap what the load does over the energy stored, less 1; rounding
 */
public record HeldAnswer(
    int unknowns,
    double proximalForce,
    double distalForce,
    double closureForce,
    double deflectionAtPip,
    double extensionLost,
    Opening opening,
    Strain largestStrain,
    double reaction,
    double energyGap) {

  /**
   * Change of the distance between the trough's finished edges: negative where they close up (mm).
   *
   * @param proximal where the flanks begin
   * @param pip at the PIP axis
   * @param distal where the flanks end
   */
  public record Opening(double proximal, double pip, double distal) {}

  /**
   * A principal strain furthest from zero.
   *
   * @param value with its sign, as a share
   * @param station of its place on the skin (mm)
   * @param girth from the volar midline (mm)
   * @param side of the wall
   * @param dorsal whether it is in the dorsal shell
   */
  public record Strain(double value, double station, double girth, WallFace side, boolean dorsal) {}
}
