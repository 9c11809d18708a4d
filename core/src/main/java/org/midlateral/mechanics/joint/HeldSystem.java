package org.midlateral.mechanics.joint;

import java.util.List;

/**
 * A joint, pieces of plastic, and the springs that couple them.
 *
 * @param couplings the springs, n
 * @param rigid what each rigid motion of a piece does at each coupling, n by m, six a piece (1)
 * @param compliance how far the couplings' places on the pieces give way under each other's unit
 *     force with the pieces held, n by n (mm/N); null for rigid pieces
 * @param moment with which the joint flexes
 */
record HeldSystem(
    List<Coupling> couplings, double[][] rigid, double[][] compliance, JointMoment moment) {

  HeldSystem {
    couplings = List.copyOf(couplings);
  }

  int size() {
    return couplings.size();
  }

  int motions() {
    return rigid.length == 0 ? 0 : rigid[0].length;
  }

  /** The same with other laws in the same places. */
  HeldSystem with(List<Coupling> others) {
    return new HeldSystem(others, rigid, compliance, moment);
  }

  HeldSystem with(JointMoment other) {
    return new HeldSystem(couplings, rigid, compliance, other);
  }

  /** The same with pieces that do not give way. */
  HeldSystem withRigidPieces() {
    return new HeldSystem(couplings, rigid, null, moment);
  }
}
