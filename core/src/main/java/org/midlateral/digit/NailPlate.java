package org.midlateral.digit;

import org.midlateral.measurement.Measurements;

/**
 * Where the nail is drawn, so that nobody asks which end is the tip: over the distal part of the
 * dorsum, nearly half as long as the distal segment and as wide as a third of the girth. It follows
 * from the measurements and is no measurement itself (common practice, no source).
 *
 * @param digit the skin
 * @param from station of its proximal end (mm)
 * @param to of its distal end (mm)
 */
public record NailPlate(DigitSurface digit, double from, double to) {
  /** Its ends, from the DIP crease to the end of the pulp. */
  private static final double BEGINS = 0.4;

  private static final double ENDS = 0.84;

  /** From the end of the finger (mm). */
  private static final double LEAST = 0.5;

  /** Half of its width over half of the girth. */
  private static final double WIDE = 0.3;

  /** How much narrower it is at both ends. */
  private static final double ROUND = 0.75;

  /** The nail of a finger. */
  public static NailPlate of(Measurements measured, DigitSurface digit) {
    double crease = measured.webToPip() + measured.pipToDip();
    return new NailPlate(
        digit,
        crease + BEGINS * measured.dipToTip(),
        Math.min(crease + ENDS * measured.dipToTip(), digit.pulpEnd() - LEAST));
  }

  /** From the dorsal midline to its edge along the skin (mm), at a share of its length. */
  public double halfWidth(double share) {
    double round = Math.sqrt(1 - Math.pow(Math.abs(2 * share - 1), 4) * ROUND);
    return WIDE * round * digit.circumference(station(share)) / 2;
  }

  /** The station at a share of its length (mm). */
  public double station(double share) {
    return from + (to - from) * share;
  }
}
