package org.midlateral.mesh;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.Random;
import org.junit.jupiter.api.Test;

class OrientationTest {
  @Test
  void sidesOfAPlaneAndTurnsOfALine() {
    double[] p = {0, 0, 0, 1, 0, 0, 0, 1, 0, 0.2, 0.2, 1, 0.2, 0.2, -1, 7, 9, 0};
    assertThat(ExactOrientation.space(p, 0, 1, 2, 3)).isEqualTo(1);
    assertThat(ExactOrientation.space(p, 0, 1, 2, 4)).isEqualTo(-1);
    assertThat(ExactOrientation.space(p, 0, 1, 2, 5)).isZero();
    assertThat(ExactOrientation.plane(p, 0, 1, 2, 0, 1)).isEqualTo(1);
    assertThat(ExactOrientation.plane(p, 0, 2, 1, 0, 1)).isEqualTo(-1);
  }

  /** The outside check: java.math.BigDecimal, on points that are nearly in one plane. */
  @Test
  void agreesWithDecimalArithmeticWhereDoublesCannotTell() {
    Random random = new Random(11);
    int zeros = 0;
    int unlikeDoubles = 0;
    for (int n = 0; n < 3000; n++) {
      double[] p = nearlyFlat(random, n % 2 == 0);
      int exact = decimal(p).signum();
      zeros += exact == 0 ? 1 : 0;
      unlikeDoubles += exact == (int) Math.signum(naive(p)) ? 0 : 1;
      assertThat(ExactOrientation.space(p, 0, 1, 2, 3)).isEqualTo(exact);
    }
    assertThat(zeros).isGreaterThan(100);
    assertThat(unlikeDoubles).isGreaterThan(100);
  }

  /** Four points of the plane z = x + y or of one near it, as floats or as doubles. */
  private static double[] nearlyFlat(Random random, boolean floats) {
    double[] p = new double[12];
    for (int i = 0; i < 12; i += 3) {
      p[i] = floats ? (float) random.nextDouble() : random.nextDouble();
      p[i + 1] = floats ? (float) random.nextDouble() : random.nextDouble();
      p[i + 2] = p[i] + p[i + 1];
    }
    return p;
  }

  private static double naive(double[] p) {
    double[] d = new double[9];
    for (int i = 0; i < 9; i++) {
      d[i] = p[3 + i] - p[i % 3];
    }
    return d[0] * (d[4] * d[8] - d[5] * d[7])
        + d[1] * (d[5] * d[6] - d[3] * d[8])
        + d[2] * (d[3] * d[7] - d[4] * d[6]);
  }

  private static BigDecimal decimal(double[] p) {
    BigDecimal[] d = new BigDecimal[9];
    for (int i = 0; i < 9; i++) {
      d[i] = new BigDecimal(p[3 + i]).subtract(new BigDecimal(p[i % 3]));
    }
    return d[0].multiply(d[4].multiply(d[8]).subtract(d[5].multiply(d[7])))
        .add(d[1].multiply(d[5].multiply(d[6]).subtract(d[3].multiply(d[8]))))
        .add(d[2].multiply(d[3].multiply(d[7]).subtract(d[4].multiply(d[6]))));
  }
}
