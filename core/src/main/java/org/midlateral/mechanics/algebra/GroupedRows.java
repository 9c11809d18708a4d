package org.midlateral.mechanics.algebra;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A matrix of groups of rows, each group zero but in some columns: of two bodies that touch in few
 * places, most rows know of one body only. Products leave out what is zero in a whole group.
 * Immutable; may be shared between threads.
 */
public final class GroupedRows {
  private final int rows;
  private final int columns;
  private final List<RowGroup> groups;

  /**
   * Rows that are zero in the same columns.
   *
   * @param rows their numbers in the whole, rising
   * @param columns in which some of them is not zero, rising
   * @param values for each of the rows a number for each of the columns
   */
  private record RowGroup(int[] rows, int[] columns, double[][] values) {
    static RowGroup of(double[][] matrix, int[] rows) {
      int[] columns = new int[matrix[rows[0]].length];
      int count = 0;
      for (int k = 0; k < columns.length; k++) {
        if (isUsed(matrix, rows, k)) {
          columns[count++] = k;
        }
      }
      columns = Arrays.copyOf(columns, count);
      double[][] values = new double[rows.length][columns.length];
      for (int r = 0; r < rows.length; r++) {
        for (int k = 0; k < columns.length; k++) {
          values[r][k] = matrix[rows[r]][columns[k]];
        }
      }
      return new RowGroup(rows, columns, values);
    }

    private static boolean isUsed(double[][] matrix, int[] rows, int column) {
      for (int row : rows) {
        if (matrix[row][column] != 0) {
          return true;
        }
      }
      return false;
    }
  }

  private GroupedRows(int rows, int columns, List<RowGroup> groups) {
    this.rows = rows;
    this.columns = columns;
    this.groups = groups;
  }

  /**
   * A matrix by its rows.
   *
   * @param matrix a row each, all of one length
   * @param groups a label for each row: rows of the same one are expected to be zero in the same
   *     columns, which makes products quick, and changes none
   */
  public static GroupedRows of(double[][] matrix, int[] groups) {
    Map<Integer, List<Integer>> labelled = new LinkedHashMap<>();
    for (int row = 0; row < matrix.length; row++) {
      labelled.computeIfAbsent(groups[row], label -> new ArrayList<>()).add(row);
    }
    List<RowGroup> all = new ArrayList<>();
    for (List<Integer> of : labelled.values()) {
      all.add(RowGroup.of(matrix, of.stream().mapToInt(Integer::intValue).toArray()));
    }
    return new GroupedRows(matrix.length, matrix.length == 0 ? 0 : matrix[0].length, all);
  }

  /** Number of columns. */
  public int columns() {
    return columns;
  }

  /** The largest number in each column, without its sign. */
  public double[] largest() {
    double[] largest = new double[columns];
    for (RowGroup group : groups) {
      for (double[] row : group.values) {
        for (int k = 0; k < row.length; k++) {
          int column = group.columns[k];
          largest[column] = Math.max(largest[column], Math.abs(row[k]));
        }
      }
    }
    return largest;
  }

  /** The product with a column: a number for each row. */
  public double[] times(double[] column) {
    double[] product = new double[rows];
    for (RowGroup group : groups) {
      double[] own = new double[group.columns.length];
      for (int k = 0; k < own.length; k++) {
        own[k] = column[group.columns[k]];
      }
      int r = 0;
      for (; r + 3 < group.rows.length; r += 4) {
        four(group, r, own, product);
      }
      for (; r < group.rows.length; r++) {
        double[] row = group.values[r];
        double sum = 0;
        for (int k = 0; k < own.length; k++) {
          sum += row[k] * own[k];
        }
        product[group.rows[r]] = sum;
      }
    }
    return product;
  }

  /** Four sums at once: each waits for its own addition before. */
  private static void four(RowGroup group, int r, double[] own, double[] product) {
    double[] a = group.values[r];
    double[] b = group.values[r + 1];
    double[] c = group.values[r + 2];
    double[] d = group.values[r + 3];
    double first = 0;
    double second = 0;
    double third = 0;
    double fourth = 0;
    for (int k = 0; k < own.length; k++) {
      double x = own[k];
      first += a[k] * x;
      second += b[k] * x;
      third += c[k] * x;
      fourth += d[k] * x;
    }
    product[group.rows[r]] = first;
    product[group.rows[r + 1]] = second;
    product[group.rows[r + 2]] = third;
    product[group.rows[r + 3]] = fourth;
  }

  /** The product of the transposed matrix with weights of the rows: a number for each column. */
  public double[] weighted(double[] weights) {
    double[] product = new double[columns];
    for (RowGroup group : groups) {
      double[] own = new double[group.columns.length];
      for (int r = 0; r < group.rows.length; r++) {
        double weight = weights[group.rows[r]];
        if (weight != 0) {
          double[] row = group.values[r];
          for (int k = 0; k < own.length; k++) {
            own[k] += weight * row[k];
          }
        }
      }
      for (int k = 0; k < own.length; k++) {
        product[group.columns[k]] += own[k];
      }
    }
    return product;
  }

  /**
   * Adds AᵀWA to the lower triangle of a square matrix.
   *
   * @param weights the diagonal of W, a number for each row
   * @param sum by columns; its first columns and rows are those of this matrix's columns
   */
  public void addSquares(double[] weights, double[][] sum) {
    for (RowGroup group : groups) {
      int m = group.columns.length;
      double[][] weighing = new double[group.rows.length][];
      // Three more, so that the last four are whole.
      double[] theirs = new double[group.rows.length + 3];
      int count = 0;
      for (int r = 0; r < group.rows.length; r++) {
        double weight = weights[group.rows[r]];
        if (weight != 0) {
          weighing[count] = group.values[r];
          theirs[count++] = weight;
        }
      }
      double[][] own = new double[m][m];
      addSquares(own, weighing, theirs, count);
      for (int k = 0; k < m; k++) {
        int row = group.columns[k];
        for (int l = 0; l <= k; l++) {
          sum[group.columns[l]][row] += own[k][l];
        }
      }
    }
  }

  /** Adds some rows' squares to the lower triangle, four at a time, to two rows at once. */
  private static void addSquares(double[][] h, double[][] rows, double[] weights, int count) {
    double[] none = new double[h.length];
    for (int e = 0; e < count; e += 4) {
      double[] a = rows[e];
      double[] b = e + 1 < count ? rows[e + 1] : none;
      double[] c = e + 2 < count ? rows[e + 2] : none;
      double[] d = e + 3 < count ? rows[e + 3] : none;
      double[] w = Arrays.copyOfRange(weights, e, e + 4);
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
