package org.midlateral.piece;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The envelope against the highest of all circles, each tried at each place. */
class CircleEnvelopeTest {
  private static final double FIRST = -2;
  private static final double STEP = 0.05;
  private static final int PLACES = 500;

  @ParameterizedTest
  @CsvSource({
    // seed, circles, roughness up and down, running back, radius
    "1, 100, 0.05, 0, 3",
    "2, 100, 0.5, 0.2, 3",
    "3, 200, 4, 0.5, 1",
    "4, 12, 2, 0, 0.7",
    "5, 1, 1, 0, 2",
    "6, 40, 9, 3, 2.5"
  })
  void itIsTheHighestOfAll(int seed, int circles, double rough, double back, double radius) {
    Random random = new Random(seed);
    double[] x = new double[circles];
    double[] y = new double[circles];
    for (int i = 0; i < circles; i++) {
      x[i] = 20.0 * i / circles + back * random.nextDouble();
      y[i] = rough * random.nextDouble();
    }
    double[] heights = CircleEnvelope.of(x, y, radius).heights(FIRST, STEP, PLACES);

    double[] tried = new double[PLACES];
    for (int k = 0; k < PLACES; k++) {
      tried[k] = highest(x, y, radius, FIRST + k * STEP);
    }
    for (int k = 0; k < PLACES; k++) {
      if (tried[k] == Double.NEGATIVE_INFINITY) {
        assertThat(heights[k]).isEqualTo(tried[k]);
      } else {
        assertThat(heights[k]).as("place %d", k).isCloseTo(tried[k], within(1e-9));
      }
    }
    assertThat(Arrays.stream(tried).filter(Double::isFinite).count()).isGreaterThan(20);
  }

  private static double highest(double[] x, double[] y, double radius, double at) {
    double highest = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < x.length; i++) {
      double square = radius * radius - (at - x[i]) * (at - x[i]);
      highest = square < 0 ? highest : Math.max(highest, y[i] + Math.sqrt(square));
    }
    return highest;
  }
}
