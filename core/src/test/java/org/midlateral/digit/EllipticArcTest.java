package org.midlateral.digit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.hipparchus.special.elliptic.legendre.LegendreEllipticIntegral;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EllipticArcTest {
  /**
   * The outside check: the incomplete elliptic integral of the second kind of another library (DLMF
   * 19.30.3), which takes the parameter m = k².
   */
  @ParameterizedTest
  @CsvSource({"10, 8", "9, 7.5", "8, 8", "10, 5.5", "7, 9.1", "9, 9.000001"})
  void lengthIsTheEllipticIntegral(double a, double b) {
    EllipticArc arc = new EllipticArc(a, b);
    for (double t = -3; t <= 3; t += 0.37) {
      double integral = a * LegendreEllipticIntegral.bigE(t, 1 - b * b / (a * a));
      assertThat(arc.length(t)).isCloseTo(integral, within(2e-12 * a));
    }
  }

  /** Check values: perimeters by the complete integral, computed with 30 digits. */
  @ParameterizedTest
  @CsvSource({"10, 8, 56.723335777949", "10, 9, 59.7316043252483", "9, 7.5, 51.9434339685726"})
  void theWholeWayRoundIsThePerimeter(double a, double b, double perimeter) {
    assertThat(2 * new EllipticArc(a, b).length(Math.PI)).isCloseTo(perimeter, within(1e-12));
  }

  @ParameterizedTest
  @CsvSource({"10, 8, 0.3, -0.1", "9, 7.5, -0.2, 0.4", "8, 8, 0.1, -0.2", "7, 9, 0.3, 0.3"})
  void changeIsTheDifferenceOfLengths(double a, double b, double a1, double b1) {
    double h = 1e-5;
    EllipticArc before = new EllipticArc(a - h * a1, b - h * b1);
    EllipticArc after = new EllipticArc(a + h * a1, b + h * b1);
    for (double t = -3; t <= 3; t += 0.37) {
      double difference = (after.length(t) - before.length(t)) / (2 * h);
      assertThat(new EllipticArc(a, b).change(t, a1, b1)).isCloseTo(difference, within(1e-8));
    }
  }
}
