package org.midlateral.digit;

import java.util.Arrays;

/**
 * Arc length of the ellipse y = a sin t, depth = -b cos t, from t = 0, as a Fourier series.
 *
 * <p>The speed is S |1 + r exp(2it)| with S = (a + b)/2 and r = (a - b)/(a + b). Both factors of
 * its square, (1 + r exp(2it))(1 + r exp(-2it)), have a binomial series of their root, and the
 * product of the two is a cosine series whose terms fall as r does: a dozen are exact to rounding
 * on a usual finger.
 */
final class EllipticArc {
  /** Terms for the flattest section: 0.3 to this power is below rounding. */
  private static final int MOST = 30;

  private static final double NEGLIGIBLE = 1e-17;
  private static final double[] BINOMIAL = binomials();

  private final double size;
  private final double sum;
  private final double skew;
  private final double[] power;
  private final double[] term;

  /** Derivatives of the terms by the skew; made when first asked for, made twice they are alike. */
  private double[] slope;

  /**
   * The ellipse.
   *
   * @param a half-axis along y (mm)
   * @param b other half-axis (mm)
   */
  EllipticArc(double a, double b) {
    this.sum = a + b;
    this.size = sum / 2;
    this.skew = (a - b) / sum;
    this.power = powers(skew);
    this.term = new double[power.length - 1];
    for (int k = 0; k < term.length; k++) {
      double sum = 0;
      for (int n = k; n < term.length; n += 2) {
        sum += product(n, k) * power[n];
      }
      term[k] = sum / Math.max(1, k);
    }
  }

  /** What the n-th power of the skew counts in the k-th term. */
  private static double product(int n, int k) {
    return BINOMIAL[(n - k) / 2] * BINOMIAL[(n + k) / 2];
  }

  private double[] slope() {
    double[] made = slope;
    if (made == null) {
      made = new double[term.length];
      for (int k = 0; k < made.length; k++) {
        double sum = 0;
        for (int n = Math.max(k, 2 - k); n < made.length; n += 2) {
          sum += n * product(n, k) * power[n - 1];
        }
        made[k] = sum / Math.max(1, k);
      }
      slope = made;
    }
    return made;
  }

  /** Length from 0 to t (mm), signed as t. */
  double length(double t) {
    return size * sineSeries(term, t);
  }

  /**
   * The angle at a length, but for terms of the skew's fourth order: the series of {@link #length}
   * inverted (J. L. Lagrange 1770).
   *
   * @param share of the length of the whole, times 2 pi
   */
  double nearly(double share) {
    double sine = Math.sin(2 * share);
    double cosine = Math.cos(2 * share);
    double second = 2 * sine * cosine;
    double third = sine * (4 * cosine * cosine - 1);
    double square = skew * skew;
    return share
        - skew * ((0.5 - 9.0 / 32 * square) * sine + 29.0 / 96 * square * third)
        + 5.0 / 16 * square * second;
  }

  /**
   * How fast the length from 0 to t changes as the half-axes do.
   *
   * @param a1 rate of a
   * @param b1 rate of b
   */
  double change(double t, double a1, double b1) {
    double a = size * (1 + skew);
    double b = size * (1 - skew);
    double skewRate = 2 * (a1 * b - a * b1) / (sum * sum);
    return (a1 + b1) / 2 * sineSeries(term, t) + size * skewRate * sineSeries(slope(), t);
  }

  /** First term times t, and the others times sin 2kt / 2k, whose divisor they carry already. */
  private static double sineSeries(double[] term, double t) {
    double twice = 2 * Math.cos(2 * t);
    double last = 0;
    double sine = Math.sin(2 * t);
    double total = term[0] * t;
    for (int k = 1; k < term.length; k++) {
      total += term[k] * sine;
      double next = twice * sine - last;
      last = sine;
      sine = next;
    }
    return total;
  }

  /** Powers of the skew from the zeroth up to one whose term no longer counts, and one more. */
  private static double[] powers(double skew) {
    double[] power = new double[MOST + 1];
    power[0] = 1;
    int n = 1;
    while (n < MOST && (n < 3 || Math.abs(power[n - 1] * BINOMIAL[n - 1]) > (n - 1) * NEGLIGIBLE)) {
      power[n] = power[n - 1] * skew;
      n++;
    }
    power[n] = power[n - 1] * skew;
    return Arrays.copyOf(power, n + 1);
  }

  /** Coefficients of the series of the square root of 1 + x. */
  private static double[] binomials() {
    double[] c = new double[MOST];
    c[0] = 1;
    for (int n = 1; n < MOST; n++) {
      c[n] = c[n - 1] * (1.5 - n) / n;
    }
    return c;
  }
}
