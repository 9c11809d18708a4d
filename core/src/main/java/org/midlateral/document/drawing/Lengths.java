package org.midlateral.document.drawing;

import java.math.BigDecimal;
import java.util.Locale;
import org.midlateral.measurement.LengthUnit;

/**
 * Lengths as the user measures them: tenths of a mm, hundredths of a cm, sixteenths of an inch; or,
 * at the bench, as a ruler is read.
 *
 * @param unit the measurements were given in
 * @param ruler whether they are rounded to half a millimetre
 */
public record Lengths(LengthUnit unit, boolean ruler) {
  private static final int SIXTEENTHS = 16;

  /** As sheets and liners are sold. */
  private static final int SIXTY_FOURTHS = 64;

  private static final double INCH = 25.4;

  /** To a tenth of a millimetre. */
  public Lengths(LengthUnit unit) {
    this(unit, false);
  }

  /** As a ruler is read: to half a millimetre, and without a zero that nobody read. */
  public static Lengths ofARuler(LengthUnit unit) {
    return new Lengths(unit, true);
  }

  /** A length without its unit. */
  public String text(double millimetres) {
    double halves = Math.rint(2 * millimetres) / 2;
    return switch (unit) {
      case MM -> ruler ? plain(halves) : String.format(Locale.ROOT, "%.1f", millimetres);
      case CM -> ruler ? plain(halves / 10) : String.format(Locale.ROOT, "%.2f", millimetres / 10);
      case IN -> inches(millimetres, SIXTEENTHS);
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

  /** A length of what is cut from a roll: to a centimetre, or to half an inch. */
  public String about(double millimetres) {
    return unit == LengthUnit.IN
        ? "about " + inches(millimetres, 2) + " in"
        : "about " + Math.round(millimetres / 10) + " cm";
  }

  /** A span of small lengths, as {@code 2 to 3 mm}. */
  public String span(double from, double to) {
    return unit == LengthUnit.IN
        ? inches(from, SIXTEENTHS) + " to " + inches(to, SIXTEENTHS) + " in"
        : plain(from) + " to " + plain(to) + " mm";
  }

  /** A thickness or a gap: in mm, and first in the nearest 64th of an inch for who reads inches. */
  public String thin(double millimetres) {
    String mm = String.format(Locale.ROOT, "%.1f mm", millimetres);
    boolean said = Math.round(millimetres / INCH * SIXTY_FOURTHS) > 0;
    return unit == LengthUnit.IN && said
        ? inches(millimetres, SIXTY_FOURTHS) + " in (" + mm + ")"
        : mm;
  }

  private static String plain(double number) {
    BigDecimal text = BigDecimal.valueOf(number).stripTrailingZeros();
    return text.signum() == 0 ? "0" : text.toPlainString();
  }

  /** The nearest part of an inch, in lowest terms: 2 7/16. */
  private static String inches(double millimetres, int of) {
    long parts = Math.round(Math.abs(millimetres) / INCH * of);
    String sign = millimetres < 0 && parts > 0 ? "-" : "";
    long whole = parts / of;
    long rest = parts % of;
    if (rest == 0) {
      return sign + whole;
    }
    long shared = Long.lowestOneBit(rest);
    String fraction = rest / shared + "/" + of / shared;
    return sign + (whole == 0 ? fraction : whole + " " + fraction);
  }
}
