package org.midlateral.mechanics.finite;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The part of a triangle where functions that are linear in it keep within limits.
 *
 * @param triangle its number in the model
 * @param polygon its corners, each as three weights of the triangle's corners
 */
public record ClippedTriangle(int triangle, List<double[]> polygon) {

  /** The whole of a triangle. */
  public static ClippedTriangle whole(int triangle) {
    return new ClippedTriangle(
        triangle, List.of(new double[] {1, 0, 0}, new double[] {0, 1, 0}, new double[] {0, 0, 1}));
  }

  /**
   * What of it lies where a function, linear in the triangle, is between two limits; empty where
   * nothing does.
   *
   * @param f the function's values at the triangle's corners
   */
  public Optional<ClippedTriangle> between(double[] f, double low, double high) {
    List<double[]> kept = cut(cut(polygon, f, low, 1), f, high, -1);
    return kept.size() > 2 ? Optional.of(new ClippedTriangle(triangle, kept)) : Optional.empty();
  }

  /** Keeps what lies where sign (f - limit) is positive, f being linear in the triangle. */
  private static List<double[]> cut(List<double[]> polygon, double[] f, double limit, double sign) {
    List<double[]> kept = new ArrayList<>();
    for (int i = 0; i < polygon.size(); i++) {
      double[] a = polygon.get(i);
      double[] b = polygon.get((i + 1) % polygon.size());
      double fa = sign * (value(f, a) - limit);
      double fb = sign * (value(f, b) - limit);
      if (fa >= 0) {
        kept.add(a);
      }
      if (fa > 0 && fb < 0 || fa < 0 && fb > 0) {
        double share = fa / (fa - fb);
        double[] p = new double[3];
        for (int k = 0; k < 3; k++) {
          p[k] = a[k] + share * (b[k] - a[k]);
        }
        kept.add(p);
      }
    }
    return kept;
  }

  private static double value(double[] f, double[] weights) {
    return f[0] * weights[0] + f[1] * weights[1] + f[2] * weights[2];
  }

  /** The integral of each corner's weight over the part, as a share of the triangle's area. */
  public double[] shares() {
    double[] shares = new double[3];
    for (int i = 1; i + 1 < polygon.size(); i++) {
      double[] a = polygon.get(0);
      double[] b = polygon.get(i);
      double[] c = polygon.get(i + 1);
      double area = Math.abs((b[1] - a[1]) * (c[2] - a[2]) - (c[1] - a[1]) * (b[2] - a[2]));
      for (int k = 0; k < 3; k++) {
        shares[k] += area * (a[k] + b[k] + c[k]) / 3;
      }
    }
    return shares;
  }
}
