package org.midlateral.digit;

import java.util.Arrays;
import java.util.List;

/**
 * Piecewise cubic through given knots, monotone between neighbours, continuous in its first
 * derivative; constant beyond the first knot. F. N. Fritsch and R. E. Carlson, "Monotone Piecewise
 * Cubic Interpolation", SIAM J. Numer. Anal. 17 (1980) 238-246.
 */
final class MonotoneCubic {
  private final double[] x;
  private final double[] y;
  private final double[] slope;

  /** Of each span's cubic in the share of it, over the span: what its square and cube count. */
  private final double[] square;

  private final double[] cube;

  private MonotoneCubic(double[] x, double[] y, double[] slope) {
    this.x = x;
    this.y = y;
    this.slope = slope;
    this.square = new double[x.length - 1];
    this.cube = new double[x.length - 1];
    for (int k = 0; k < square.length; k++) {
      double rise = (y[k + 1] - y[k]) / (x[k + 1] - x[k]);
      square[k] = 3 * rise - 2 * slope[k] - slope[k + 1];
      cube[k] = slope[k] + slope[k + 1] - 2 * rise;
    }
  }

  /**
   * The curve through (x, y). It starts with slope 0, since it is held constant before the first
   * knot, and ends with the slope of the last secant as far as monotony and a bound allow.
   *
   * @param x knots, strictly increasing, at least two
   * @param y values at the knots
   * @param steepest the slope at the last knot, up or down; 0 where it goes on level
   */
  static MonotoneCubic through(double[] x, double[] y, double steepest) {
    int n = x.length;
    double[] secant = new double[n - 1];
    for (int k = 0; k < n - 1; k++) {
      secant[k] = (y[k + 1] - y[k]) / (x[k + 1] - x[k]);
    }
    double[] slope = new double[n];
    slope[n - 1] = Math.max(-steepest, Math.min(steepest, secant[n - 2]));
    for (int k = 1; k < n - 1; k++) {
      slope[k] = secant[k - 1] * secant[k] > 0 ? (secant[k - 1] + secant[k]) / 2 : 0;
    }
    for (int k = 0; k < n - 1; k++) {
      limit(slope, k, secant[k]);
    }
    return new MonotoneCubic(x.clone(), y.clone(), slope);
  }

  /** Shrinks the two slopes of an interval into the circle of radius 3 that keeps it monotone. */
  private static void limit(double[] slope, int k, double secant) {
    if (secant == 0) {
      slope[k] = 0;
      slope[k + 1] = 0;
      return;
    }
    double length = Math.hypot(slope[k] / secant, slope[k + 1] / secant);
    if (length > 3) {
      slope[k] *= 3 / length;
      slope[k + 1] *= 3 / length;
    }
  }

  /**
   * Value, first and second derivative.
   *
   * @param at where; before the first knot the curve is constant, beyond the last one it goes on as
   *     the last cubic does
   * @param jet receives the three numbers
   */
  void jet(double at, double[] jet) {
    if (at <= x[0]) {
      jet[0] = y[0];
      jet[1] = 0;
      jet[2] = 0;
      return;
    }
    int k = span(at);
    double h = x[k + 1] - x[k];
    double u = (at - x[k]) / h;
    jet[0] = value(k, u);
    jet[1] = slope[k] + u * (2 * square[k] + 3 * u * cube[k]);
    jet[2] = (2 * square[k] + 6 * u * cube[k]) / h;
  }

  /** Value alone. */
  double value(double at) {
    if (at <= x[0]) {
      return y[0];
    }
    int k = span(at);
    return value(k, (at - x[k]) / (x[k + 1] - x[k]));
  }

  /** Value at a share of a span. */
  private double value(int k, double u) {
    return y[k] + (x[k + 1] - x[k]) * u * (slope[k] + u * (square[k] + u * cube[k]));
  }

  /** The span that a place lies in; the last one for all beyond. */
  private int span(double at) {
    int k = 0;
    while (k < x.length - 2 && at > x[k + 1]) {
      k++;
    }
    return k;
  }

  /** The knots, increasing: the second derivative jumps there. */
  List<Double> knots() {
    return Arrays.stream(x).boxed().toList();
  }

  double last() {
    return x[x.length - 1];
  }
}
