package org.midlateral.mechanics;

import java.util.function.DoubleUnaryOperator;
import org.midlateral.cut.Outline;
import org.midlateral.digit.DigitSurface;
import org.midlateral.digit.Slice;

/**
 * A length of the finger on which one force presses.
 *
 * @param from its proximal station (mm)
 * @param to its distal station (mm)
 * @param area of the skin under the piece, projected along the force (mm²)
 */
public record ContactZone(double from, double to, double area) {
  private static final int STRIPS = 32;

  /** The zone of a piece whose edges stand at some half-girth (mm) at each station. */
  public static ContactZone on(
      DigitSurface digit, double from, double to, DoubleUnaryOperator halfGirth) {
    double area = 0;
    double strip = (to - from) / STRIPS;
    for (int i = 0; i < STRIPS; i++) {
      double s = from + (i + 0.5) * strip;
      area += strip * 2 * reach(digit.slice(s), halfGirth.applyAsDouble(s));
    }
    return new ContactZone(from, to, area);
  }

  /** The zone under a piece with this outline, which is the same on both sides. */
  public static ContactZone under(DigitSurface digit, Outline outline, double from, double to) {
    return on(digit, from, to, s -> outline.reach(s).map(r -> r.width() / 2).orElse(0.0));
  }

  /** How far the skin reaches sideways up to a girth: no farther than where it is widest. */
  private static double reach(Slice slice, double girth) {
    double widest = slice.circumference() / 4;
    return slice.point(slice.angle(Math.min(girth, widest))).getY();
  }

  /** Length along the finger (mm). */
  public double length() {
    return to - from;
  }

  /** Station of its middle (mm). */
  public double middle() {
    return (from + to) / 2;
  }
}
