package org.midlateral.mesh.plane;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;

class PlanePointsTest {
  @Test
  void turnsAndCirclesOfASquare() {
    PlanePoints square = new PlanePoints(new double[] {0, 1, 1, 0}, new double[] {0, 0, 1, 1});
    int inside = square.add(0.5, 0.25);
    int outside = square.add(1.25, 0.5);

    assertThat(square.turn(0, 1, 2)).isEqualTo(1);
    assertThat(square.turn(0, 2, 1)).isEqualTo(-1);
    assertThat(square.turn(1, 1, 2)).isZero();
    assertThat(square.inCircle(0, 1, 2, 3)).isZero();
    assertThat(square.inCircle(0, 1, 2, inside)).isEqualTo(1);
    assertThat(square.inCircle(0, 1, 2, outside)).isEqualTo(-1);
    assertThat(square.size()).isEqualTo(6);
  }

  /** The outside check: java.math.BigDecimal, on points nearly on one line. */
  @Test
  void turnsAsInDecimalArithmeticWhereDoublesCannotTell() {
    Random random = new Random(17);
    int zeros = 0;
    int unlikeDoubles = 0;
    for (int n = 0; n < 3000; n++) {
      double[] x = new double[3];
      double[] y = new double[3];
      for (int i = 0; i < 3; i++) {
        x[i] = n % 2 == 0 ? random.nextInt(1000) / 1024.0 : random.nextDouble();
        y[i] = x[i] / 3 * 3;
      }
      int exact = new DecimalPlane(x, y).turn(0, 1, 2);
      zeros += exact == 0 ? 1 : 0;
      unlikeDoubles += exact == (int) Math.signum(x[0] * y[1] - x[1] * y[0]) ? 0 : 1;
      assertThat(new PlanePoints(x, y).turn(0, 1, 2)).isEqualTo(exact);
    }
    assertThat(zeros).isGreaterThan(100);
    assertThat(unlikeDoubles).isGreaterThan(100);
  }

  /** The same on points exactly or nearly on one circle. */
  @Test
  void circlesAsInDecimalArithmeticWhereDoublesCannotTell() {
    Random random = new Random(19);
    int[] signs = new int[3];
    for (int n = 0; n < 3000; n++) {
      double[] x = new double[4];
      double[] y = new double[4];
      double scale = n % 2 == 0 ? 0.125 : 0.1;
      double turned = random.nextDouble();
      for (int i = 0; i < 4; i++) {
        double angle = turned + (i + 0.9 * random.nextDouble()) * Math.PI / 2;
        double[] at = n % 2 == 0 ? IntegerCircle.at(angle) : new double[] {65, angle};
        x[i] = n % 2 == 0 ? scale * at[0] : scale * at[0] * Math.cos(at[1]);
        y[i] = n % 2 == 0 ? scale * at[1] : scale * at[0] * Math.sin(at[1]);
      }
      int exact = new DecimalPlane(x, y).inCircle(0, 1, 2, 3);
      signs[exact + 1]++;
      assertThat(new PlanePoints(x, y).inCircle(0, 1, 2, 3)).isEqualTo(exact);
    }
    for (int count : signs) {
      assertThat(count).isGreaterThan(300);
    }
  }
}
