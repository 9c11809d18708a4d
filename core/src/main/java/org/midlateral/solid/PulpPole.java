package org.midlateral.solid;

import org.hipparchus.analysis.solvers.BrentSolver;
import org.midlateral.digit.DigitSurface;

/**
 * Steps near the end of the pulp, where all angles meet in one point: taken in the plane (r sin t,
 * r cos t) of the view along the finger, r the section's mean radius, which knows no pole.
 */
final class PulpPole {
  private static final double LEAST = 1e-9;

  private PulpPole() {}

  /**
   * Moves a point by small steps of angle and station.
   *
   * @return the new angle (rad) and station (mm)
   */
  static double[] move(DigitSurface digit, double angle, double station, double dt, double ds) {
    double h = 1e-6 * (digit.pulpEnd() - station);
    double r = radius(digit, station);
    double slope = (radius(digit, station + h) - radius(digit, station - h)) / (2 * h);
    double dr = slope * ds;
    double u = r * Math.sin(angle) + dr * Math.sin(angle) + r * dt * Math.cos(angle);
    double w = r * Math.cos(angle) + dr * Math.cos(angle) - r * dt * Math.sin(angle);
    double largest = radius(digit, digit.tip());
    double to = Math.min(0.98 * largest, Math.max(LEAST, Math.hypot(u, w)));
    double found =
        new BrentSolver(1e-13)
            .solve(200, s -> radius(digit, s) - to, digit.tip(), digit.pulpEnd() - 1e-14);
    return new double[] {Math.atan2(u, w), found};
  }

  private static double radius(DigitSurface digit, double station) {
    return digit.circumference(station) / (2 * Math.PI);
  }
}
