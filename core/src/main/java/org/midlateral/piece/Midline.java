package org.midlateral.piece;

import org.midlateral.digit.Slice;

/**
 * The midline that a piece counts its own girths and angles from. Those of the skin count from the
 * volar one; from the dorsal one they are half a round away, so that what is 0 on one is an end on
 * the other, and the way back is the way there.
 */
public enum Midline {
  VOLAR,
  DORSAL;

  /** Angle from this midline of an angle of the skin (rad). */
  public double ownAngle(double skin) {
    return this == VOLAR ? skin : skin - Math.copySign(Math.PI, skin);
  }

  /** The skin's angle of an angle from this midline (rad), between -pi and pi. */
  public double skinAngle(double own) {
    double skin = this == VOLAR ? own : own + Math.PI;
    return skin > Math.PI ? skin - 2 * Math.PI : skin;
  }

  /** Girth from this midline of a girth of the skin (mm), in a section so long round (mm). */
  public double ownGirth(double skin, double circumference) {
    return this == VOLAR ? skin : skin - Math.copySign(circumference / 2, skin);
  }

  /** The skin's girth of a girth from this midline (mm), in a section so long round (mm). */
  public double skinGirth(double own, double circumference) {
    return ownGirth(own, circumference);
  }

  /** Angle of a girth (mm) in a section, both from this midline (rad). */
  public double angle(Slice slice, double girth) {
    return ownAngle(slice.angle(skinGirth(girth, slice.circumference())));
  }

  /** Girth of an angle (rad) in a section, both from this midline (mm). */
  public double girth(Slice slice, double angle) {
    return ownGirth(slice.girth(skinAngle(angle)), slice.circumference());
  }
}
