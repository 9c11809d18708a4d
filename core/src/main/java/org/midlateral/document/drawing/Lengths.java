package org.midlateral.document.drawing;

import java.util.Locale;
import org.midlateral.measurement.LengthUnit;

/**
 * Lengths as the user measures them: tenths of a mm, hundredths of a cm, sixteenths of an inch.
 *
 * @param unit the measurements were given in
 */
public record Lengths(LengthUnit unit) {
  private static final int SIXTEENTHS = 16;

  /** Below this a sixteenth of an inch is too coarse, and mm are given (mm). */
  private static final double SMALL = 3;

  /** A length without its unit. */
  public String text(double millimetres) {
    return switch (unit) {
      case MM -> String.format(Locale.ROOT, "%.1f", millimetres);
      case CM -> String.format(Locale.ROOT, "%.2f", millimetres / 10);
      case IN -> inches(millimetres);
    };
  }

  /** The unit in a heading. */
  public String plural() {
    return unit == LengthUnit.IN ? "inches" : unit.symbol();
  }

  /** A length with its unit. */
  public String with(double millimetres) {
    return text(millimetres) + " " + unit.symbol();
  }

  /**
   * A thickness or a gap: in mm, as sheets are sold, and in the user's unit where it can say it.
   */
  public String thin(double millimetres) {
    String mm = String.format(Locale.ROOT, "%.1f mm", millimetres);
    long parts = Math.round(millimetres / 25.4 * SIXTEENTHS);
    boolean exact = Math.abs(parts * 25.4 / SIXTEENTHS - millimetres) < 0.05;
    if (unit == LengthUnit.IN && parts > 0 && (exact || millimetres >= SMALL)) {
      return inches(millimetres) + " in (" + mm + ")";
    }
    return mm;
  }

  /** The nearest sixteenth of an inch, in lowest terms: 2 7/16. */
  private static String inches(double millimetres) {
    long parts = Math.round(Math.abs(millimetres) / 25.4 * SIXTEENTHS);
    String sign = millimetres < 0 && parts > 0 ? "-" : "";
    long whole = parts / SIXTEENTHS;
    long rest = parts % SIXTEENTHS;
    if (rest == 0) {
      return sign + whole;
    }
    long shared = Long.lowestOneBit(rest);
    String fraction = rest / shared + "/" + SIXTEENTHS / shared;
    return sign + (whole == 0 ? fraction : whole + " " + fraction);
  }
}
