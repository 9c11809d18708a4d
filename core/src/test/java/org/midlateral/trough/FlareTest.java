package org.midlateral.trough;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/**
 * The flare against its own closed form, written out a second time: h(u) = H u³ (10 - 15 u + 6 u²)
 * over the distance to the tongue's edge, an ellipse, and its derivatives by the chain rule.
 */
class FlareTest {
  private static final double HEIGHT = 0.8;
  private static final double WIDTH = 5;
  private static final double WEB = 3;
  private static final double LENGTH = 21;
  private static final double HALF = 15.5;
  private static final Flare FLARE = new Flare(HEIGHT, WIDTH, WEB, LENGTH, HALF);

  /** On the tongue's midline the distance to its edge is that along the finger. */
  @Test
  void onTheMidlineItRisesAlongTheFinger() {
    double edge = WEB - LENGTH;
    for (double off = 0.05; off < WIDTH; off += 0.05) {
      double u = 1 - off / WIDTH;
      double[] jet = jet(0, edge + off);

      assertThat(jet[0]).isCloseTo(HEIGHT * rise(u), within(1e-12));
      assertThat(jet[1]).isCloseTo(0, within(1e-9));
      assertThat(jet[2]).isCloseTo(-HEIGHT * slope(u) / WIDTH, within(1e-7));
    }
    // 15/8 of the mean slope, half-way up.
    assertThat(jet(0, edge + WIDTH / 2)[2]).isCloseTo(-15.0 / 8 * HEIGHT / WIDTH, within(1e-8));
  }

  /** Distal of the web clearance the edge is straight, and the flare fades out along it. */
  @Test
  void alongTheFlanksItFadesOut() {
    for (double on = 0; on < WIDTH; on += 0.1) {
      for (double off = 0; off < WIDTH; off += 0.1) {
        double u = 1 - off / WIDTH;
        double v = on / WIDTH;
        for (int side = -1; side <= 1; side += 2) {
          double[] jet = jet(side * (HALF - off), WEB + on);

          assertThat(jet[0]).isCloseTo(HEIGHT * rise(u) * (1 - rise(v)), within(1e-12));
          assertThat(jet[1])
              .isCloseTo(side * HEIGHT * slope(u) / WIDTH * (1 - rise(v)), within(1e-7));
          assertThat(jet[2]).isCloseTo(-HEIGHT * rise(u) * slope(v) / WIDTH, within(1e-7));
        }
      }
    }
  }

  /** Everywhere over the tongue, the chain rule through the ellipse. */
  @Test
  void overTheTongueTheSlopesAreThoseOfTheFormula() {
    int sloping = 0;
    for (double s = WEB - LENGTH; s < WEB; s += 0.31) {
      for (double g = -HALF; g <= HALF; g += 0.29) {
        double[] jet = jet(g, s);
        double[] want = formula(g, s);
        for (int k = 0; k < 3; k++) {
          assertThat(jet[k]).as("at %.2f, %.2f", g, s).isCloseTo(want[k], within(1e-6));
        }
        sloping += jet[1] != 0 && jet[2] != 0 ? 1 : 0;
      }
    }
    assertThat(sloping).isGreaterThan(1000);
  }

  /** Beyond the edge the gap goes on level, and off the flare there is none. */
  @Test
  void outsideItIsLevel() {
    assertThat(jet(0, WEB - LENGTH - 2)).containsExactly(HEIGHT, 0, 0);
    assertThat(jet(HALF + 3, WEB - 1)[0]).isEqualTo(HEIGHT);
    assertThat(jet(0, 0)).containsExactly(0, 0, 0);
    assertThat(jet(0, WEB)).containsExactly(0, 0, 0);
    assertThat(jet(HALF, WEB + WIDTH)).containsExactly(0, 0, 0);
    assertThat(FLARE.uniformAt(WEB + WIDTH - 0.1)).isFalse();
    assertThat(FLARE.uniformAt(WEB + WIDTH + 0.1)).isTrue();
  }

  /** Value and derivatives over the tongue. */
  private static double[] formula(double g, double s) {
    double y = WEB - s;
    double rho = Math.hypot(g / HALF, y / LENGTH);
    if (rho < 1e-9) {
      return new double[3];
    }
    double a = g / (HALF * HALF);
    double b = y / (LENGTH * LENGTH);
    double steep = Math.hypot(a, b);
    double distance = rho * (1 - rho) / steep;
    double u = 1 - distance / WIDTH;
    // d rho = (a dg + b dy) / rho and d steep = (a da + b db) / steep.
    double byGirth = (1 - 2 * rho) / steep * a / rho - distance / steep * a / (HALF * HALF) / steep;
    double byY = (1 - 2 * rho) / steep * b / rho - distance / steep * b / (LENGTH * LENGTH) / steep;
    double fall = -HEIGHT * slope(u) / WIDTH;
    return new double[] {HEIGHT * rise(u), fall * byGirth, -fall * byY};
  }

  private static double rise(double u) {
    double v = Math.max(0, Math.min(1, u));
    return 10 * Math.pow(v, 3) - 15 * Math.pow(v, 4) + 6 * Math.pow(v, 5);
  }

  private static double slope(double u) {
    double v = Math.max(0, Math.min(1, u));
    return 30 * v * v * (1 - v) * (1 - v);
  }

  private static double[] jet(double girth, double station) {
    double[] jet = new double[3];
    FLARE.jet(girth, station, jet);
    return jet;
  }
}
