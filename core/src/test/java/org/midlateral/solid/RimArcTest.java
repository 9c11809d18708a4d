package org.midlateral.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.midlateral.accuracy.ErrorBudget;

/** The rim's strips against the half disc of the same radius: area and second moments of area. */
class RimArcTest {
  /**
   * For radius r a half disc has pi r²/2, and pi r⁴/8 about its straight side and about its axis.
   */
  @ParameterizedTest
  @CsvSource({"6, 0.4", "8, 0.8", "10, 0.8", "14, 1.6", "40, 3"})
  void theStripsEncloseTheHalfDiscsArea(int strips, double radius) {
    double[] moments = moments(corners(new RimArc(strips), radius));

    assertThat(moments[0]).isCloseTo(Math.PI * radius * radius / 2, within(1e-12));
    double second = Math.PI * Math.pow(radius, 4) / 8;
    assertThat(moments[1] / second).isCloseTo(1, within(0.02));
    assertThat(moments[2] / second).isCloseTo(1, within(0.02));
  }

  /** What the corners outside the circle are for: fourteen strips on it are further off. */
  @Test
  void eightStripsKeepTheSecondMomentsBetterThanFourteenOnTheCircle() {
    double second = Math.PI / 8;
    double[] eight = moments(corners(new RimArc(8), 1));
    double[][] onCircle = new double[15][2];
    for (int i = 0; i <= 14; i++) {
      onCircle[i] = new double[] {Math.cos(Math.PI * i / 14), Math.sin(Math.PI * i / 14)};
    }
    double[] fourteen = moments(onCircle);
    for (int k = 1; k < 3; k++) {
      assertThat(Math.abs(eight[k] - second)).isLessThan(Math.abs(fourteen[k] - second));
    }
  }

  @Test
  void endsAndCrestStandOnTheCircle() {
    for (int strips = 6; strips <= 30; strips += 2) {
      RimArc arc = new RimArc(strips);
      assertThat(new double[] {arc.radius(0), arc.radius(strips / 2), arc.radius(strips)})
          .containsOnly(1);
      for (int line = 1; line < strips / 2; line++) {
        assertThat(arc.radius(line)).isGreaterThan(1).isEqualTo(arc.radius(strips - line));
      }
    }
  }

  /** The error, measured along every strip. */
  @ParameterizedTest
  @CsvSource({"6, 0.4", "8, 0.8", "10, 0.8", "14, 1.6"})
  void theErrorIsTheGreatestOfAllPlaces(int strips, double radius) {
    double[][] corner = corners(new RimArc(strips), radius);
    double worst = 0;
    for (int i = 0; i < strips; i++) {
      for (int k = 0; k <= 1000; k++) {
        double x = corner[i][0] + (corner[i + 1][0] - corner[i][0]) * k / 1000;
        double y = corner[i][1] + (corner[i + 1][1] - corner[i][1]) * k / 1000;
        worst = Math.max(worst, Math.abs(Math.hypot(x, y) - radius));
      }
    }

    assertThat(new RimArc(strips).error(radius)).isCloseTo(worst, within(1e-4 * radius));
  }

  /**
   * Strips no wider than half an edge, their corners hardly outside; not two more than that takes.
   */
  @Test
  void asManyStripsAsTheRimNeeds() {
    for (double radius = 0.3; radius < 3; radius += 0.05) {
      for (double edge : new double[] {0.4, 0.8, 1.6, 5}) {
        RimArc arc = RimArc.of(radius, edge);

        assertThat(arc.strips()).isGreaterThanOrEqualTo(6).isEven();
        assertThat(outside(arc, radius)).isLessThanOrEqualTo(ErrorBudget.CHORD_ROUND_RIM);
        assertThat(Math.PI * radius / arc.strips()).isLessThanOrEqualTo(0.5 * edge + 1e-12);
        if (arc.strips() > 6) {
          RimArc fewer = new RimArc(arc.strips() - 2);
          boolean enough =
              outside(fewer, radius) <= ErrorBudget.CHORD_ROUND_RIM
                  && Math.PI * radius / fewer.strips() <= 0.5 * edge;
          assertThat(enough).as("%d strips would do", fewer.strips()).isFalse();
        }
      }
    }
  }

  private static double outside(RimArc arc, double radius) {
    return radius * (arc.radius(1) - 1);
  }

  private static double[][] corners(RimArc arc, double radius) {
    double[][] corner = new double[arc.strips() + 1][];
    for (int i = 0; i <= arc.strips(); i++) {
      double turn = Math.PI * i / arc.strips();
      double reach = radius * arc.radius(i);
      corner[i] = new double[] {reach * Math.cos(turn), reach * Math.sin(turn)};
    }
    return corner;
  }

  /**
   * Area and second moments about the straight side and about the axis of a polygon closed through
   * the origin, by the sums over its sides (Green's theorem).
   */
  private static double[] moments(double[][] corner) {
    double[] sum = new double[3];
    for (int i = 0; i + 1 < corner.length; i++) {
      double x = corner[i][0];
      double y = corner[i][1];
      double u = corner[i + 1][0];
      double v = corner[i + 1][1];
      double cross = x * v - u * y;
      sum[0] += cross / 2;
      sum[1] += cross * (y * y + y * v + v * v) / 12;
      sum[2] += cross * (x * x + x * u + u * u) / 12;
    }
    return sum;
  }
}
