package org.midlateral.digit;

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

  /** What the skew's power k + 2m counts in the k-th term. */
  private static final double[][] TERMS = terms();

  /** The same in the derivative of the k-th term by the skew. */
  private static final double[][] SLOPES = slopes();

  private final double size;
  private final double sum;
  private final double skew;
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
    this.term = new double[count(skew)];
    double power = 1;
    for (int k = 0; k < term.length; k++) {
      term[k] = power * inSquares(TERMS[k], (term.length - 1 - k) / 2);
      power *= skew;
    }
  }

  private double[] slope() {
    double[] made = slope;
    if (made == null) {
      made = new double[term.length];
      // The first term has no first power: its derivative begins with one.
      made[0] = skew * inSquares(SLOPES[0], (made.length - 1) / 2 - 1);
      double power = 1;
      for (int k = 1; k < made.length; k++) {
        made[k] = power * inSquares(SLOPES[k], (made.length - 1 - k) / 2);
        power *= skew;
      }
      slope = made;
    }
    return made;
  }

  /** A polynomial in the skew's square, of a degree. */
  private double inSquares(double[] coefficients, int degree) {
    double square = skew * skew;
    double sum = 0;
    for (int m = degree; m >= 0; m--) {
      sum = sum * square + coefficients[m];
    }
    return sum;
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

  /** Number of terms that count. */
  private static int count(double skew) {
    double power = skew * skew;
    int n = 3;
    while (n < MOST && Math.abs(power * BINOMIAL[n - 1]) > (n - 1) * NEGLIGIBLE) {
      power *= skew;
      n++;
    }
    return n;
  }

  private static double[][] terms() {
    double[][] terms = new double[MOST][];
    for (int k = 0; k < MOST; k++) {
      terms[k] = new double[(MOST - 1 - k) / 2 + 1];
      for (int m = 0; m < terms[k].length; m++) {
        terms[k][m] = BINOMIAL[m] * BINOMIAL[m + k] / Math.max(1, k);
      }
    }
    return terms;
  }

  private static double[][] slopes() {
    double[][] slopes = new double[MOST][];
    for (int k = 0; k < MOST; k++) {
      // That of the first term's constant is none.
      int first = k == 0 ? 1 : 0;
      slopes[k] = new double[TERMS[k].length - first];
      for (int m = 0; m < slopes[k].length; m++) {
        slopes[k][m] = (k + 2 * (m + first)) * TERMS[k][m + first];
      }
    }
    return slopes;
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
