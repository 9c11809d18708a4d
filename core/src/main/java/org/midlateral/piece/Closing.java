package org.midlateral.piece;

import java.util.Arrays;

/**
 * The closing of a plane curve by a disc: the lowest curve over it that a disc rolling along from
 * above touches everywhere, so that it bends in with no smaller radius than the disc's (J. Serra,
 * Image Analysis and Mathematical Morphology, 1982: a dilation, then an erosion). It is kept as a
 * cubic B-spline (C. de Boor, A Practical Guide to Splines, 1978), which is smooth where the curve
 * itself has a crease.
 */
final class Closing {
  /** Distance between the disc's centres that are tried (mm). */
  private static final double STEP = 0.05;

  /** Distance between the spline's knots (mm). */
  private static final double KNOT = 0.25;

  /** So far beyond the curve's ends discs may rest on it, over their radius (1). */
  private static final double BEYOND = 0.9;

  private static final int MOST_STEPS = 12;

  private final double radius;
  private final double first;

  /** Height of the disc's centre at rest on the curve, at even places (mm). */
  private final double[] centre;

  private final double start;
  private final double[] spline;

  private Closing(double[] x, double radius) {
    this.radius = radius;
    double from = Arrays.stream(x).min().orElseThrow();
    double to = Arrays.stream(x).max().orElseThrow();
    // Discs touch the ends of a sloping curve from beyond them.
    this.first = from - BEYOND * radius;
    this.centre = new double[(int) ((to - from + 2 * BEYOND * radius) / STEP) + 1];
    Arrays.fill(centre, Double.NEGATIVE_INFINITY);
    this.start = from - 2 * KNOT;
    this.spline = new double[(int) Math.ceil((to - from) / KNOT) + 5];
  }

  /** Keeps the disc's centre so far off some points (mm). */
  private void rest(double[] x, double[] y, double distance) {
    for (int i = 0; i < x.length; i++) {
      int last = high(x[i], distance);
      for (int k = low(x[i], distance); k <= last; k++) {
        double off = first + k * STEP - x[i];
        centre[k] = Math.max(centre[k], y[i] + rise(distance, off));
      }
    }
  }

  private Closing joined() {
    double[] edge = new double[spline.length + 2];
    for (int k = 0; k < edge.length; k++) {
      edge[k] = edge(start + (k - 1) * KNOT);
    }
    for (int k = 0; k < spline.length; k++) {
      // The quasi-interpolant of fourth order: it takes nothing off an even bend.
      spline[k] = (8 * edge[k + 1] - edge[k] - edge[k + 2]) / 6;
    }
    return this;
  }

  /**
   * The closing of the inner surface along the finger.
   *
   * @param curve points no more than a fraction of the radius apart
   * @param radius of the disc (mm)
   */
  static Closing of(Meridians.Meridian curve, double radius) {
    Closing closing = new Closing(curve.x(), radius);
    closing.rest(curve.x(), curve.y(), radius);
    return closing.joined();
  }

  /**
   * The same, nowhere nearer to a curve that lies under it than a distance (mm).
   *
   * @param under with as many points, at the same places
   */
  static Closing over(
      Meridians.Meridian curve, Meridians.Meridian under, double distance, double radius) {
    Closing closing = new Closing(curve.x(), radius);
    closing.rest(curve.x(), curve.y(), radius);
    closing.rest(under.x(), under.y(), radius + distance);
    return closing.joined();
  }

  /** Height of a circle over its middle (mm); at its ends rounding may lead outside. */
  private static double rise(double radius, double off) {
    return Math.sqrt(Math.max(0, radius * radius - off * off));
  }

  private int low(double x, double reach) {
    return Math.max(0, (int) Math.ceil((x - reach - first) / STEP));
  }

  private int high(double x, double reach) {
    return Math.min(centre.length - 1, (int) Math.floor((x + reach - first) / STEP));
  }

  /** Lower edge of all that the discs cover (mm). */
  private double edge(double x) {
    double edge = Double.POSITIVE_INFINITY;
    int last = high(x, radius);
    for (int k = low(x, radius); k <= last; k++) {
      double off = first + k * STEP - x;
      edge = Math.min(edge, centre[k] - rise(radius, off));
    }
    return edge;
  }

  /**
   * How far it lies off the skin.
   *
   * @param curve that was closed
   * @param i a point of it
   * @return the distance along the skin's normal under the point (mm)
   */
  double off(Meridians.Meridian curve, int i) {
    double cos = Math.cos(curve.skinSlope()[i]);
    double sin = Math.sin(curve.skinSlope()[i]);
    double off = curve.off()[i];
    double skinX = curve.x()[i] + off * sin;
    double skinY = curve.y()[i] - off * cos;
    for (int k = 0; k < MOST_STEPS; k++) {
      double x = skinX - off * sin;
      double miss = skinY + off * cos - at(x, false);
      off -= miss / (cos + at(x, true) * sin);
      if (Math.abs(miss) < 1e-9) {
        break;
      }
    }
    return off;
  }

  /** The spline's height (mm), or its slope. */
  private double at(double x, boolean slope) {
    double u = (x - start) / KNOT;
    int k = (int) Math.floor(u);
    double sum = 0;
    for (int i = -1; i <= 2; i++) {
      double c = spline[Math.max(0, Math.min(spline.length - 1, k + i))];
      sum += c * (slope ? BasisSpline.slope(u - k - i) / KNOT : BasisSpline.value(u - k - i));
    }
    return sum;
  }
}
