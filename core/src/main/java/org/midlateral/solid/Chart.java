package org.midlateral.solid;

import java.util.Arrays;
import org.midlateral.digit.DigitSurface;
import org.midlateral.piece.Piece;

/**
 * Two maps of a piece's mid-surface to the plane, both from the angle t off its midline and the
 * station s. One keeps lengths along the finger and round it, u = rho t and v: points are spread in
 * it. The other keeps angles, (t, mu) with d mu = dv / rho: triangles are chosen in it. rho is the
 * mean radius of the mid-surface, v its length along a meridian.
 */
final class Chart {
  private static final int PULP_STEPS = 200;
  private static final double STEP = 0.25;

  private final double[] s;
  private final double[] rho;
  private final double[] v;
  private final double[] mu;
  private final double[] axial;

  /** Intervals to a mm of the body (1/mm). */
  private final double perStation;

  private Chart(double[] s, double[] rho, double[] v, double[] mu, double[] axial) {
    this.s = s;
    this.rho = rho;
    this.v = v;
    this.mu = mu;
    this.axial = axial;
    this.perStation = 1 / (s[1] - s[0]);
  }

  /** The chart over the stations of a piece. */
  static Chart of(Piece piece) {
    DigitSurface digit = piece.digit();
    double from = piece.outline().proximal();
    double to = piece.outline().distal();
    double body = Math.min(to, digit.tip());
    int n = (int) Math.ceil((body - from) / STEP);
    boolean pulp = to > body;
    double[] s = new double[n + 1 + (pulp ? PULP_STEPS : 0)];
    for (int i = 0; i <= n; i++) {
      s[i] = from + (body - from) * i / n;
    }
    if (pulp) {
      // Denser toward the end of the pulp, where the sections shrink fast.
      double length = digit.pulpEnd() - body;
      double last = Math.asin(Math.min(1, (to - body) / length));
      for (int i = 1; i <= PULP_STEPS; i++) {
        s[n + i] = body + length * Math.sin(last * i / PULP_STEPS);
      }
    }
    double offset = piece.gap().at(0, (from + to) / 2) + piece.wall() / 2;
    return tabulate(digit, s, offset);
  }

  private static Chart tabulate(DigitSurface digit, double[] s, double offset) {
    double[] rho = new double[s.length];
    double[] v = new double[s.length];
    double[] mu = new double[s.length];
    double[] axial = new double[s.length];
    for (int i = 0; i < s.length; i++) {
      double skin = digit.circumference(Math.min(s[i], digit.pulpEnd() - 1e-9)) / (2 * Math.PI);
      // Over the pulp the offset leans over until it points distally.
      rho[i] = s[i] > digit.tip() ? skin * (1 + offset / radius(digit)) : skin + offset;
      if (i > 0) {
        // Over the pulp the offset also adds length.
        double ds = s[i] - s[i - 1];
        ds *= s[i] > digit.tip() ? 1 + offset / (digit.pulpEnd() - digit.tip()) : 1;
        axial[i] = axial[i - 1] + ds;
        v[i] = v[i - 1] + Math.hypot(ds, rho[i] - rho[i - 1]);
        mu[i] = mu[i - 1] + (v[i] - v[i - 1]) * 2 / (rho[i] + rho[i - 1]);
      }
    }
    return new Chart(s, rho, v, mu, axial);
  }

  private static double radius(DigitSurface digit) {
    return digit.circumference(digit.tip()) / (2 * Math.PI);
  }

  /** Mean radius at a station (mm). */
  double rho(double station) {
    return interpolate(s, rho, station);
  }

  /** Length along the meridian (mm). */
  double v(double station) {
    return interpolate(s, v, station);
  }

  double mu(double station) {
    return interpolate(s, mu, station);
  }

  /** Length along the axis (mm). */
  double axial(double station) {
    return interpolate(s, axial, station);
  }

  /** Change of the radius along the meridian (1). */
  double taper(double station) {
    int k = interval(s, station);
    return (rho[k + 1] - rho[k]) / (v[k + 1] - v[k]);
  }

  /** The station at a length along the meridian (mm). */
  double station(double length) {
    return interpolate(v, s, length);
  }

  private double interpolate(double[] x, double[] y, double at) {
    int k = interval(x, at);
    return y[k] + (y[k + 1] - y[k]) * (at - x[k]) / (x[k + 1] - x[k]);
  }

  private int interval(double[] x, double at) {
    if (x == s) {
      // Along the body the stations are even.
      int even = (int) ((at - s[0]) * perStation);
      if (even >= 0 && even + 1 < s.length && s[even] <= at && at < s[even + 1]) {
        return even;
      }
    }
    int k = Arrays.binarySearch(x, at);
    return Math.max(0, Math.min(x.length - 2, k >= 0 ? k : -k - 2));
  }
}
