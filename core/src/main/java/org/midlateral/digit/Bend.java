package org.midlateral.digit;

/**
 * Flexion of the centreline at one joint. Its curvature is a raised cosine, so that it starts and
 * ends smoothly.
 *
 * @param axis station of the joint's axis (mm)
 * @param angle flexion (rad)
 * @param reach half of the bent length (mm)
 */
record Bend(double axis, double angle, double reach) {
  /** The steepest volar curvature times depth that a finger's own skin is given. */
  private static final double SHARPEST = 0.45;

  private static final double LEAST_REACH = 8;

  /**
   * The shortest bend whose volar skin keeps its distance from the centre of curvature.
   *
   * @param depth half-depth of the finger at the joint (mm)
   */
  static Bend at(double axis, double angle, double depth) {
    return new Bend(axis, angle, Math.max(LEAST_REACH, angle * depth / SHARPEST));
  }

  /** Curvature toward the volar side at a station (1/mm). */
  double curvature(double station) {
    double x = (station - axis) / reach;
    return Math.abs(x) >= 1 ? 0 : angle / reach * (1 + Math.cos(Math.PI * x)) / 2;
  }

  /** Derivative of the curvature along the centreline (1/mm²). */
  double curvatureRate(double station) {
    double x = (station - axis) / reach;
    return Math.abs(x) >= 1 ? 0 : -angle / (reach * reach) * Math.PI * Math.sin(Math.PI * x) / 2;
  }

  /** Flexion reached at a station (rad). */
  double turned(double station) {
    double x = Math.max(-1, Math.min(1, (station - axis) / reach));
    return angle * ((x + 1) / 2 + Math.sin(Math.PI * x) / (2 * Math.PI));
  }
}
