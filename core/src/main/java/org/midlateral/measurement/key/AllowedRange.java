package org.midlateral.measurement.key;

/**
 * A closed range, in the key's own unit: mm for a length, degrees for an angle.
 *
 * @param low lowest value in it
 * @param high highest value in it
 */
public record AllowedRange(double low, double high) {

  public AllowedRange {
    if (!(low <= high)) {
      throw new IllegalArgumentException("not a range: " + low + " to " + high);
    }
  }

  /** Whether a value lies in it, to within the rounding of a change of units. */
  public boolean contains(double value) {
    double rounding = 1e-12 * Math.max(Math.abs(low), Math.abs(high));
    return value >= low - rounding && value <= high + rounding;
  }

  /** The end of the range that a value outside it is nearer to. */
  public double nearestEnd(double value) {
    return value < low ? low : high;
  }
}
