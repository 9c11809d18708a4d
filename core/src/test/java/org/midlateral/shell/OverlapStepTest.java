package org.midlateral.shell;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.midlateral.Fingers;
import org.midlateral.RoundFinger;
import org.midlateral.digit.DigitSurface;
import org.midlateral.digit.TapedDigit;
import org.midlateral.piece.GapField;

/**
 * The step of the dorsal shell over the trough's rims. Its closed form: two parabolas, h (2 u²) up
 * to the middle and h (1 - 2 (1 - u)²) from there, over the girth u w that is left to its top.
 */
class OverlapStepTest {
  private static final double WRAP = 0.5;
  private static final double OWN = 0.5;
  private static final double LOW = 0.3;
  private static final double ON_TOP = 1.9;
  private static final double RIM = 0.3;
  private static final double HEIGHT = LOW + ON_TOP - OWN;
  private static final double WIDTH = 5;
  private static final double STATION = 20;

  private static final DigitSurface ROUND = TapedDigit.of(RoundFinger.of(10));

  /** The trough's edge (mm of girth): a quarter of the circumference. */
  private static final double EDGE = Math.PI * 10 / 2;

  private static final OverlapStep STEP =
      step(ROUND, GapField.uniform(OWN), GapField.uniform(LOW), WIDTH);

  private static OverlapStep step(DigitSurface digit, GapField own, GapField trough, double width) {
    return new OverlapStep(digit, WRAP, own, trough, ON_TOP, RIM, width);
  }

  /** A gap that climbs evenly: its slopes are the same everywhere. */
  private static GapField plane(double at, double byGirth, double byStation) {
    return new GapField() {
      @Override
      public void jet(double girth, double station, double[] jet) {
        jet[0] = at + byGirth * girth + byStation * station;
        jet[1] = byGirth;
        jet[2] = byStation;
      }

      @Override
      public boolean uniformAt(double station) {
        return false;
      }
    };
  }

  @Test
  void itIsTwoParabolas() {
    for (int side = -1; side <= 1; side += 2) {
      for (double u = 0; u <= 1; u += 0.01) {
        double[] jet = jet(STEP, side * (EDGE + RIM + (1 - u) * WIDTH), STATION);
        double rise = u < 0.5 ? 2 * u * u : 1 - 2 * (1 - u) * (1 - u);
        double slope = (u < 0.5 ? 4 * u : 4 * (1 - u)) * HEIGHT / WIDTH;

        assertThat(jet[0]).as("u %.2f", u).isCloseTo(OWN + HEIGHT * rise, within(1e-9));
        assertThat(jet[1]).as("u %.2f", u).isCloseTo(-side * slope, within(1e-9));
        assertThat(jet[2]).isCloseTo(0, within(1e-12));
      }
    }
  }

  @Test
  void besideItTheGapIsTheDorsumsOrTheTroughsWallAndTheFitGap() {
    for (double off = 0; off < EDGE; off += 0.5) {
      assertThat(jet(STEP, EDGE + RIM - off, STATION))
          .as("%.1f mm from the top", off)
          .containsExactly(LOW + ON_TOP, 0, 0);
    }
    for (double off = 0.001; EDGE + RIM + WIDTH + off < 2 * EDGE; off += 0.5) {
      assertThat(jet(STEP, EDGE + RIM + WIDTH + off, STATION)).containsExactly(OWN, 0, 0);
    }
  }

  /** Asked for alone, the gap is the one that comes with its slopes, mirrored and added to too. */
  @Test
  void aloneItIsTheSameGap() {
    GapField sloping = step(ROUND, plane(0.5, 0.01, 0.02), plane(0.3, 0.05, -0.03), WIDTH);
    for (GapField step : List.of(STEP, sloping)) {
      for (GapField field : List.of(step, step.mirrored(), step.plus(plane(0, 0.1, 0.1)))) {
        for (double girth = -2 * EDGE; girth <= 2 * EDGE; girth += 0.1) {
          assertThat(field.at(girth, STATION))
              .isCloseTo(jet(field, girth, STATION)[0], within(1e-12));
        }
      }
    }
  }

  /**
   * At foot, middle and top value and slope go on; the curvature is that of the parabolas, 4 h/w²
   * up, then down, and 0 beside them.
   */
  @Test
  void itsJointsAreSmoothAndItsCurvatureIsBounded() {
    double bend = 4 * HEIGHT / (WIDTH * WIDTH);
    double[] joint = {RIM, RIM + WIDTH / 2, RIM + WIDTH};
    double[] before = {0, -bend, bend};
    double[] after = {-bend, bend, 0};
    double h = 1e-3;
    for (int k = 0; k < 3; k++) {
      double[] low = jet(STEP, EDGE + joint[k] - 1e-9, STATION);
      double[] high = jet(STEP, EDGE + joint[k] + 1e-9, STATION);
      assertThat(high[0]).isCloseTo(low[0], within(1e-8));
      assertThat(high[1]).isCloseTo(low[1], within(1e-8));
      assertThat(bend(EDGE + joint[k] - 2 * h, h)).isCloseTo(before[k], within(1e-6));
      assertThat(bend(EDGE + joint[k] + 2 * h, h)).isCloseTo(after[k], within(1e-6));
    }
    for (double g = EDGE - 1; g < EDGE + RIM + WIDTH + 1; g += 0.01) {
      assertThat(Math.abs(bend(g, h))).isLessThanOrEqualTo(bend + 1e-6);
    }
  }

