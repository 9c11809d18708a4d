package org.midlateral.digit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.hipparchus.analysis.integration.RombergIntegrator;
import org.junit.jupiter.api.Test;

/** The line against a numerical integral of its direction (Hipparchus, Romberg). */
class CentrelineTest {
  private static final Bend PIP = new Bend(26.5, Math.toRadians(40), 9.3);
  private static final Bend DIP = new Bend(48.2, Math.toRadians(15), 8);

  @Test
  void pointsAreTheIntegralOfTheDirection() {
    Centreline line = Centreline.of(List.of(PIP, DIP));
    double[] point = new double[2];
    for (double s = -25; s < 75; s += 0.37) {
      line.point(s, point);
      assertThat(point[0]).as("x at %s", s).isCloseTo(integral(line, s, true), within(1e-8));
      assertThat(point[1]).as("z at %s", s).isCloseTo(integral(line, s, false), within(1e-8));
    }
  }

  @Test
  void aStraightLineIsStraightToTheLastDigit() {
    Centreline line = Centreline.of(List.of(new Bend(26.5, 0, 8)));
    double[] point = new double[2];
    for (double s : new double[] {-22.5, 0, 0.0625, 31, 70.25}) {
      line.point(s, point);
      assertThat(point).containsExactly(s, 0);
    }
  }

  /** Piece by piece between the places where a bend begins or ends. */
  private static double integral(Centreline line, double station, boolean cosine) {
    double sign = station < 0 ? -1 : 1;
    double[] ends = {17.2, 35.8, 40.2, 56.2, Double.POSITIVE_INFINITY};
    double sum = 0;
    double from = Math.min(0, station);
    double to = Math.max(0, station);
    for (double end : ends) {
      double stop = Math.min(end, to);
      if (stop > from) {
        sum +=
            new RombergIntegrator(1e-13, 1e-12, 4, 20)
                .integrate(
                    100_000,
                    s -> cosine ? Math.cos(line.turned(s)) : -Math.sin(line.turned(s)),
                    from,
                    stop);
        from = stop;
      }
    }
    return sign * sum;
  }
}
