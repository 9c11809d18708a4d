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

  double finger(double angle) {
    // cos a - 1, without cancellation.
    double half = Math.sin(angle / 2);
    return odd * Math.sin(angle) - 2 * even * half * half;
  }

  double fingerRate(double angle) {
    return odd * Math.cos(angle) - even * Math.sin(angle);
  }

  double fingerBend(double angle) {
    return -odd * Math.sin(angle) - even * Math.cos(angle);
  }
}
