package org.midlateral.mechanics.finite;

import java.util.ArrayList;
import java.util.List;

/**
 * How the plastic gives way, as few shapes of it: C = L Lᵀ, with a column of L for each shape, so
 * that shapes of amounts a move the couplings' places by L a and store a·a/2.
 *
 * <p>The columns are those of the Cholesky factor with complete pivoting (Higham, Accuracy and
 * Stability of Numerical Algorithms, chapter 10), ended where no place gives way by more than so
 * little: what is left is the dimple under each patch alone, which is hundreds of times as stiff as
 * its skin.
 */
public final class BendingModes {
  private BendingModes() {}

  /**
   * The shapes of a compliance.
   *
   * @param compliance symmetric, n by n (mm/N)
   * @param least that no diagonal of what is left out is more than (mm/N)
   * @return n by k
   */
  public static double[][] of(double[][] compliance, double least) {
    int n = compliance.length;
    double[] rest = new double[n];
    for (int i = 0; i < n; i++) {
      rest[i] = compliance[i][i];
    }
    List<double[]> columns = new ArrayList<>();
    for (int pivot = largest(rest); columns.size() < n && rest[pivot] > least; ) {
      double[] column = compliance[pivot].clone();
      for (double[] before : columns) {
        double share = before[pivot];
        for (int i = 0; i < n; i++) {
          column[i] -= share * before[i];
        }
      }
      double root = Math.sqrt(rest[pivot]);
      for (int i = 0; i < n; i++) {
        column[i] /= root;
        rest[i] = Math.max(0, rest[i] - column[i] * column[i]);
      }
      rest[pivot] = 0;
      columns.add(column);
      pivot = largest(rest);
    }
    double[][] modes = new double[n][columns.size()];
    for (int k = 0; k < columns.size(); k++) {
      for (int i = 0; i < n; i++) {
        modes[i][k] = columns.get(k)[i];
      }
    }
    return modes;
  }

  private static int largest(double[] values) {
    int at = 0;
    for (int i = 1; i < values.length; i++) {
      at = values[i] > values[at] ? i : at;
    }
    return at;
  }
}
