package org.midlateral.digit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.midlateral.Drawn;
import org.midlateral.Fingers;
import org.midlateral.Seeded;
import org.midlateral.measurement.Level;
import org.midlateral.measurement.Measurements;
import org.midlateral.measurement.Room;

class TapedDigitTest {
  private static final Measurements RING = Fingers.ring();

  @Test
  void everyTapeIsMetExactly() {
    TapedDigit digit = TapedDigit.of(RING);

    RING.circumference()
        .forEach(
            (level, tape) ->
                assertThat(digit.circumference(RING.stationOf(level)))
                    .as(level.key())
                    .isCloseTo(tape, within(1e-12)));
  }

  @Test
  void girthIsMonotoneBetweenLevelsAndHeldBeforeTheFirst() {
    TapedDigit digit = TapedDigit.of(RING);
    double pip = RING.stationOf(Level.PIP);
    double tip = RING.stationOf(Level.TIP);

    for (double s = RING.stationOf(Level.PROXIMAL_PHALANX); s + 0.1 < pip; s += 0.1) {
      assertThat(digit.circumference(s + 0.1)).isGreaterThanOrEqualTo(digit.circumference(s));
    }
    for (double s = pip; s + 0.1 < tip; s += 0.1) {
      assertThat(digit.circumference(s + 0.1)).isLessThanOrEqualTo(digit.circumference(s));
    }
    assertThat(digit.circumference(-15)).isEqualTo(62.0);
  }

  /** No knots, however uneven, make the girth law overshoot: Fritsch and Carlson (1980). */
  @Seeded(300)
  void theGirthLawNeverOvershoots(long seed) {
    Drawn drawn = new Drawn(seed);
    neverOvershoots(drawn.between(20, 100, 6), drawn.between(0.5, 40, 5), drawn.yes());
  }

  /** Every girth at a limit of its range, the gaps all at the same one or in turn. */
  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void theGirthLawNeverOvershootsAtTheLimits(boolean held) {
    for (int girths = 0; girths < 1 << 6; girths++) {
      for (int gaps : new int[] {0b00000, 0b01010, 0b10101, 0b11111}) {
        neverOvershoots(limits(girths, 6, 20, 100), limits(gaps, 5, 0.5, 40), held);
      }
    }
  }

  /** The one limit where a bit is 0, the other where it is 1. */
  private static double[] limits(int bits, int count, double low, double high) {
    return IntStream.range(0, count).mapToDouble(i -> (bits >> i & 1) == 0 ? low : high).toArray();
  }

  private static void neverOvershoots(double[] y, double[] gaps, boolean held) {
    double[] x = new double[6];
    for (int i = 1; i < 6; i++) {
      x[i] = x[i - 1] + gaps[i - 1];
    }
    MonotoneCubic law = MonotoneCubic.through(x, y, held ? 0 : 100);
    double[] jet = new double[3];
    for (int i = 0; i + 1 < 6; i++) {
      double last = y[i];
      for (int k = 1; k <= 50; k++) {
        law.jet(x[i] + (x[i + 1] - x[i]) * k / 50, jet);
        assertThat(jet[0])
            .isBetween(Math.min(y[i], y[i + 1]) - 1e-9, Math.max(y[i], y[i + 1]) + 1e-9);
        assertThat((jet[0] - last) * (y[i + 1] - y[i])).isGreaterThanOrEqualTo(-1e-9);
        last = jet[0];
      }
    }
  }

  @Test
  void aMeasuredWidthShapesItsSection() {
    Measurements wide = withWidth(Level.PIP, 22.5);
    Slice slice = TapedDigit.of(wide).slice(wide.stationOf(Level.PIP));

    assertThat(2 * slice.halfWidth()).isCloseTo(22.5, within(1e-9));
    assertThat(slice.circumference()).isCloseTo(66, within(1e-12));
    assertThat(polygon(slice)).isCloseTo(66, within(1e-3));
  }

