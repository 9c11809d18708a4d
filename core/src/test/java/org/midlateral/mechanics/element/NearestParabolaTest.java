package org.midlateral.mechanics.element;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class NearestParabolaTest {
  private final NearestParabola parabola = new NearestParabola();

  @Test
  void pointsOfAParabolaGiveIt() {
    SplittableRandom random = new SplittableRandom(7);
    for (int run = 0; run < 100; run++) {
      double xx = random.nextDouble(-0.2, 0.2);
      double yy = random.nextDouble(-0.2, 0.2);
      double xy = random.nextDouble(-0.2, 0.2);
      parabola.clear();
      for (int k = 0; k < 12; k++) {
        double x = random.nextDouble(-3, 3);
        double y = random.nextDouble(-3, 3);
        parabola.add(x, y, 0.1 + 0.3 * x - 0.2 * y + xx * x * x / 2 + yy * y * y / 2 + xy * x * y);
      }
      assertThat(parabola.solve()).isTrue();
      assertThat(parabola.xx()).isCloseTo(xx, within(1e-6));
      assertThat(parabola.yy()).isCloseTo(yy, within(1e-6));
      assertThat(parabola.xy()).isCloseTo(xy, within(1e-6));
    }
  }

  @Test
  void tooFewPointsGiveThePlaneThroughThem() {
    parabola.clear();
    parabola.add(0, 0, 1);
    parabola.add(2, 0, 2);
    parabola.add(0, 1, -1);
    assertThat(parabola.solve()).isTrue();
    assertThat(parabola.xx()).isCloseTo(0, within(1e-4));
    assertThat(parabola.yy()).isCloseTo(0, within(1e-4));
    assertThat(parabola.xy()).isCloseTo(0, within(1e-4));
  }

  @Test
  void whatWasForgottenCountsNoMore() {
    parabola.clear();
    parabola.add(1, 1, 100);
    parabola.clear();
    for (int x = -1; x <= 1; x++) {
      for (int y = -1; y <= 1; y++) {
        parabola.add(x, y, x * x / 2.0);
      }
    }
    assertThat(parabola.solve()).isTrue();
    assertThat(parabola.xx()).isCloseTo(1, within(1e-6));
    assertThat(parabola.yy()).isCloseTo(0, within(1e-6));
  }
}
