package org.midlateral.digit;

import java.util.List;
import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;

/**
 * The planar centreline of the finger in x-z: straight along x up to its first bend, and turning to
 * the volar side at each. Its station is its arc length, 0 at the web.
 */
final class Centreline {
  private static final double KNOT_SPACING = 1;
  private static final GaussIntegrator GAUSS = new GaussIntegratorFactory().legendre(7);

  private final List<Bend> bends;
  private final double first;
  private final double[] x;
  private final double[] z;

  private Centreline(List<Bend> bends, double first, double[] x, double[] z) {
    this.bends = bends;
    this.first = first;
    this.x = x;
    this.z = z;
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
    int n = (int) Math.ceil((to - from) / KNOT_SPACING) + 1;
    double[] x = new double[n];
    double[] z = new double[n];
    Centreline line = new Centreline(bent, from, x, z);
    for (int k = 1; k < n; k++) {
      double[] step = line.integrate(from + (k - 1) * KNOT_SPACING, from + k * KNOT_SPACING);
      x[k] = x[k - 1] + step[0];
      z[k] = z[k - 1] + step[1];
    }
    double[] web = new double[2];
    line.point(0, web);
    for (int k = 0; k < n; k++) {
      x[k] -= web[0];
      z[k] -= web[1];
    }
    return line;
  }

  /**
   * The point at a station.
   *
   * @param point receives x and z (mm)
   */
  void point(double station, double[] point) {
    int k = (int) Math.floor((station - first) / KNOT_SPACING);
    k = Math.max(0, Math.min(x.length - 1, k));
    double knot = first + k * KNOT_SPACING;
    double[] step = integrate(knot, station);
    point[0] = x[k] + step[0];
    point[1] = z[k] + step[1];
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
