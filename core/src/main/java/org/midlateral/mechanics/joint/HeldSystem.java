package org.midlateral.mechanics.joint;

import java.util.List;
import org.midlateral.mechanics.algebra.GroupedRows;

/**
 * A joint, pieces of plastic, and the springs that couple them.
 *
 * @param couplings the springs, n
 * @param rows what each of the moves does at each coupling, n by m and k: the pieces' rigid motions
 *     first, six a piece (1), then the shapes that the plastic bends into, each storing half the
 *     square of its amount
 * @param motions how many of the moves are rigid motions, m
 * @param moment with which the joint flexes
 */
record HeldSystem(List<Coupling> couplings, GroupedRows rows, int motions, JointMoment moment) {

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

  /** Number of moves. */
  int moves() {
    return rows.columns();
  }

  /** Number of shapes that the plastic bends into; none of rigid pieces. */
  int shapes() {
    return moves() - motions;
  }

  HeldSystem with(JointMoment other) {
    return new HeldSystem(couplings, rows, motions, other);
  }
}
