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
  private final double[] largest;

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
    this.groups = List.copyOf(groups);
    largest = new double[columns];
    for (RowGroup group : groups) {
      for (double[] row : group.values) {
        for (int k = 0; k < row.length; k++) {
          int column = group.columns[k];
          largest[column] = Math.max(largest[column], Math.abs(row[k]));
        }
      }
    }
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
    return largest.clone();
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
      double[] theirs = new double[group.rows.length];
      int count = 0;
      for (int r = 0; r < group.rows.length; r++) {
        double weight = weights[group.rows[r]];
        if (weight != 0) {
          weighing[count] = group.values[r];
          theirs[count++] = weight;
        }
      }
      double[][] own = new double[m][m];
      RowSquares.add(own, weighing, theirs, count);
      for (int k = 0; k < m; k++) {
        int row = group.columns[k];
        for (int l = 0; l <= k; l++) {
          sum[group.columns[l]][row] += own[k][l];
        }
      }
    }
  }
}
