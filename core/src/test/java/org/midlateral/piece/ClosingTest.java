package org.midlateral.piece;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The closing of curves whose closing has a closed form. */
class ClosingTest {
  private static final double RADIUS = 3;
  private static final double STEP = 0.1;
  private static final int HALF = 150;

  /** The curve y(x) for x from -15 to 15 mm, as if it were skin. */
  private static Meridians.Meridian curve(DoubleUnaryOperator y) {
    int n = 2 * HALF + 1;
    double[] x = new double[n];
    double[] height = new double[n];
    double[] slope = new double[n];
    for (int i = 0; i < n; i++) {
      x[i] = (i - HALF) * STEP;
      height[i] = y.applyAsDouble(x[i]);
      slope[i] = Math.atan((y.applyAsDouble(x[i] + 1e-6) - y.applyAsDouble(x[i] - 1e-6)) / 2e-6);
    }
    return new Meridians.Meridian(x, height, slope, new double[n]);
  }

  /** A disc in a V that turns by twice an angle stands off its bottom by r (1/cos - 1). */
  @ParameterizedTest
  @ValueSource(doubles = {0.1, 0.2, 0.4, 0.6})
  void aGrooveIsBridgedByTheDiscThatTouchesBothSides(double angle) {
    Meridians.Meridian groove = curve(x -> Math.abs(x) * Math.tan(angle));
    Closing closing = Closing.of(groove, RADIUS);

    double expected = RADIUS * (1 / Math.cos(angle) - 1);
    assertThat(closing.off(groove, HALF)).isCloseTo(expected, within(0.002 + 0.005 * expected));
    // Beyond the two places where it touches, the curve stays what it is.
    int touch = (int) Math.ceil(RADIUS * Math.sin(angle) / STEP);
    for (int i = touch + 8; i < HALF - 10; i++) {
      assertThat(closing.off(groove, HALF + i)).isCloseTo(0, within(1e-3));
    }
  }

  @Test
  void aHollowWiderThanTheDiscIsFollowed() {
    double wide = 1.3 * RADIUS;
    Meridians.Meridian hollow =
        curve(x -> Math.abs(x) < 2.5 ? wide - Math.sqrt(wide * wide - x * x) : slopeOn(wide, x));
    Closing closing = Closing.of(hollow, RADIUS);

    for (int i = 30; i < 2 * HALF - 30; i++) {
      assertThat(closing.off(hollow, i)).isCloseTo(0, within(2e-3));
    }
  }

  /** The circle's tangent from 2.5 mm on. */
  private static double slopeOn(double radius, double x) {
    double side = Math.sqrt(radius * radius - 2.5 * 2.5);
    return radius - side + (Math.abs(x) - 2.5) * 2.5 / side;
  }

  @Test
  void aRoundBackIsFollowed() {
    Meridians.Meridian back = curve(x -> -x * x / 40);
    Closing closing = Closing.of(back, RADIUS);

    for (int i = 30; i < 2 * HALF - 30; i++) {
      assertThat(closing.off(back, i)).isCloseTo(0, within(1e-3));
    }
  }

  /** Over another curve the closing keeps its distance; over a flat one it is parallel. */
  @Test
  void itKeepsOffWhatLiesUnder() {
    Meridians.Meridian low = curve(x -> 0);
    Meridians.Meridian hill = curve(x -> 0.5 * Math.exp(-x * x / 4));
    Closing closing = Closing.over(low, hill, 2, RADIUS);

    assertThat(closing.off(low, HALF)).isCloseTo(2.5, within(0.005));
    assertThat(closing.off(low, 2 * HALF - 40)).isCloseTo(2, within(0.005));
  }
}
