package org.midlateral.mechanics.algebra;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DenseCholeskyTest {

  @ParameterizedTest
  @CsvSource({"1, 1", "5, 2", "33, 32", "70, 33", "70, 70", "300, 131", "301, 4"})
  void eliminationLeavesTheFactorAndTheRemainder(int size, int own) {
    Random random = new Random(7);
    double[][] matrix = new double[size][size];
    DMatrixRMaj full = new DMatrixRMaj(size, size);
    for (int j = 0; j < size; j++) {
      for (int i = j; i < size; i++) {
        matrix[j][i] = random.nextDouble() + (i == j ? size : 0);
        full.set(i, j, matrix[j][i]);
        full.set(j, i, matrix[j][i]);
      }
    }
    assertThat(DenseCholesky.eliminate(matrix, own, new double[own])).isEqualTo(-1);
    for (int j = 0; j < size; j++) {
      for (int i = j; i < size; i++) {
        double sum = j < own ? 0 : matrix[j][i];
        for (int k = 0; k < Math.min(own, j + 1); k++) {
          sum += matrix[k][i] * matrix[k][j];
        }
        assertThat(sum).isCloseTo(full.get(i, j), within(1e-12 * size));
      }
    }
  }

  /** Against the dense solver of EJML, a general-purpose reference library. */
  @ParameterizedTest
  @ValueSource(ints = {1, 2, 31, 64, 103})
  void solvesWhatADenseSolverSolves(int size) {
    Random random = new Random(size);
    double[][] lower = new double[size][size];
    DMatrixRMaj full = new DMatrixRMaj(size, size);
    DMatrixRMaj right = new DMatrixRMaj(size, 1);
    for (int j = 0; j < size; j++) {
      right.set(j, 0, random.nextDouble() - 0.5);
      for (int i = j; i < size; i++) {
        lower[j][i] = random.nextDouble() - 0.5 + (i == j ? size : 0);
        full.set(i, j, lower[j][i]);
        full.set(j, i, lower[j][i]);
      }
    }
    DMatrixRMaj expected = new DMatrixRMaj(size, 1);
    CommonOps_DDRM.solve(full, right, expected);
    assertThat(CholeskyFactor.of(lower).orElseThrow().solve(right.data))
        .containsExactly(expected.data, within(1e-13));
  }

  @Test
  void whatIsNotPositiveDefiniteHasNoFactor() {
    assertThat(CholeskyFactor.of(new double[][] {{1, 2}, {0, 3}})).isEmpty();
    assertThat(CholeskyFactor.of(new double[][] {{Double.NaN}})).isEmpty();
  }
}
