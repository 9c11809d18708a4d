package org.midlateral.mechanics;

import org.midlateral.mechanics.Loading.Force;

/**
 * The three forces that hold the joint against the finger's own pull into flexion. The finger's two
 * ends press volarly on the piece, the closure pulls the piece dorsally round the PIP axis; they
 * balance. On a bent finger the three are taken along the centreline, as if it were straight.
 *
 * @param moment of the finger about the PIP axis (N·mm)
 * @param pip station of the PIP axis (mm)
 * @param proximal where the proximal end presses
 * @param distal where the distal end presses
 * @param closure where the closure presses, over the joint's dorsum
 */
public record ThreePoint(
    double moment, double pip, ContactZone proximal, ContactZone distal, ContactZone closure) {

  /** Distance from the PIP axis to the middle of the proximal zone (mm). */
  public double proximalArm() {
    return pip - proximal.middle();
  }

  /** Distance from the PIP axis to the middle of the distal zone (mm). */
  public double distalArm() {
    return distal.middle() - pip;
  }

  /** Force at the proximal end (N). */
  public double proximalForce() {
    return moment / proximalArm();
  }

  /** Force at the distal end (N). */
  public double distalForce() {
    return moment / distalArm();
  }

  /** Force of the closure at the PIP joint (N): the sum of the two. */
  public double pipForce() {
    return proximalForce() + distalForce();
  }

  /** Mean pressure under the proximal end (MPa). */
  public double proximalPressure() {
    return proximalForce() / proximal.area();
  }

  /** Mean pressure under the distal end (MPa). */
  public double distalPressure() {
    return distalForce() / distal.area();
  }

  /** Mean pressure under the closure (MPa). */
  public double pipPressure() {
    return pipForce() / closure.area();
  }

  /** The forces on the piece. */
  public Loading loading() {
    return Loading.of(
        new Force(-proximalForce(), proximal.middle(), proximal.length()),
        new Force(pipForce(), closure.middle(), closure.length()),
        new Force(-distalForce(), distal.middle(), distal.length()));
  }

  /** Rise of the piece at the PIP axis over the chord through the two zones' middles (mm). */
  public double deflection(SteppedBeam beam) {
    double span = proximalArm() + distalArm();
    Loading unit =
        Loading.of(
            new Force(-distalArm() / span, proximal.middle(), 0),
            new Force(1, pip, 0),
            new Force(-proximalArm() / span, distal.middle(), 0));
    return beam.work(loading(), unit);
  }

  /**
   * Extension lost (rad): mean slope over the proximal zone less mean slope over the distal one; in
   * zones of no length, the rotations of the end sections.
   */
  public double extensionLost(SteppedBeam beam) {
    Loading unit =
        Loading.of()
            .plusSlope(proximal.middle(), proximal.length(), 1)
            .plusSlope(distal.middle(), distal.length(), -1);
    return beam.work(loading(), unit);
  }
}
