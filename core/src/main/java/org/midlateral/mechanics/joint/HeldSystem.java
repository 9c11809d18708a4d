package org.midlateral.mechanics.joint;

import java.util.List;

/**
 * A joint, pieces of plastic, and the springs that couple them.
 *
 * @param couplings the springs, n
 * @param rigid what each rigid motion of a piece does at each coupling, n by m, six a piece (1)
 * @param bending what the shapes that the plastic bends into do there, n by k, each storing half
 *     the square of its amount; null for rigid pieces
 * @param moment with which the joint flexes
 */
record HeldSystem(
    List<Coupling> couplings, double[][] rigid, double[][] bending, JointMoment moment) {

  /** A joint that would flex farther (rad) is not held, and stops there. */
  static final double FARTHEST = Math.toRadians(JointAnswer.FARTHEST);

  /** Stiffness of that stop (N·mm/rad). */
  private static final double STOP = 1e6;

  HeldSystem {
    couplings = List.copyOf(couplings);
  }

  /** Moment of the joint at an angle, less the stop's (N·mm). */
  double pull(double angle) {
    return moment.at(angle) - STOP * Math.max(0, angle - FARTHEST);
  }

  /** By how much that falls per angle (N·mm/rad). */
  double fall(double angle) {
    return moment.fall(angle) + (angle > FARTHEST ? STOP : 0);
  }

  /** Energy of joint and stop at an angle (N·mm). */
  double energy(double angle) {
    double past = Math.max(0, angle - FARTHEST);
    return moment.energy(angle) + STOP * past * past / 2;
  }

  int size() {
    return couplings.size();
  }

  /** Number of rigid motions. */
  int motions() {
    return rigid.length == 0 ? 0 : rigid[0].length;
  }

  /** Number of shapes that the plastic bends into. */
  int shapes() {
    return bending == null || bending.length == 0 ? 0 : bending[0].length;
  }

  /** The same with other laws in the same places. */
  HeldSystem with(List<Coupling> others) {
    return new HeldSystem(others, rigid, bending, moment);
  }

  HeldSystem with(JointMoment other) {
    return new HeldSystem(couplings, rigid, bending, other);
  }

  /** The same with pieces that do not give way. */
  HeldSystem withRigidPieces() {
    return new HeldSystem(couplings, rigid, null, moment);
  }
}
