package org.midlateral.viewer.colour;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;

/**
 * The span of a legend, with round ends and steps.
 *
 * @param low value of the map's first colour
 * @param high value of its last colour
 * @param step between two marks
 * @param map from low to high
 */
public record Scale(double low, double high, double step, ColourMap map) {
  private static final double STEPS = 5;

  /** Steps between which a scale is looked for that leaves least of itself empty. */
  private static final int LEAST_STEPS = 4;

  private static final int MOST_STEPS = 9;
  private static final double[] ROUND = {1, 2, 2.5, 5};

  /** What differs by a smaller share is shown as equal. */
  private static final double ALIKE = 0.02;

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
    return low <= high ? between(low, high) : new Scale(0, 1, 0.5, ColourMap.VIRIDIS);
  }

  /** A scale with round ends about two values, as close to them as round ends can be. */
  public static Scale between(double low, double high) {
    // Values all but equal are shown as equal: the scale reaches as far to either side.
    double margin = Math.max(ALIKE * Math.max(Math.abs(low), Math.abs(high)), 1e-9);
    boolean flat = high - low < margin;
    double from = flat ? low - margin : low;
    double to = flat ? high + margin : high;
    Scale best = null;
    for (double ten = tenBelow((to - from) / MOST_STEPS); ten <= to - from; ten *= 10) {
      for (double round : ROUND) {
        Scale tried = stepped(from, to, round * ten);
        int steps = tried.marks().size() - 1;
        boolean closer = best == null || tried.high - tried.low < (best.high - best.low) * 0.999;
        if (steps >= LEAST_STEPS && steps <= MOST_STEPS && closer) {
          best = tried;
        }
      }
    }
    return best == null ? stepped(from, to, roundStep((to - from) / STEPS)) : best;
  }

  private static Scale stepped(double from, double to, double step) {
    return new Scale(
        Math.floor(from / step + 1e-9) * step,
        Math.ceil(to / step - 1e-9) * step,
        step,
        ColourMap.VIRIDIS);
  }

  private static double tenBelow(double value) {
    return Math.pow(10, Math.floor(Math.log10(value)));
  }

  /** A scale for values with a sign, which reaches as far below zero as above. */
  public static Scale aboutZero(double[] values) {
    double most = 0;
    for (double value : values) {
      if (Double.isFinite(value)) {
        most = Math.max(most, Math.abs(value));
      }
    }
    if (most == 0) {
      return new Scale(-1, 1, 1, ColourMap.COOL_WARM);
    }
    double step = roundStep(2 * most / STEPS);
    double end = Math.ceil(most / step - 1e-9) * step;
    return new Scale(-end, end, step, ColourMap.COOL_WARM);
  }

  private static double roundStep(double rough) {
    double ten = tenBelow(rough);
    for (double round : ROUND) {
      if (rough <= round * ten * (1 + 1e-9)) {
        return round * ten;
      }
    }
    return 10 * ten;
  }

  /** The colour of a value: 0xRRGGBB. */
  public int colour(double value) {
    return map.colour((value - low) / (high - low));
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

  /** A value with its sign: {@code +0.12}, {@code −0.12}. */
  public static String signed(double value) {
    String size = text(Math.abs(value));
    // U+2212, the minus sign.
    return size.equals("0") ? size : (value < 0 ? "\u2212" : "+") + size;
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
