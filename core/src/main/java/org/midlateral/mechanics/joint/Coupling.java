package org.midlateral.mechanics.joint;

/**
 * A spring between the finger and the pieces, or between pieces. It is closed by
 *
 * <pre>even (cos a - 1) + odd sin a - (what its unit force does on the pieces) - gap</pre>
 *
 * with a the angle by which the joint has flexed. A spring whose one end is on the proximal part of
 * the finger, or not on the finger at all, has neither even nor odd.
 *
 * @param law its force
 * @param even mm
 * @param odd mm
 * @param gap to be closed first (mm)
 */
record Coupling(SpringLaw law, double even, double odd, double gap) {

  /** A spring with no end on the distal part of the finger. */
  static Coupling fixed(SpringLaw law, double gap) {
    return new Coupling(law, 0, 0, gap);
  }

  /** The same place under another law. */
  Coupling with(SpringLaw other) {
    return new Coupling(other, even, odd, gap);
  }

  /** How far the finger closes it. */
  double finger(Flexed joint) {
    return odd * joint.sin - even * joint.versine;
  }

  double fingerRate(Flexed joint) {
    return odd * joint.cos - even * joint.sin;
  }

  double fingerBend(Flexed joint) {
    return -odd * joint.sin - even * joint.cos;
  }

  /**
   * A joint flexed by an angle.
   *
   * @param sin of the angle
   * @param cos of the angle
   * @param versine 1 - cos, without cancellation
   */
  record Flexed(double sin, double cos, double versine) {
    static Flexed by(double angle) {
      double half = Math.sin(angle / 2);
      return new Flexed(Math.sin(angle), Math.cos(angle), 2 * half * half);
    }
  }
}
