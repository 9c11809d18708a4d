package org.midlateral.piece;

import java.util.Arrays;
import java.util.Optional;

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

  private final double start;
  private final double[] spline;

  /** Keeps the discs off one curve, or off two. */
  private Closing(
      Meridians.Meridian curve,
      Optional<Meridians.Meridian> under,
      double distance,
      double radius) {
    double from = Arrays.stream(curve.x()).min().orElseThrow();
    double to = Arrays.stream(curve.x()).max().orElseThrow();
    // Discs touch the ends of a sloping curve from beyond them.
    double first = from - BEYOND * radius;
    int discs = (int) ((to - from + 2 * BEYOND * radius) / STEP) + 1;
    double[] centre = CircleEnvelope.of(curve.x(), curve.y(), radius).heights(first, STEP, discs);
    if (under.isPresent()) {
      Meridians.Meridian below = under.get();
      double[] over =
          CircleEnvelope.of(below.x(), below.y(), radius + distance).heights(first, STEP, discs);
      Arrays.setAll(centre, k -> Math.max(centre[k], over[k]));
    }
    this.start = from - 2 * KNOT;
    this.spline = new double[(int) Math.ceil((to - from) / KNOT) + 5];
    // Upside down the lower edge of all that the discs cover is an upper one.
    double[] place = new double[discs];
    Arrays.setAll(place, k -> first + k * STEP);
    double[] height = Arrays.stream(centre).map(y -> -y).toArray();
    double[] edge =
        CircleEnvelope.of(place, height, radius).heights(start - KNOT, KNOT, spline.length + 2);
    for (int k = 0; k < spline.length; k++) {
      // The quasi-interpolant of fourth order: it takes nothing off an even bend.
      spline[k] = (edge[k] + edge[k + 2] - 8 * edge[k + 1]) / 6;
    }
  }

  /**
   * The closing of the inner surface along the finger.
   *
   * @param curve points no more than a fraction of the radius apart
   * @param radius of the disc (mm)
   */
  static Closing of(Meridians.Meridian curve, double radius) {
    return new Closing(curve, Optional.empty(), 0, radius);
  }

  /**
   * The same, nowhere nearer to a curve that lies under it than a distance (mm).
   *
   * @param under with as many points, at the same places
   */
  static Closing over(
      Meridians.Meridian curve, Meridians.Meridian under, double distance, double radius) {
    return new Closing(curve, Optional.of(under), distance, radius);
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
