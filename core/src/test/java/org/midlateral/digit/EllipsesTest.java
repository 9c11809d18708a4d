package org.midlateral.digit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.hipparchus.special.elliptic.legendre.LegendreEllipticIntegral;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EllipsesTest {
  /**
   * Complete elliptic integral of the second kind by the parameter m: M. Abramowitz and I. A.
   * Stegun, Handbook of Mathematical Functions, table 17.1, as the tests of GNU Octave's {@code
   * ellipke} quote it. Nine decimals are printed.
   */
  @ParameterizedTest
  @CsvSource({
    "0, 1.570796327",
    "0.05, 1.550973352",
    "0.10, 1.530757637",
    "0.15, 1.510121831",
    "0.20, 1.489035058",
    "0.25, 1.467462209",
    "0.30, 1.445363064",
    "0.35, 1.422691133",
    "0.40, 1.399392139",
    "0.45, 1.375401972",
    "0.50, 1.350643881"
  })
  void perimetersFollowThePrintedTable(double m, double e) {
    assertThat(Ellipses.unitPerimeter(Math.sqrt(1 - m)) / 4).isCloseTo(e, within(1e-8));
  }

  /** The same integral to twenty digits, from the same tests of GNU Octave. */
  @ParameterizedTest
  @CsvSource({
    "0.01, 1.5668619420216682912",
    "0.1, 1.5307576368977632025",
    "0.5, 1.3506438810476755025",
    "0.75, 1.21105602756845952480",
    "0.9, 1.1047747327040733261",
    "-1, 1.9100988945138560089"
  })
  void perimetersFollowTwentyDigits(double m, double e) {
    assertThat(Ellipses.unitPerimeter(Math.sqrt(1 - m)) / 4).isCloseTo(e, within(1e-13));
  }

  @Test
  void tableAndIntegralAgreeToRounding() {
    double[] jet = new double[3];
    for (double q = 0.5; q <= 1.4; q += 0.00071) {
      Ellipses.unitPerimeter(q, jet);

      assertThat(jet[0]).isCloseTo(4 * LegendreEllipticIntegral.bigE(1 - q * q), within(1e-11));
    }
  }

  @Test
  void derivativesAreThoseOfTheIntegral() {
    double[] jet = new double[3];
    double h = 1e-4;
    for (double q = 0.55; q <= 1.3; q += 0.013) {
      double before = Ellipses.unitPerimeter(q - h);
      double here = Ellipses.unitPerimeter(q);
      double after = Ellipses.unitPerimeter(q + h);
      Ellipses.unitPerimeter(q, jet);

      assertThat(jet[1]).isCloseTo((after - before) / (2 * h), within(1e-7));
      assertThat(jet[2]).isCloseTo((after - 2 * here + before) / (h * h), within(1e-5));
    }
  }

  /** Perimeters computed independently with 30 digits; no publication. */
  @ParameterizedTest
  @CsvSource({
    "10, 8, 56.723335777949",
    "10, 9, 59.7316043252483",
    "9, 7.5, 51.9434339685726",
    "10, 8.5, 58.2150248025347",
    "10.5, 9, 61.3517131740739",
    "8, 10, 56.723335777949"
  })
  void depthIsFoundFromWidthAndPerimeter(double a, double b, double perimeter) {
    assertThat(Ellipses.depthRatio(2 * a, perimeter)).isCloseTo(b / a, within(1e-11));
  }

  @Test
  void noDepthIsFoundWhereNoFingerHasOne() {
    // Half as deep as wide, and nearly half as deep again.
    assertThat(Ellipses.depthRatio(20, 48.4422411027384)).isNaN();
    assertThat(Ellipses.depthRatio(20, 10 * Ellipses.unitPerimeter(1.4))).isNaN();
  }
}
