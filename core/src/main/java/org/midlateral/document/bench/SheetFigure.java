package org.midlateral.document.bench;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * A figure of the mechanics for the sheet.
 *
 * @param what it is, as the sheet names it
 * @param value the figure
 * @param low lower end of its band; NaN for none
 * @param high upper end of its band; NaN for none
 * @param unit of all three
 */
public record SheetFigure(String what, double value, double low, double high, String unit) {
  private static final MathContext TWO_FIGURES = new MathContext(2);

  /** The figure with its unit. */
  String shown() {
    return text(value) + (unit.equals("°") ? unit : " " + unit);
  }

  /** The band without its unit. */
  String band() {
    return Double.isNaN(low) ? "–" : text(low) + " to " + text(high);
  }

  /**
   * To two figures, or to the whole number where it has more, and lengths to a hundredth of a
   * millimetre and angles to a hundredth of a degree: no more is known.
   */
  private String text(double number) {
    if (Math.abs(number) >= 100) {
      return Long.toString(Math.round(number));
    }
    BigDecimal shown = new BigDecimal(number).round(TWO_FIGURES);
    boolean coarse = unit.equals("mm") || unit.equals("°");
    return (coarse && shown.scale() > 2 ? shown.setScale(2, RoundingMode.HALF_EVEN) : shown)
        .toPlainString();
  }
}