  @Test
  void theWidthAtTheWebLeadsTheSectionsThere() {
    Measurements web = withWidth(Level.WEB, 21.5);

    assertThat(2 * TapedDigit.of(web).slice(0).halfWidth()).isCloseTo(21.5, within(1e-9));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 15, 45})
  void theCentrelineKeepsItsLengthAndTurnsByTheDeficit(double degrees) {
    TapedDigit digit = TapedDigit.of(Fingers.ring(Math.toRadians(degrees)));
    double length = 0;
    int n = 20000;
    double from = -20;
    double to = digit.pulpEnd();
    for (int i = 0; i < n; i++) {
      Vector3D a = digit.centre(from + (to - from) * i / n);
      length += a.distance(digit.centre(from + (to - from) * (i + 1) / n));
    }

    assertThat(length).isCloseTo(to - from, within(1e-5));
    assertThat(Math.toDegrees(digit.tangent(-5).angle(digit.tangent(to))))
        .isCloseTo(degrees, within(1e-4));
    // Flexion turns to the volar side.
    assertThat(digit.tangent(to).getZ()).isLessThanOrEqualTo(0);
  }

  @Test
  void curvatureIsTheTurnPerLength() {
    TapedDigit digit = TapedDigit.of(Fingers.ring(Math.toRadians(30)));
    double h = 1e-3;
    for (double s = 5; s < 60; s += 0.7) {
      Vector3D before = digit.tangent(s - h);
      Vector3D after = digit.tangent(s + h);
      double turn = Math.asin(before.cross(after).getY()) / (2 * h);

      assertThat(digit.curvature(s)).isCloseTo(turn, within(1e-6));
      Vector3D chord = digit.centre(s - h).vectorTo(digit.centre(s + h)).normalize();
      assertThat(chord.distance(digit.tangent(s))).isLessThan(1e-6);
    }
    assertThat(digit.curvature(digit.pipAxis())).isPositive();
    assertThat(digit.curvature(5)).isZero();
  }

  @Test
  void derivativesAreThoseOfThePoints() {
    TapedDigit digit = TapedDigit.of(Fingers.ring(Math.toRadians(25)));
    double h = 1e-4;
    // None of these is a level's station: there the curvature has two values, one to each side.
    for (double s : new double[] {-10, 3, 20, 26, 33, 55, 62, 68}) {
      for (double t : new double[] {-2.5, -1.2, 0, 0.4, 1.57, 3}) {
        double[] at = jet(digit, s, t);
        double[][] round = {jet(digit, s, t - h), jet(digit, s, t + h)};
        double[][] along = {jet(digit, s - h, t), jet(digit, s + h, t)};
        for (int k = 0; k < 3; k++) {
          close(at[3 + k], round, k, h);
          close(at[6 + k], along, k, h);
          close(at[9 + k], round, 3 + k, h);
          close(at[12 + k], round, 6 + k, h);
          close(at[12 + k], along, 3 + k, h);
          close(at[15 + k], along, 6 + k, h);
        }
      }
    }
  }

  /** Against differences of the points; the skin bends in beside a bulbous joint. */
  @ParameterizedTest
  @ValueSource(doubles = {4, 17, 25.5, 33, 58})
  void normalAndCurvatureAreThoseOfThePoints(double s) {
    DigitSurface digit = TapedDigit.of(Fingers.ring(0.6));
    Slice slice = digit.slice(s);
    double h = 2e-4;
    for (double t = -3; t <= 3; t += 0.5) {
      Vector3D point = slice.point(t);
      Vector3D round = slice.point(t - h).vectorTo(slice.point(t + h));
      Vector3D before = digit.slice(s - h).point(t);
      Vector3D after = digit.slice(s + h).point(t);
      Vector3D along = before.vectorTo(after);
      Vector3D normal = slice.normal(t);

      assertThat(slice.pointByAngle(t).distance(round.multiply(1 / (2 * h)))).isLessThan(1e-4);
      assertThat(normal.norm()).isCloseTo(1, within(1e-12));
      assertThat(normal.dot(round.normalize())).isCloseTo(0, within(1e-5));
      assertThat(normal.dot(along.normalize())).isCloseTo(0, within(1e-5));
      assertThat(normal.dot(digit.centre(s).vectorTo(point))).isPositive();
      Vector3D turn = point.vectorTo(after).subtract(before.vectorTo(point));
      double curvature = turn.dot(normal) / (along.normSq() / 4);
      assertThat(slice.curvatureAlong(t)).isCloseTo(curvature, within(1e-3));
    }
  }

  @Test
  void girthIsTheLengthRoundTheSection() {
    Slice slice = TapedDigit.of(RING).slice(30);
    double sum = 0;
    int n = 4000;
    for (int i = 0; i < n; i++) {
      sum += slice.point(Math.PI * i / n).distance(slice.point(Math.PI * (i + 1) / n));
      double girth = slice.girth(Math.PI * (i + 1) / n);

      assertThat(girth).isCloseTo(sum, within(1e-5));
      assertThat(slice.angle(girth)).isCloseTo(Math.PI * (i + 1) / n, within(1e-9));
    }
    assertThat(slice.girth(-1)).isEqualTo(-slice.girth(1));
  }

  @Test
  void thePulpClosesAtItsEnd() {
    TapedDigit digit = TapedDigit.of(RING);

    assertThat(digit.pulpEnd()).isEqualTo(71.0);
    assertThat(digit.circumference(71 - 1e-9)).isLessThan(0.01);
    // Smooth where the pulp begins.
    double tip = digit.tip();
    double before = (digit.circumference(tip) - digit.circumference(tip - 1e-5)) / 1e-5;
    double after = (digit.circumference(tip + 1e-5) - digit.circumference(tip)) / 1e-5;
    assertThat(after).isCloseTo(before, within(1e-3));
  }

  /** A pulp measured close behind a thick DIP joint, where the girth falls steeply. */
  @Test
  void aSteepTipStillClosesRoundly() {
    Measurements steep =
        RING.withCircumference(
                Map.of(
                    Level.PROXIMAL_PHALANX, 48.0,
                    Level.PIP, 49.0,
                    Level.MIDDLE_PHALANX, 45.0,
                    Level.DIP, 45.0,
                    Level.TIP, 37.0))
            .withLengths(16, 20, 16, 18.5);
    TapedDigit digit = TapedDigit.of(steep);
    double last = 37;
    for (double s = digit.tip(); s < digit.pulpEnd(); s += 0.05) {
      double u = (s - digit.tip()) / (digit.pulpEnd() - digit.tip());

      assertThat(digit.circumference(s)).isBetween(37 * (1 - u), last);
      last = digit.circumference(s);
    }
  }

  /** Readings that no file may have, but that errors drawn for each reading lead to. */
  @Test
  void readingsOutOfTheirPlaceAreNoFingers() {
    assertThat(TapedDigit.isPossible(RING)).isTrue();
    Measurements shortTip = measured(RING.circumference(), Map.of(), Map.of(Level.TIP, 71.5));
    Measurements crossed = measured(RING.circumference(), Map.of(), Map.of(Level.TIP, 35.0));
    Measurements flat = measured(RING.circumference(), Map.of(Level.PIP, 30.0), Map.of());
    Map<Level, Double> less = new EnumMap<>(RING.circumference());
    less.put(Level.TIP, -1.0);
    Measurements nothing = measured(less, Map.of(), Map.of());

    for (Measurements wrong : List.of(shortTip, crossed, flat, nothing)) {
      assertThat(TapedDigit.isPossible(wrong)).isFalse();
    }
    assertThatThrownBy(() -> TapedDigit.of(shortTip))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("tip at 71.5 mm from the web is out of its order along the finger");
    assertThatThrownBy(() -> TapedDigit.of(flat))
        .hasMessage("no ellipse is 30.0 mm wide and 66.0 mm around at pip");
    assertThatThrownBy(() -> TapedDigit.of(nothing)).hasMessage("nothing is -1.0 mm around at tip");
  }

  private static Measurements measured(
      Map<Level, Double> around, Map<Level, Double> width, Map<Level, Double> station) {
    return new Measurements(
        "drawn",
        RING.hand(),
        RING.digit(),
        RING.unit(),
        around,
        width,
        RING.palmarCreaseToWeb(),
        RING.webToPip(),
        RING.pipToDip(),
        RING.dipToTip(),
        0,
        0,
        2.5,
        7.5,
        station,
        Room.NONE);
  }

  private static void close(double derivative, double[][] ends, int k, double h) {
    double difference = (ends[1][k] - ends[0][k]) / (2 * h);
    assertThat(derivative).isCloseTo(difference, within(1e-4 * (1 + Math.abs(difference))));
  }

  private static double[] jet(DigitSurface digit, double s, double t) {
    double[] jet = new double[18];
    digit.slice(s).jet(t, jet);
    return jet;
  }

  private static double polygon(Slice slice) {
    double sum = 0;
    int n = 2000;
    for (int i = 0; i < n; i++) {
      sum += slice.point(2 * Math.PI * i / n).distance(slice.point(2 * Math.PI * (i + 1) / n));
    }
    return sum;
  }

  private static Measurements withWidth(Level level, double width) {
    return RING.withWidth(Map.of(level, width));
  }
}
