package org.midlateral.digit;

/**
 * Arc length of the ellipse y = a sin t, depth = -b cos t, from t = 0, as a Fourier series.
 *
 * <p>The speed is S |1 + r exp(2it)| with S = (a + b)/2 and r = (a - b)/(a + b). Both factors of
 * its square, (1 + r exp(2it))(1 + r exp(-2it)), have a binomial series of their root, and the
 * product of the two is a cosine series whose terms fall as r does: a dozen are exact to rounding
 * on a usual finger. Immutable.
 */
final class EllipticArc {
  /** Terms for the flattest section: 0.3 to this power is below rounding. */
  private static final int MOST = 30;

  private static final double NEGLIGIBLE = 1e-17;

  /** Weight of r to the power k + 2 j in the term of sin 2kt. */
  private static final double[][] WEIGHT = weights();

  private final double size;
  private final double sum;
  private final double skew;
  private final double[] term;

  /** How the terms change with the skew; made when first asked for, made twice it is the same. */
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
    this.term = new double[count(Math.abs(skew))];
    double square = skew * skew;
    double power = 1;
    for (int k = 0; k < term.length; k++) {
      double[] weight = WEIGHT[k];
      double total = 0;
      for (int j = (term.length - 1 - k) / 2; j >= 0; j--) {
        total = total * square + weight[j];
      }
      term[k] = power * total;
      power *= skew;
    }
  }

  private double[] slope() {
    double[] made = slope;
    if (made == null) {
      made = new double[term.length];
      double square = skew * skew;
      double power = 1;
      for (int k = 0; k < made.length; k++) {
        double[] weight = WEIGHT[k];
        double total = 0;
        // A constant has no slope: the first term begins with the square.
        int first = k == 0 ? 1 : 0;
        for (int j = (made.length - 1 - k) / 2; j >= first; j--) {
          total = total * square + (k + 2 * j) * weight[j];
        }
        made[k] = k == 0 ? skew * total : power * total;
        power *= k == 0 ? 1 : skew;
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

  /** How many powers of the skew count, from the zeroth. */
  private static int count(double skew) {
    double power = skew * skew;
    int n = 3;
    while (n < MOST && power > NEGLIGIBLE) {
      power *= skew;
      n++;
    }
    return n;
  }

  private static double[][] weights() {
    double[] c = binomials();
    double[][] weights = new double[MOST][];
    for (int k = 0; k < MOST; k++) {
      weights[k] = new double[(MOST - 1 - k) / 2 + 1];
      for (int j = 0; j < weights[k].length; j++) {
        weights[k][j] = c[j] * c[j + k] / Math.max(1, k);
      }
    }
    return weights;
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
