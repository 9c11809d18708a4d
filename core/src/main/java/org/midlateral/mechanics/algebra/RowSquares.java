package org.midlateral.mechanics.algebra;

import java.util.Arrays;

/** The product of a matrix of rows with itself. */
public final class RowSquares {
  private RowSquares() {}

  /**
   * Adds AᵀWA to the lower triangle of a square matrix: four rows of A at a time, to two rows at
   * once.
   *
   * @param h by rows, as many as a row of A has numbers
   * @param rows of A
   * @param weights the diagonal of W
   * @param count how many of the rows, from the first on
   */
  public static void add(double[][] h, double[][] rows, double[] weights, int count) {
    double[] none = new double[h.length];
    for (int e = 0; e < count; e += 4) {
      double[] a = rows[e];
      double[] b = e + 1 < count ? rows[e + 1] : none;
      double[] c = e + 2 < count ? rows[e + 2] : none;
      double[] d = e + 3 < count ? rows[e + 3] : none;
      double[] w = Arrays.copyOf(Arrays.copyOfRange(weights, e, Math.min(e + 4, count)), 4);
      // Of an odd number of rows the first, of one number, has no partner.
      int k = h.length % 2;
      if (k == 1) {
        h[0][0] +=
            w[0] * a[0] * a[0] + w[1] * b[0] * b[0] + w[2] * c[0] * c[0] + w[3] * d[0] * d[0];
      }
      for (; k < h.length; k += 2) {
        addToPair(h[k], h[k + 1], a, b, c, d, w, k);
      }
    }
  }

  /** Adds to row k and the next, which is longer by one. */
  private static void addToPair(
      double[] first,
      double[] second,
      double[] a,
      double[] b,
      double[] c,
      double[] d,
      double[] w,
      int k) {
    double s = w[0] * a[k];
    double t = w[1] * b[k];
    double u = w[2] * c[k];
    double v = w[3] * d[k];
    double s2 = w[0] * a[k + 1];
    double t2 = w[1] * b[k + 1];
    double u2 = w[2] * c[k + 1];
    double v2 = w[3] * d[k + 1];
    for (int l = 0; l <= k; l++) {
      double al = a[l];
      double bl = b[l];
      double cl = c[l];
      double dl = d[l];
      first[l] += s * al + t * bl + u * cl + v * dl;
      second[l] += s2 * al + t2 * bl + u2 * cl + v2 * dl;
    }
    second[k + 1] += s2 * a[k + 1] + t2 * b[k + 1] + u2 * c[k + 1] + v2 * d[k + 1];
  }
}
