package org.midlateral.mechanics.algebra;

/**
 * Cholesky elimination of the first unknowns of a dense symmetric matrix, in blocks.
 *
 * <p>The matrix is an array of columns, each of full length, of which only the lower triangle is
 * read and written. Separate arrays with one common index are what lets the compiler use the
 * machine's vector instructions.
 */
public final class DenseCholesky {
  /**
   * Columns in a panel: as many as are subtracted at a time. Rows in a tile: they stay in cache.
   */
  private static final int PANEL = 4;

  private static final int TILE = 256;

  private DenseCholesky() {}

  /**
   * Replaces the first {@code own} columns by those of the Cholesky factor and the rest by what
   * remains once they are eliminated.
   *
   * @param columns n columns of n numbers
   * @param own how many to eliminate
   * @param least for each of them the least pivot that is no rounding
   * @return -1, or the first column whose pivot falls short
   */
  public static int eliminate(double[][] columns, int own, double[] least) {
    for (int start = 0; start < own; start += PANEL) {
      int end = Math.min(own, start + PANEL);
      int failed = factorPanel(columns, start, end, least);
      if (failed >= 0) {
        return failed;
      }
      for (int tile = end; tile < columns.length; tile += TILE) {
        updateTile(columns, start, end, tile, Math.min(columns.length, tile + TILE));
      }
    }
    return -1;
  }

  private static int factorPanel(double[][] columns, int start, int end, double[] least) {
    for (int j = start; j < end; j++) {
      double[] column = columns[j];
      update(columns, start, j, j, j, column.length);
      if (!(column[j] > least[j])) {
        return j;
      }
      double pivot = Math.sqrt(column[j]);
      column[j] = pivot;
      double scale = 1 / pivot;
      for (int i = j + 1; i < column.length; i++) {
        column[i] *= scale;
      }
    }
    return -1;
  }

  /** Subtracts a panel's products from the rows of a tile, two columns at a time. */
  private static void updateTile(double[][] columns, int start, int end, int top, int bottom) {
    int j = end;
    for (; j + 1 < bottom; j += 2) {
      // The upper of the two rows at j is not needed by column j + 1; it is scratch there.
      updatePair(columns, start, end, j, Math.max(top, j), bottom);
    }
    if (j < bottom) {
      update(columns, start, end, j, Math.max(top, j), bottom);
    }
  }

  private static void update(double[][] l, int start, int end, int j, int top, int bottom) {
    for (int k = start; k < end; k++) {
      subtract(l[j], l[k], l[k][j], top, bottom);
    }
  }

  private static void updatePair(double[][] l, int start, int end, int j, int top, int bottom) {
    int k = start;
    for (; k + 3 < end; k += 4) {
      double[] a = l[k];
      double[] b = l[k + 1];
      double[] c = l[k + 2];
      double[] d = l[k + 3];
      subtractPair(
          l[j], l[j + 1], a, b, c, d, a[j], b[j], c[j], d[j], a[j + 1], b[j + 1], c[j + 1],
          d[j + 1], top, bottom);
    }
    for (; k < end; k++) {
      subtract(l[j], l[k], l[k][j], top, bottom);
      subtract(l[j + 1], l[k], l[k][j + 1], top, bottom);
    }
  }

  private static void subtract(double[] y, double[] a, double s, int top, int bottom) {
    for (int i = top; i < bottom; i++) {
      y[i] -= s * a[i];
    }
  }

  /** Subtracts four arrays from two, each with its own factors. */
  public static void subtractPair(
      double[] y,
      double[] z,
      double[] a,
      double[] b,
      double[] c,
      double[] d,
      double s,
      double t,
      double u,
      double v,
      double s2,
      double t2,
      double u2,
      double v2,
      int top,
      int bottom) {
    for (int i = top; i < bottom; i++) {
      double ai = a[i];
      double bi = b[i];
      double ci = c[i];
      double di = d[i];
      y[i] -= s * ai + t * bi + u * ci + v * di;
      z[i] -= s2 * ai + t2 * bi + u2 * ci + v2 * di;
    }
  }
}
