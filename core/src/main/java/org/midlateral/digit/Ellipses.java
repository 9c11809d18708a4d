package org.midlateral.digit;

import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BrentSolver;
import org.hipparchus.special.elliptic.legendre.LegendreEllipticIntegral;

/**
 * Perimeters of ellipses by the complete elliptic integral of the second kind (DLMF 19.9, 19.30).
 * The integral is the library's; since a mesh asks for it at every station, its values and first
 * two derivatives are tabulated once and joined by quintics, which is exact to rounding.
 */
public final class Ellipses {
  /** The flattest and the deepest section that counts as a finger's. */
  public static final double LEAST_DEPTH_RATIO = 0.55;

  /** See {@link #LEAST_DEPTH_RATIO}. */
  public static final double GREATEST_DEPTH_RATIO = 1.3;

  private static final double FIRST = 0.5;
  private static final double STEP = 0.01;
  private static final int NODES = 91;
  private static final double[][] TABLE = tabulate();

  private Ellipses() {}

  /**
   * Perimeter of the ellipse with half-axes 1 and q.
   *
   * @param q depth to width ratio, positive
   */
  public static double unitPerimeter(double q) {
    return 4 * LegendreEllipticIntegral.bigE(1 - q * q);
  }

  /**
   * Perimeter of the ellipse with half-axes 1 and q, with its first and second derivative by q.
   *
   * @param q depth to width ratio, 0.5 to 1.4
   * @param jet receives the three numbers
   */
  static void unitPerimeter(double q, double[] jet) {
    double at = (q - FIRST) / STEP;
    int k = Math.max(0, Math.min(NODES - 2, (int) at));
    double u = at - k;
    double[] c = TABLE[k];
    jet[0] = c[0] + u * (c[1] + u * (c[2] + u * (c[3] + u * (c[4] + u * c[5]))));
    jet[1] = (c[1] + u * (2 * c[2] + u * (3 * c[3] + u * (4 * c[4] + u * 5 * c[5])))) / STEP;
    jet[2] = (2 * c[2] + u * (6 * c[3] + u * (12 * c[4] + u * 20 * c[5]))) / (STEP * STEP);
  }

  /**
   * Depth to width ratio of the ellipse with a given width and perimeter.
   *
   * @param width full width (mm)
   * @param perimeter (mm)
   * @return the ratio, or NaN where no ellipse has them within the ratios a finger can have
   */
  public static double depthRatio(double width, double perimeter) {
    UnivariateFunction miss = q -> width / 2 * unitPerimeter(q) - perimeter;
    if (miss.value(LEAST_DEPTH_RATIO) > 0 || miss.value(GREATEST_DEPTH_RATIO) < 0) {
      return Double.NaN;
    }
    return new BrentSolver(1e-13).solve(200, miss, LEAST_DEPTH_RATIO, GREATEST_DEPTH_RATIO);
  }

  /** Quintic coefficients of each interval from value, slope and second derivative at its ends. */
  private static double[][] tabulate() {
    double[][] node = new double[NODES][];
    for (int k = 0; k < NODES; k++) {
      node[k] = exact(FIRST + k * STEP);
    }
    double[][] table = new double[NODES - 1][];
    for (int k = 0; k < NODES - 1; k++) {
      double a0 = node[k][0];
      double a1 = node[k][1] * STEP;
      double a2 = node[k][2] * STEP * STEP / 2;
      double d0 = node[k + 1][0] - a0 - a1 - a2;
      double d1 = node[k + 1][1] * STEP - a1 - 2 * a2;
      double d2 = node[k + 1][2] * STEP * STEP - 2 * a2;
      table[k] =
          new double[] {
            a0, a1, a2, 10 * d0 - 4 * d1 + d2 / 2, -15 * d0 + 7 * d1 - d2, 6 * d0 - 3 * d1 + d2 / 2
          };
    }
    return table;
  }

  /** Value and derivatives by q of 4 E(m), m = 1 - q², from DLMF 19.4.2. */
  private static double[] exact(double q) {
    double m = 1 - q * q;
    double e = LegendreEllipticIntegral.bigE(m);
    double e1;
    double e2;
    if (Math.abs(m) < 1e-3) {
      // The closed forms lose digits here; four terms of the power series do not.
      e1 = -Math.PI / 8 * (1 + m * (3.0 / 8 + m * (15.0 / 64 + m * 175.0 / 1024)));
      e2 = -Math.PI / 8 * (3.0 / 8 + m * (15.0 / 32 + m * 525.0 / 1024));
    } else {
      double k = firstKind(m);
      e1 = (e - k) / (2 * m);
      double k1 = (e - (1 - m) * k) / (2 * m * (1 - m));
      e2 = (e1 - k1) / (2 * m) - (e - k) / (2 * m * m);
    }
    return new double[] {4 * e, -8 * q * e1, 16 * q * q * e2 - 8 * e1};
  }

  /**
   * The complete integral of the first kind. For a negative parameter, a section deeper than wide,
   * the library's own is off by up to 1e-4: there it is reduced to a positive one, DLMF 19.7.2.
   */
  private static double firstKind(double m) {
    return m < 0
        ? LegendreEllipticIntegral.bigK(-m / (1 - m)) / Math.sqrt(1 - m)
        : LegendreEllipticIntegral.bigK(m);
  }
}
