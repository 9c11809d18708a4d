package org.midlateral.relief;

import org.midlateral.trough.GapField;

/**
 * A smooth local rise of the gap: h(1 - rho²)³ inside its elliptic footprint, zero outside.
 *
 * @param girth of its centre from the volar midline (mm)
 * @param station of its centre (mm)
 * @param height at its centre (mm)
 * @param width half-width along the girth (mm)
 * @param length half-length along the finger (mm)
 */
public record ReliefBubble(double girth, double station, double height, double width, double length)
    implements GapField {
  @Override
  public void jet(double g, double s, double[] jet) {
    double across = (g - girth) / width;
    double along = (s - station) / length;
    double inside = 1 - across * across - along * along;
    if (inside <= 0) {
      jet[0] = 0;
      jet[1] = 0;
      jet[2] = 0;
      return;
    }
    double slope = -6 * height * inside * inside;
    jet[0] = height * inside * inside * inside;
    jet[1] = slope * across / width;
    jet[2] = slope * along / length;
  }

  @Override
  public boolean uniformAt(double s) {
    return Math.abs(s - station) >= length;
  }

  /** Whether a place lies within the footprint or nearer to it than a distance (mm). */
  public boolean isNear(double g, double s, double distance) {
    double across = (g - girth) / (width + distance);
    double along = (s - station) / (length + distance);
    return across * across + along * along < 1;
  }
}
