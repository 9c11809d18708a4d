package org.midlateral.relief;

import org.midlateral.digit.DigitSurface;
import org.midlateral.piece.GapField;

/**
 * A smooth local rise of the gap: h(1 - rho²)³ inside its elliptic footprint, zero outside. The
 * footprint goes on over the dorsal midline, where girth jumps from one end to the other.
 *
 * @param digit the skin
 * @param girth of its centre from the volar midline (mm)
 * @param station of its centre (mm)
 * @param height at its centre (mm)
 * @param width half-width along the girth (mm)
 * @param length half-length along the finger (mm)
 */
public record ReliefBubble(
    DigitSurface digit, double girth, double station, double height, double width, double length)
    implements GapField {
  @Override
  public void jet(double g, double s, double[] jet) {
    double along = (s - station) / length;
    double girths = Math.abs(along) < 1 ? across(g, s) : width;
    double across = girths / width;
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
    double round = g - girth - girths;
    if (round != 0) {
      // Over the dorsal midline the centre moves with the circumference.
      jet[2] -= jet[1] * Math.signum(round) * digit.circumferenceByStation(s);
    }
  }

  /** Girth from the centre (mm), the shorter way round. */
  private double across(double g, double s) {
    double across = g - girth;
    if (Math.abs(across) < width) {
      return across;
    }
    double round = digit.circumference(s);
    return Math.abs(across) > round / 2 ? across - Math.copySign(round, across) : across;
  }

  @Override
  public boolean uniformAt(double s) {
    return Math.abs(s - station) >= length;
  }

  /** Whether a place lies within the footprint or nearer to it than a distance (mm). */
  public boolean isNear(double g, double s, double distance) {
    double across = across(g, s) / (width + distance);
    double along = (s - station) / (length + distance);
    return across * across + along * along < 1;
  }
}
