package org.midlateral.mechanics.joint;

/** A quarter of the finger's round. Of a left hand's finger too, radial is toward the thumb. */
public enum Side {
  VOLAR,
  RADIAL,
  ULNAR,
  DORSAL;

  /** That of an angle of the skin on a right hand, 0 at the volar midline, positive to radial. */
  static Side of(double angle) {
    double size = Math.abs(angle);
    if (size <= Math.PI / 4) {
      return VOLAR;
    }
    if (size >= 3 * Math.PI / 4) {
      return DORSAL;
    }
    return angle > 0 ? RADIAL : ULNAR;
  }
}
