package org.midlateral.piece;

/** The cubic B-spline on even knots, one apart (C. de Boor, A Practical Guide to Splines, 1978). */
final class BasisSpline {
  private BasisSpline() {}

  /** Its value at a distance from its middle knot. */
  static double value(double t) {
    double a = Math.abs(t);
    if (a >= 2) {
      return 0;
    }
    return a < 1 ? 2.0 / 3 - a * a * (1 - a / 2) : (2 - a) * (2 - a) * (2 - a) / 6;
  }

  static double slope(double t) {
    double a = Math.abs(t);
    if (a >= 2) {
      return 0;
    }
    return Math.signum(t) * (a < 1 ? a * (1.5 * a - 2) : -(2 - a) * (2 - a) / 2);
  }
}
