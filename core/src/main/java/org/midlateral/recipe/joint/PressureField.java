package org.midlateral.recipe.joint;

import java.util.List;
import org.midlateral.digit.DigitSurface;
import org.midlateral.mechanics.joint.JointAnswer;
import org.midlateral.mechanics.joint.JointAnswer.PatchPressure;
import org.midlateral.mechanics.joint.JointAnswer.StripPull;

/**
 * The pressure on the skin at any place: that of the patches near it, smoothed over their own size.
 * Places are those of a right hand.
 */
public final class PressureField {
  /** Patches count by the bell curve of their distance, with this width (mm). */
  private static final double WIDTH = 2;

  /** Farther from every patch there is none (mm). */
  private static final double REACH = 3.5;

  private final DigitSurface digit;
  private final List<PatchPressure> patches;
  private final List<StripPull> strips;

  /** The field of a joint that is held. */
  public PressureField(JointHeld held) {
    this(held.worn().made().digit(), held.answer());
  }

  PressureField(DigitSurface digit, JointAnswer answer) {
    this.digit = digit;
    patches = answer.patches();
    strips = answer.strips();
  }

  /**
   * What a piece presses with.
   *
   * @param dorsal whether the dorsal shell, not the trough
   * @param station mm
   * @param girth of the skin from the volar midline (mm)
   * @return MPa
   */
  public double under(boolean dorsal, double station, double girth) {
    double round = digit.circumference(station);
    double sum = 0;
    double weights = 0;
    double nearest = Double.POSITIVE_INFINITY;
    for (PatchPressure patch : patches) {
      double along = patch.station() - station;
      if (patch.dorsalShell() == dorsal && Math.abs(along) < 3 * WIDTH) {
        double off = Math.IEEEremainder(patch.girth() - girth, round);
        double distance = Math.hypot(along, off);
        nearest = Math.min(nearest, distance);
        double weight = Math.exp(-distance * distance / (2 * WIDTH * WIDTH));
        sum += weight * patch.pressure();
        weights += weight;
      }
    }
    return nearest > REACH ? 0 : sum / weights;
  }

  /**
   * All that presses on the skin at a place: pieces, and the closure where it lies on bare skin.
   */
  public double onSkin(double station, double girth) {
    double pieces = Math.max(under(false, station, girth), under(true, station, girth));
    double closure = 0;
    for (StripPull strip : strips) {
      if (strip.from() <= station && station < strip.to()) {
        double bare = strip.area() / (strip.to() - strip.from());
        boolean lies = Math.abs(girth) > (digit.circumference(station) - bare) / 2;
        closure = lies ? strip.pressure() : 0;
      }
    }
    return Math.max(pieces, closure);
  }
}
