package org.midlateral.trough;

import org.midlateral.piece.GapField;

/**
 * The proximal edge rolled away from the skin: the gap rises toward the tongue's edge over the
 * flare's width, goes on level beyond it, and fades out along the flanks just distal of the web
 * clearance.
 *
 * @param height at the edge (mm)
 * @param width over which it rises (mm)
 * @param web station at which the flanks start (mm)
 * @param length of the tongue (mm)
 * @param half half-girth of the tongue at the web clearance station (mm)
 */
record Flare(double height, double width, double web, double length, double half)
    implements GapField {
  private static final double STEP = 1e-5;

  @Override
  public void jet(double girth, double station, double[] jet) {
    jet[0] = height(girth, station);
    jet[1] = 0;
    jet[2] = 0;
    if (jet[0] > 0) {
      jet[1] = (height(girth + STEP, station) - height(girth - STEP, station)) / (2 * STEP);
      jet[2] = (height(girth, station + STEP) - height(girth, station - STEP)) / (2 * STEP);
    }
  }

  @Override
  public boolean uniformAt(double station) {
    return height == 0 || station > web + width + 2 * STEP;
  }

  private double height(double girth, double station) {
    double across = girth / half;
    double along = Math.max(0, (web - station) / length);
    double rho = Math.sqrt(across * across + along * along);
    if (rho < 1e-9) {
      return 0;
    }
    double a = across / half;
    double b = along / length;
    double steep = Math.sqrt(a * a + b * b);
    // Distance to the ellipse rho = 1 to first order: exact on its axes.
    double distance = (1 - rho) * rho / steep;
    return height * rise(1 - distance / width) * (1 - rise((station - web) / width));
  }

  /**
   * From 0 to 1 with level ends, continuous in its second derivative: what lies over a wall with
   * this slope needs it for its own slope.
   */
  private static double rise(double u) {
    double v = Math.max(0, Math.min(1, u));
    return v * v * v * (10 + v * (6 * v - 15));
  }
}