  private static double bend(double girth, double h) {
    return (jet(STEP, girth + h, STATION)[1] - jet(STEP, girth - h, STATION)[1]) / (2 * h);
  }

  /** No steeper than 45 degrees, its foot's radius over two walls, and no wider than that takes. */
  @ParameterizedTest
  @CsvSource({"0.2, 1.2", "1, 0.8", "1.7, 1.6", "3, 1.2", "6, 1.6", "8, 0.8"})
  void theWidthKeepsTheSlopeAndTheFootsRadius(double height, double wall) {
    double width = OverlapStep.width(height, wall);
    GapField own = GapField.uniform(OWN);
    OverlapStep step = step(ROUND, own, GapField.uniform(OWN + height - ON_TOP), width);
    double steepest = 0;
    double sharpest = 0;
    double last = 0;
    double h = width / 1000;
    for (double g = EDGE + RIM; g < EDGE + RIM + width + h; g += h) {
      double slope = Math.abs(jet(step, g, STATION)[1]);
      steepest = Math.max(steepest, slope);
      sharpest = Math.max(sharpest, Math.abs(slope - last) / h);
      last = slope;
    }
    double radius = 1 / sharpest;

    assertThat(steepest).isLessThan(1);
    assertThat(radius).isGreaterThan(2 * wall);
    assertThat(steepest > 0.97 || radius < 2.25 * wall).as("one of the two binds").isTrue();
  }

  /** On a finger that tapers the step follows the trough's edge: it climbs along the finger too. */
  @Test
  void onATaperingFingerItFollowsTheEdge() {
    DigitSurface digit = TapedDigit.of(Fingers.ring());
    OverlapStep step = step(digit, plane(OWN, 0.01, 0.02), GapField.uniform(LOW), WIDTH);
    int climbing = 0;
    for (double s = 6; s < 50; s += 0.7) {
      double edge = WRAP / 2 * digit.circumference(s);
      for (double u = 0.013; u < 1; u += 0.05) {
        climbing += assertSlopes(step, edge + RIM + u * WIDTH, s, 1e-7) ? 1 : 0;
        climbing += assertSlopes(step, -edge - RIM - u * WIDTH, s, 1e-7) ? 1 : 0;
      }
    }
    assertThat(climbing).isGreaterThan(1000);
  }

  /**
   * A wall that slopes round the finger is thicker along the skin's normal, by the slope's secant;
   * what slopes along it is the bridge's.
   */
  @Test
  void overASlopingTroughTheWallIsThickerBySecant() {
    OverlapStep step = step(ROUND, GapField.uniform(OWN), plane(LOW, 0.03, 0.04), WIDTH);
    double secant = Math.sqrt(1 + 0.03 * 0.03);
    for (double g = -EDGE; g <= EDGE; g += 0.7) {
      double[] jet = jet(step, g, STATION);
      assertThat(jet[0])
          .isCloseTo(LOW + 0.03 * g + 0.04 * STATION + ON_TOP * secant, within(1e-12));
      assertThat(jet[1]).isCloseTo(0.03, within(1e-9));
      assertThat(jet[2]).isCloseTo(0.04, within(1e-9));
    }
    for (double u = 0.013; u < 1; u += 0.05) {
      assertSlopes(step, EDGE + RIM + u * WIDTH, STATION, 1e-6);
      assertSlopes(step, -EDGE - RIM - u * WIDTH, STATION, 1e-6);
    }
  }

  /** The two ways to compute it meet where the slope goes to nothing. */
  @Test
  void overAHardlySlopingTroughItIsThatOverALevelOne() {
    OverlapStep step = step(ROUND, GapField.uniform(OWN), plane(LOW, 1e-12, 1e-12), WIDTH);
    for (double g = EDGE - 2; g < EDGE + RIM + WIDTH + 1; g += 0.037) {
      double[] sloping = jet(step, g, STATION);
      double[] level = jet(STEP, g, STATION);
      for (int k = 0; k < 3; k++) {
        assertThat(sloping[k]).as("girth %.3f", g).isCloseTo(level[k], within(1e-5));
      }
    }
  }

  /** Slopes against differences of the fourth order; tells whether there are some both ways. */
  private static boolean assertSlopes(GapField field, double g, double s, double bound) {
    double h = 1e-3;
    double[] jet = jet(field, g, s);
    double byGirth = difference(field.at(g - h, s), field.at(g + h, s), h);
    double byGirthWide = difference(field.at(g - 2 * h, s), field.at(g + 2 * h, s), 2 * h);
    double byStation = difference(field.at(g, s - h), field.at(g, s + h), h);
    double byStationWide = difference(field.at(g, s - 2 * h), field.at(g, s + 2 * h), 2 * h);
    assertThat(jet[1]).isCloseTo((4 * byGirth - byGirthWide) / 3, within(bound));
    assertThat(jet[2]).isCloseTo((4 * byStation - byStationWide) / 3, within(bound));
    return jet[1] != 0 && jet[2] != 0;
  }

  private static double difference(double low, double high, double h) {
    return (high - low) / (2 * h);
  }

  private static double[] jet(GapField field, double girth, double station) {
    double[] jet = new double[3];
    field.jet(girth, station, jet);
    return jet;
  }
}
