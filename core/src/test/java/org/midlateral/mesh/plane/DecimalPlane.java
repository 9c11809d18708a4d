package org.midlateral.mesh.plane;

import java.math.BigDecimal;

/** The signs of plane geometry in java.math.BigDecimal: no rounding, and none of our arithmetic. */
public record DecimalPlane(double[] x, double[] y) {

  /** 1 where a, b, c turn counter-clockwise, -1 clockwise, 0 on one line. */
  public int turn(int a, int b, int c) {
    return twiceArea(a, b, c).signum();
  }

  /** Twice the area of a triangle, negative where it is turned over. */
  public BigDecimal twiceArea(int a, int b, int c) {
    BigDecimal left = less(x[b], x[a]).multiply(less(y[c], y[a]));
    return left.subtract(less(y[b], y[a]).multiply(less(x[c], x[a])));
  }

  /** 1 where d lies inside the circle through a, b, c, counter-clockwise, -1 outside, 0 on it. */
  public int inCircle(int a, int b, int c, int d) {
    return lifted(a, d)
        .multiply(cross(b, c, d))
        .add(lifted(b, d).multiply(cross(c, a, d)))
        .add(lifted(c, d).multiply(cross(a, b, d)))
        .signum();
  }

  private BigDecimal lifted(int p, int from) {
    BigDecimal dx = less(x[p], x[from]);
    BigDecimal dy = less(y[p], y[from]);
    return dx.multiply(dx).add(dy.multiply(dy));
  }

  private BigDecimal cross(int p, int q, int from) {
    BigDecimal left = less(x[p], x[from]).multiply(less(y[q], y[from]));
    return left.subtract(less(x[q], x[from]).multiply(less(y[p], y[from])));
  }

  private static BigDecimal less(double from, double taken) {
    return new BigDecimal(from).subtract(new BigDecimal(taken));
  }
}
