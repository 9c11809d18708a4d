package org.midlateral.mesh.plane;

import java.util.Arrays;
import org.midlateral.mesh.ExactSum;

/**
 * Points of the plane by number, and how they lie to one another, exactly: a determinant in doubles
 * where its size clears the bound of its rounding error, else the same determinant without rounding
 * (J. R. Shewchuk, "Adaptive precision floating-point arithmetic and fast robust geometric
 * predicates", Discrete Comput. Geom. 18 (1997) 305-363; errors bounded by 4 and 11 units of 2^-53
 * of the permanent).
 */
public final class PlanePoints {
  private static final double ULP = 0x1p-53;
  private static final double TURN_BOUND = 4 * ULP;
  private static final double CIRCLE_BOUND = 11 * ULP;

  private double[] x;
  private double[] y;
  private int size;

  /** Points with these coordinates, numbered as they come. */
  public PlanePoints(double[] x, double[] y) {
    this.x = x.clone();
    this.y = y.clone();
    this.size = x.length;
  }

  /** Adds a point; returns its number. */
  int add(double atX, double atY) {
    if (size == x.length) {
      x = Arrays.copyOf(x, size + size / 8 + 16);
      y = Arrays.copyOf(y, x.length);
    }
    x[size] = atX;
    y[size] = atY;
    return size++;
  }

  /** Takes out the point that was added last. */
  void removeLast() {
    size--;
  }

  public int size() {
    return size;
  }

  /**
   * The turn of a, b, c.
   *
   * @return 1 counter-clockwise, -1 clockwise, 0 on one line
   */
  public int turn(int a, int b, int c) {
    double left = (x[b] - x[a]) * (y[c] - y[a]);
    double right = (y[b] - y[a]) * (x[c] - x[a]);
    double turn = left - right;
    double bound = TURN_BOUND * (Math.abs(left) + Math.abs(right));
    if (turn > bound) {
      return 1;
    }
    if (turn < -bound) {
      return -1;
    }
    return bound == 0 ? 0 : exactTurn(a, b, c);
  }

  /**
   * How point d lies to the circle through a, b, c, which turn counter-clockwise.
   *
   * @return 1 inside, -1 outside, 0 on the circle
   */
  public int inCircle(int a, int b, int c, int d) {
    double dx = x[d];
    double dy = y[d];
    double ax = x[a] - dx;
    double ay = y[a] - dy;
    double bx = x[b] - dx;
    double by = y[b] - dy;
    double cx = x[c] - dx;
    double cy = y[c] - dy;
    double bc = bx * cy;
    double cb = cx * by;
    double ca = cx * ay;
    double ac = ax * cy;
    double ab = ax * by;
    double ba = bx * ay;
    double aa = ax * ax + ay * ay;
    double bb = bx * bx + by * by;
    double cc = cx * cx + cy * cy;
    double inside = aa * (bc - cb) + bb * (ca - ac) + cc * (ab - ba);
    double bound =
        CIRCLE_BOUND
            * (aa * (Math.abs(bc) + Math.abs(cb))
                + bb * (Math.abs(ca) + Math.abs(ac))
                + cc * (Math.abs(ab) + Math.abs(ba)));
    if (inside > bound) {
      return 1;
    }
    if (inside < -bound) {
      return -1;
    }
    return bound == 0 ? 0 : exactInCircle(a, b, c, d);
  }

  /** The determinant of the rows x, y, 1. */
  private int exactTurn(int... p) {
    ExactSum sum = new ExactSum();
    for (int i = 0; i < 3; i++) {
      int q = p[i];
      int r = p[(i + 1) % 3];
      sum.addProduct(x[q], y[r]);
      sum.addProduct(-x[r], y[q]);
    }
    return sum.sign();
  }

  /** The determinant of the rows x, y, x^2 + y^2, 1, by all permutations i, j, k, l. */
  private int exactInCircle(int... p) {
    ExactSum sum = new ExactSum();
    for (int i = 0; i < 4; i++) {
      for (int j = 0; j < 4; j++) {
        for (int k = 0; k < 4; k++) {
          int l = 6 - i - j - k;
          int sign = Integer.signum((j - i) * (k - i) * (k - j) * (l - i) * (l - j) * (l - k));
          if (sign != 0) {
            double signed = sign * x[p[i]];
            sum.addProduct(signed, y[p[j]], x[p[k]], x[p[k]]);
            sum.addProduct(signed, y[p[j]], y[p[k]], y[p[k]]);
          }
        }
      }
    }
    return sum.sign();
  }
}
