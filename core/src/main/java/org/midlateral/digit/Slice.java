package org.midlateral.digit;

/**
 * The skin's section at one station, in the plane normal to the centreline. Points of it are named
 * by an angle-like parameter t: 0 at the volar midline, growing to +y, ±pi at the dorsal midline.
 */
public interface Slice {
  /** Station of the section (mm). */
  double station();

  /** Length round the section (mm). */
  double circumference();

  /** Derivative of the circumference along the station (1). */
  double circumferenceByStation();

  /** Half of the width along y (mm). */
  double halfWidth();

  /** Half of the depth along the dorso-volar direction (mm). */
  double halfDepth();

  /** Girth from the volar midline to the point at t (mm), signed as t. */
  double girth(double t);

  /** Derivative of the girth along the station at constant t (1). */
  double girthAlongStation(double t);

  /** Derivative of the girth by t (mm/rad). */
  double girthByAngle(double t);

  /** The parameter t of the point at a girth (mm), the inverse of {@link #girth}. */
  double angle(double girth);

  /**
   * Position and derivatives of the skin at t.
   *
   * @param jet receives 6 by 3 numbers, row-major: P, P_t, P_s, P_tt, P_ts, P_ss (mm)
   */
  void jet(double t, double[] jet);
}
