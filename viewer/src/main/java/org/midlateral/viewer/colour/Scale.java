package org.midlateral.viewer.colour;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;

/**
 * The span of a legend, with round ends and steps.
 *
 * @param low value of the darkest colour
 * @param high value of the lightest colour
 * @param step between two marks
 */
public record Scale(double low, double high, double step) {
  private static final double STEPS = 5;

  /** A scale that covers some values; not numbers are passed over. */
  public static Scale over(double[] values) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (double value : values) {
      if (Double.isFinite(value)) {
        low = Math.min(low, value);
        high = Math.max(high, value);
      }
    }
    return low <= high ? between(low, high) : new Scale(0, 1, 0.5);
  }

  /** A scale with round ends about two values. */
  public static Scale between(double low, double high) {
    // Values all but equal are shown as equal: the scale reaches a tenth to either side.
    double margin = Math.max(0.1 * Math.max(Math.abs(low), Math.abs(high)), 1e-9);
    boolean flat = high - low < margin;
    double from = flat ? low - margin : low;
    double to = flat ? high + margin : high;
    double step = roundStep((to - from) / STEPS);
    return new Scale(
        Math.floor(from / step + 1e-9) * step, Math.ceil(to / step - 1e-9) * step, step);
  }

  private static double roundStep(double rough) {
    double ten = Math.pow(10, Math.floor(Math.log10(rough)));
    for (double round : new double[] {1, 2, 2.5, 5}) {
      if (rough <= round * ten * (1 + 1e-9)) {
        return round * ten;
      }
    }
    return 10 * ten;
  }

  /** The colour of a value: 0xRRGGBB. */
  public int colour(double value) {
    return ColourMap.colour((value - low) / (high - low));
  }

  /** The marked values, from low to high. */
  public List<Double> marks() {
    List<Double> marks = new ArrayList<>();
    int n = (int) Math.round((high - low) / step);
    for (int i = 0; i <= n; i++) {
      marks.add(low + i * step);
    }
    return marks;
  }

  /** A value in three digits that count, thousands set apart: {@code 1 520 000}. */
  public static String text(double value) {
    if (Math.abs(value) < 1e-12) {
      return "0";
    }
    BigDecimal rounded = new BigDecimal(value).round(new MathContext(3)).stripTrailingZeros();
    if (Math.abs(value) < 1e-4) {
      return rounded.toString();
    }
    String plain = rounded.toPlainString();
    // U+2009, the thin space that ISO 80000-1 sets thousands apart with.
    return Math.abs(value) < 1e4 ? plain : plain.replaceAll("(?<=\\d)(?=(\\d{3})+$)", "\u2009");
  }
}
