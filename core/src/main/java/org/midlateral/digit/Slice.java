package org.midlateral.digit;

import org.apache.commons.geometry.euclidean.threed.Vector3D;

/**
 * The skin's section at one station, in the plane normal to the centreline. Points of it are named
 * by an angle-like parameter t: 0 at the volar midline, growing to +y, ±pi at the dorsal midline.
 *
 * <p>Who asks for a point or two takes vectors; loops over a whole mesh take {@link #jet} into an
 * array of their own.
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

  /** The skin's point at t (mm). */
  default Vector3D point(double t) {
    return vector(jet(t), 0);
  }

  /** Derivative of the point by t (mm/rad): along the skin, round the finger. */
  default Vector3D pointByAngle(double t) {
    return vector(jet(t), 3);
  }

  /** Unit normal of the skin at t, away from the finger. */
  default Vector3D normal(double t) {
    double[] jet = jet(t);
    return vector(jet, 3).cross(vector(jet, 6)).normalize();
  }

  /** Curvature of the skin along the finger at t, positive where it bends in (1/mm). */
  default double curvatureAlong(double t) {
    double[] jet = jet(t);
    double x = jet[4] * jet[8] - jet[5] * jet[7];
    double y = jet[5] * jet[6] - jet[3] * jet[8];
    double z = jet[3] * jet[7] - jet[4] * jet[6];
    double square = jet[6] * jet[6] + jet[7] * jet[7] + jet[8] * jet[8];
    return (x * jet[15] + y * jet[16] + z * jet[17]) / Math.sqrt(x * x + y * y + z * z) / square;
  }

  private double[] jet(double t) {
    double[] jet = new double[18];
    jet(t, jet);
    return jet;
  }

  private static Vector3D vector(double[] jet, int at) {
    return Vector3D.of(jet[at], jet[at + 1], jet[at + 2]);
  }
}
