package org.midlateral.mechanics.algebra;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Against the dense products of EJML, a general-purpose reference library. */
class GroupedRowsTest {

  /** Rows of three groups, as of one body, of another, and of both; shapes of the second odd. */
  private static double[][] matrix(int rows, int first, int second, SplittableRandom random) {
    double[][] matrix = new double[rows][first + second];
    for (int r = 0; r < rows; r++) {
      for (int k = 0; k < first + second; k++) {
        boolean zero = r % 3 == 0 && k >= first || r % 3 == 1 && k < first;
        matrix[r][k] = zero ? 0 : random.nextDouble(-1, 1);
      }
    }
    return matrix;
  }

  @ParameterizedTest
  @CsvSource({"1, 1, 0", "2, 3, 4", "9, 4, 7", "31, 12, 5"})
  void productsAreThoseOfTheWholeMatrix(int rows, int first, int second) {
    SplittableRandom random = new SplittableRandom(rows);
    double[][] matrix = matrix(rows, first, second, random);
    int[] groups = new int[rows];
    double[] weights = new double[rows];
    for (int r = 0; r < rows; r++) {
      groups[r] = r % 3;
      weights[r] = r % 4 == 3 ? 0 : random.nextDouble(0.1, 2);
    }
    double[] column = random.doubles(first + second, -1, 1).toArray();
    GroupedRows grouped = GroupedRows.of(matrix, groups);
    DMatrixRMaj a = new DMatrixRMaj(matrix);
    DMatrixRMaj product = new DMatrixRMaj(rows, 1);
    CommonOps_DDRM.mult(a, new DMatrixRMaj(column), product);
    DMatrixRMaj transposed = new DMatrixRMaj(first + second, 1);
    CommonOps_DDRM.multTransA(a, new DMatrixRMaj(weights), transposed);
    DMatrixRMaj squares = new DMatrixRMaj(first + second, first + second);
    DMatrixRMaj weighed = new DMatrixRMaj(rows, first + second);
    CommonOps_DDRM.mult(CommonOps_DDRM.diag(weights), a, weighed);
    CommonOps_DDRM.multTransA(a, weighed, squares);

    assertThat(grouped.columns()).isEqualTo(first + second);
    assertThat(grouped.times(column)).containsExactly(product.data, within(1e-13));
    assertThat(grouped.weighted(weights)).containsExactly(transposed.data, within(1e-13));
    int width = first + second + 1;
    double[][] sum = new double[width][width];
    grouped.addSquares(weights, sum);
    for (int k = 0; k < width; k++) {
      for (int l = 0; l < width; l++) {
        double whole = l <= k && k < width - 1 ? squares.get(k, l) : 0;
        assertThat(sum[l][k]).isCloseTo(whole, within(1e-13));
      }
    }
    double[] largest = grouped.largest();
    for (int k = 0; k < first + second; k++) {
      assertThat(largest[k])
          .isEqualTo(CommonOps_DDRM.elementMaxAbs(CommonOps_DDRM.extractColumn(a, k, null)));
    }
  }

  @ParameterizedTest
  @CsvSource({"7", "8"})
  void labelsChangeNoProduct(int rows) {
    SplittableRandom random = new SplittableRandom(rows);
    double[][] matrix = matrix(rows, 3, 2, random);
    double[] column = random.doubles(5, -1, 1).toArray();
    GroupedRows together = GroupedRows.of(matrix, new int[rows]);
    int[] apart = IntStream.range(0, rows).toArray();

    assertThat(together.times(column))
        .containsExactly(GroupedRows.of(matrix, apart).times(column), within(1e-15));
  }
}
