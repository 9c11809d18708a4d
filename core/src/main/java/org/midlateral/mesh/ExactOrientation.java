package org.midlateral.mesh;

/**
 * On which side of a line or a plane a point lies, exactly: a determinant in doubles where its size
 * clears the bound of its rounding error, else the same determinant without rounding (Shewchuk
 * 1997, errors bounded by 4 and 8 units of 2^-53 of the permanent).
 *
 * <p>Points are numbered in an array of coordinates, n by 3, row-major.
 */
public final class ExactOrientation {
  private static final double ULP = 0x1p-53;
  private static final double BOUND_2 = 4 * ULP;
  private static final double BOUND_3 = 8 * ULP;

  private ExactOrientation() {}

  /**
   * Side of point d seen from the plane a, b, c.
   *
   * @return 1 if a, b, c turn counter-clockwise seen from d, -1 if clockwise, 0 if in one plane
   */
  public static int space(double[] p, int a, int b, int c, int d) {
    int i = 3 * a;
    int j = 3 * b;
    int k = 3 * c;
    int l = 3 * d;
    double ux = p[j] - p[i];
    double uy = p[j + 1] - p[i + 1];
    double uz = p[j + 2] - p[i + 2];
    double vx = p[k] - p[i];
    double vy = p[k + 1] - p[i + 1];
    double vz = p[k + 2] - p[i + 2];
    double wx = p[l] - p[i];
    double wy = p[l + 1] - p[i + 1];
    double wz = p[l + 2] - p[i + 2];
    double xy = ux * vy;
    double yx = uy * vx;
    double yz = uy * vz;
    double zy = uz * vy;
    double zx = uz * vx;
    double xz = ux * vz;
    double det = (yz - zy) * wx + (zx - xz) * wy + (xy - yx) * wz;
    double bound =
        BOUND_3
            * ((Math.abs(yz) + Math.abs(zy)) * Math.abs(wx)
                + (Math.abs(zx) + Math.abs(xz)) * Math.abs(wy)
                + (Math.abs(xy) + Math.abs(yx)) * Math.abs(wz));
    if (det > bound) {
      return 1;
    }
    return det < -bound ? -1 : exactSpace(p, i, j, k, l);
  }

  /**
   * Turn of a, b, c in the plane of the coordinates x and y (each 0, 1 or 2).
   *
   * @return 1 counter-clockwise, -1 clockwise, 0 on one line
   */
  public static int plane(double[] p, int a, int b, int c, int x, int y) {
    int i = 3 * a;
    int j = 3 * b;
    int k = 3 * c;
    double left = (p[j + x] - p[i + x]) * (p[k + y] - p[i + y]);
    double right = (p[j + y] - p[i + y]) * (p[k + x] - p[i + x]);
    double bound = BOUND_2 * (Math.abs(left) + Math.abs(right));
    double det = left - right;
    if (det > bound) {
      return 1;
    }
    return det < -bound ? -1 : exactPlane(p, i, j, k, x, y);
  }

  private static int exactSpace(double[] p, int i, int j, int k, int l) {
    double[][] u = difference(p, j, i);
    double[][] v = difference(p, k, i);
    double[][] w = difference(p, l, i);
    ExactSum det = new ExactSum();
    for (int x = 0; x < 3; x++) {
      int y = (x + 1) % 3;
      int z = (x + 2) % 3;
      addProducts(det, u[x], v[y], w[z], 1);
      addProducts(det, u[z], v[y], w[x], -1);
    }
    return det.sign();
  }

  private static void addProducts(ExactSum sum, double[] u, double[] v, double[] w, int sign) {
    for (double a : u) {
      for (double b : v) {
        for (double c : w) {
          if (a != 0 && b != 0 && c != 0) {
            sum.addProduct(sign * a, b, c);
          }
        }
      }
    }
  }

  private static int exactPlane(double[] p, int i, int j, int k, int x, int y) {
    double[][] u = difference(p, j, i);
    double[][] v = difference(p, k, i);
    ExactSum det = new ExactSum();
    for (int m = 0; m < 2; m++) {
      for (int n = 0; n < 2; n++) {
        det.addProduct(u[x][m], v[y][n]);
        det.addProduct(-u[y][m], v[x][n]);
      }
    }
    return det.sign();
  }

  /** Differences of two points, 3 by 2: rounded value and what the rounding lost. */
  private static double[][] difference(double[] p, int from, int less) {
    double[][] out = new double[3][2];
    for (int x = 0; x < 3; x++) {
      double a = p[from + x];
      double b = p[less + x];
      double high = a - b;
      double part = a - high;
      out[x][0] = high;
      out[x][1] = (a - (high + part)) + (part - b);
    }
    return out;
  }
}
