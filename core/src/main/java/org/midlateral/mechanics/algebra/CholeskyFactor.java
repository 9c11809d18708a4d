package org.midlateral.mechanics.algebra;

import java.util.Optional;

/** A symmetric positive definite matrix, factored to solve equations with it. Immutable. */
public final class CholeskyFactor {
  private final double[][] columns;

  private CholeskyFactor(double[][] columns) {
    this.columns = columns;
  }

  /**
   * Factors a matrix.
   *
   * @param columns n columns of n numbers, of which only the lower triangle is read; kept, and
   *     overwritten
   * @return empty where it is not positive definite
   */
  public static Optional<CholeskyFactor> of(double[][] columns) {
    int failed = DenseCholesky.eliminate(columns, columns.length, new double[columns.length]);
    return failed < 0 ? Optional.of(new CholeskyFactor(columns)) : Optional.empty();
  }

  /**
   * The unknowns of equations.
   *
   * @param right hand side: n numbers
   */
  public double[] solve(double[] right) {
    double[] x = right.clone();
    for (int j = 0; j < x.length; j++) {
      double[] column = columns[j];
      x[j] /= column[j];
      for (int i = j + 1; i < x.length; i++) {
        x[i] -= column[i] * x[j];
      }
    }
    for (int j = x.length - 1; j >= 0; j--) {
      double[] column = columns[j];
      double sum = x[j];
      for (int i = j + 1; i < x.length; i++) {
        sum -= column[i] * x[i];
      }
      x[j] = sum / column[j];
    }
    return x;
  }
}
