package org.midlateral.recipe.joint;

import java.util.Arrays;
import java.util.Comparator;
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

  /** Patches farther along the finger, or round it, do not count (mm). */
  private static final double ALONG = 3 * WIDTH;

  private static final double ROUND = 5 * WIDTH;

  /** Farther from every patch there is none (mm). */
  private static final double REACH = 3.5;

  private final DigitSurface digit;
  private final Patches trough;
  private final Patches dorsal;
  private final List<StripPull> strips;

  /**
   * The patches of one piece in arrays, from proximal: a picture asks for tens of thousands of
   * places.
   */
  private record Patches(double[] station, double[] girth, double[] pressure) {
    static Patches of(boolean dorsalShell, JointAnswer answer) {
      List<PatchPressure> own =
          answer.patches().stream()
              .filter(p -> p.dorsalShell() == dorsalShell)
              .sorted(Comparator.comparingDouble(PatchPressure::station))
              .toList();
      return new Patches(
          own.stream().mapToDouble(PatchPressure::station).toArray(),
          own.stream().mapToDouble(PatchPressure::girth).toArray(),
          own.stream().mapToDouble(PatchPressure::pressure).toArray());
    }

    double at(double place, double off, double round) {
      double sum = 0;
      double weights = 0;
      double nearest = Double.POSITIVE_INFINITY;
      for (int k = first(place - ALONG); k < station.length && station[k] < place + ALONG; k++) {
        double along = station[k] - place;
        double apart = Math.abs(girth[k] - off);
        double across = Math.min(apart, Math.abs(round - apart));
        if (across < ROUND) {
          double square = along * along + across * across;
          nearest = Math.min(nearest, square);
          double weight = Math.exp(-square / (2 * WIDTH * WIDTH));
          sum += weight * pressure[k];
          weights += weight;
        }
      }
      return nearest > REACH * REACH ? 0 : sum / weights;
    }

    /** The first patch from a station on. */
    private int first(double from) {
      int at = Arrays.binarySearch(station, from);
      return at < 0 ? -at - 1 : at;
    }
  }

  /** The field of a joint that is held. */
  public PressureField(JointHeld held) {
    this(held.worn().made().digit(), held.answer());
  }

  /** The field on a finger that is held. */
  public PressureField(DigitSurface digit, JointAnswer answer) {
    this.digit = digit;
    trough = Patches.of(false, answer);
    dorsal = Patches.of(true, answer);
    strips = answer.strips();
  }

  /**
   * What a piece presses with.
   *
   * @param dorsalShell whether the dorsal shell, not the trough
   * @param station mm
   * @param girth of the skin from the volar midline (mm)
   * @return MPa
   */
  public double under(boolean dorsalShell, double station, double girth) {
    return under(dorsalShell, station, girth, digit.circumference(station));
  }

  /**
   * The same, of a place whose section is known.
   *
   * @param round circumference of the skin there (mm)
   */
  public double under(boolean dorsalShell, double station, double girth, double round) {
    return (dorsalShell ? dorsal : trough).at(station, girth, round);
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
