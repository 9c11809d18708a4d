package org.midlateral.measurement;

/**
 * How far a reading is off when it is taken again, and from which change on two readings tell that
 * something has changed: the smallest change that counts is 1.96 √2 times the standard error, since
 * both readings are off; 95 of 100 pairs of readings of an unchanged finger differ by less (1.96
 * times the differences' standard deviation, which is √2 standard errors: Reissner et al., J Orthop
 * Surg Res 14:173 (2019), table 1 read).
 *
 * @param standardError of one reading, in its own unit
 * @param unit of the reading
 * @param source where the standard error comes from
 */
public record ReadingError(double standardError, String unit, String source) {
  /** Two-sided 95 % of a normal distribution. */
  private static final double Z = 1.96;

  /** A finger goniometer in one pair of hands (degrees). */
  public static final ReadingError GONIOMETER =
      new ReadingError(
          3.5,
          "°",
          "middle of 2.4 to 4.9°, Macionis, BMC Musculoskelet Disord 14:17 (2013), for one pair of"
              + " hands; between hands up to 11°, Reissner et al., J Orthop Surg Res 14:173 (2019)");

  /** A tape round a finger (mm). */
  public static final ReadingError TAPE = new ReadingError(1.0, "mm", "an assumption, from memory");

  /**
   * By how much more than two readings of the same hour a tape may differ between morning and
   * evening (mm): a quarter to half of a ring size.
   */
  public static final double GIRTH_OVER_THE_DAY = 1.3;

  /** The smallest change between two readings that counts, in the reading's unit. */
  public double smallestChange() {
    return Z * Math.sqrt(2) * standardError;
  }

  /** Whether a change is more than two readings of something unchanged differ by. */
  public boolean tells(double change) {
    return Math.abs(change) > smallestChange();
  }
}
