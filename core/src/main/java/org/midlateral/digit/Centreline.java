package org.midlateral.digit;

import java.util.List;
import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.LegendreRuleFactory;

/**
 * The planar centreline of the finger in x-z: straight along x up to its first bend, and turning to
 * the volar side at each. Its station is its arc length, 0 at the web.
 */
final class Centreline {
  /** So near that a quintic between two knots is off by under 1e-8 mm. */
  private static final double KNOT_SPACING = 0.125;

  // The rule alone: the library's factory of all integrators reckons constants to a thousand
  // digits.
  private static final GaussIntegrator GAUSS =
      new GaussIntegrator(new LegendreRuleFactory().getRule(5));

  private final Bend[] bends;
  private final double first;
  private final int spans;

  /** Quintic in the share of each span, of x and then of z, k by 12, row-major (mm). */
  private final double[] quintic;

  private Centreline(List<Bend> bends, double first, int spans) {
    this.bends = bends.toArray(Bend[]::new);
    this.first = first;
    this.spans = spans;
    this.quintic = new double[12 * spans];
  }

  /** The centreline with these bends; those of no angle are left out. */
  static Centreline of(List<Bend> bends) {
    List<Bend> bent = bends.stream().filter(b -> b.angle() != 0).toList();
    double from = 0;
    double to = 0;
    for (Bend bend : bent) {
      from = Math.min(from, bend.axis() - bend.reach());
      to = Math.max(to, bend.axis() + bend.reach());
    }
    Centreline line = new Centreline(bent, from, (int) Math.ceil((to - from) / KNOT_SPACING) + 1);
    line.fill();
    return line;
  }

  private void fill() {
    double[] at = new double[2];
    for (int k = 0; k < spans; k++) {
      double knot = first + k * KNOT_SPACING;
      double[] step = integrate(knot, knot + KNOT_SPACING);
      double turned = turned(knot);
      double end = turned(knot + KNOT_SPACING);
      double bend = curvature(knot);
      double endBend = curvature(knot + KNOT_SPACING);
      double cos = Math.cos(turned);
      double sin = Math.sin(turned);
      double endCos = Math.cos(end);
      double endSin = Math.sin(end);
      join(12 * k, at[0], step[0], new double[] {cos, endCos, -bend * sin, -endBend * endSin});
      join(
          12 * k + 6, at[1], step[1], new double[] {-sin, -endSin, -bend * cos, -endBend * endCos});
      at[0] += step[0];
      at[1] += step[1];
    }
    double[] web = new double[2];
    point(0, web);
    for (int k = 0; k < spans; k++) {
      quintic[12 * k] -= web[0];
      quintic[12 * k + 6] -= web[1];
    }
  }

  /** The quintic with value and rise over a span, and slopes and bends at its two ends. */
  private void join(int place, double value, double rise, double[] ends) {
    double a1 = ends[0] * KNOT_SPACING;
    double a2 = ends[2] * KNOT_SPACING * KNOT_SPACING / 2;
    double d0 = rise - a1 - a2;
    double d1 = ends[1] * KNOT_SPACING - a1 - 2 * a2;
    double d2 = ends[3] * KNOT_SPACING * KNOT_SPACING - 2 * a2;
    quintic[place] = value;
    quintic[place + 1] = a1;
    quintic[place + 2] = a2;
    quintic[place + 3] = 10 * d0 - 4 * d1 + d2 / 2;
    quintic[place + 4] = -15 * d0 + 7 * d1 - d2;
    quintic[place + 5] = 6 * d0 - 3 * d1 + d2 / 2;
  }

  /**
   * The point at a station.
   *
   * @param point receives x and z (mm)
   */
  void point(double station, double[] point) {
    double along = (station - first) / KNOT_SPACING;
    // Beyond its bends the line is straight, and so is the quintic's first term.
    int k = Math.max(0, Math.min(spans - 1, (int) along));
    double u = along - k;
    boolean within = u >= 0 && u <= 1;
    for (int i = 0; i < 2; i++) {
      int c = 12 * k + 6 * i;
      double[] q = quintic;
      double bent = u * (q[c + 2] + u * (q[c + 3] + u * (q[c + 4] + u * q[c + 5])));
      point[i] = q[c] + u * (q[c + 1] + (within ? bent : 0));
    }
  }

  /** Angle by which the centreline has turned to the volar side at a station (rad). */
  double turned(double station) {
    double turned = 0;
    for (Bend bend : bends) {
      turned += bend.turned(station);
    }
    return turned;
  }

  double curvature(double station) {
    double curvature = 0;
    for (Bend bend : bends) {
      curvature += bend.curvature(station);
    }
    return curvature;
  }

  double curvatureRate(double station) {
    double rate = 0;
    for (Bend bend : bends) {
      rate += bend.curvatureRate(station);
    }
    return rate;
  }

  private double[] integrate(double from, double to) {
    double turned = turned(from);
    if (turned == turned(to)) {
      return new double[] {(to - from) * Math.cos(turned), -(to - from) * Math.sin(turned)};
    }
    double half = (to - from) / 2;
    double middle = (to + from) / 2;
    double sumX = 0;
    double sumZ = 0;
    for (int i = 0; i < GAUSS.getNumberOfPoints(); i++) {
      double angle = turned(middle + half * GAUSS.getPoint(i));
      sumX += GAUSS.getWeight(i) * Math.cos(angle);
      sumZ -= GAUSS.getWeight(i) * Math.sin(angle);
    }
    return new double[] {half * sumX, half * sumZ};
  }
}
