package org.midlateral.mechanics.finite;

import java.util.ArrayList;
import java.util.List;

/**
 * The part of a triangle within a length of the finger and an angle.
 *
 * @param triangle its number in the model
 * @param polygon its corners, each as three weights of the triangle's corners
 */
record Clipped(int triangle, List<double[]> polygon) {

  /** Parts of all triangles of one layer that lie in a window. */
  static List<Clipped> of(FingerShell shell, int layer, HeldJoint.Zone zone, double[] turns) {
    Layer l = shell.layer(layer);
    int before = layer == 0 ? 0 : shell.layer(0).corners.length / 3;
    List<Clipped> parts = new ArrayList<>();
    for (int t = 0; t < l.corners.length / 3; t++) {
      double[] s = new double[3];
      double[] turn = new double[3];
      for (int c = 0; c < 3; c++) {
        s[c] = l.station[l.corners[3 * t + c]];
        turn[c] = l.turn[l.corners[3 * t + c]];
      }
      List<double[]> polygon =
          List.of(new double[] {1, 0, 0}, new double[] {0, 1, 0}, new double[] {0, 0, 1});
      polygon = cut(polygon, s, zone.from(), 1);
      polygon = cut(polygon, s, zone.to(), -1);
      polygon = cut(polygon, turn, turns[0], 1);
      polygon = cut(polygon, turn, turns[1], -1);
      if (polygon.size() > 2) {
        parts.add(new Clipped(before + t, polygon));
      }
    }
    return parts;
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
  double[] shares() {
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
