package org.midlateral.viewer.form;

import java.math.BigDecimal;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.midlateral.measurement.LengthUnit;
import org.midlateral.measurement.key.InputKey;
import org.midlateral.measurement.key.ValueKind;

/** A number one step up or down, written the way it was. */
final class NumberStep {
  private static final Pattern DECIMAL = Pattern.compile("(-?\\d*\\.?\\d+)(\\s*[a-zA-Z\"°]*)");
  private static final Pattern FRACTION =
      Pattern.compile("(?:(\\d+)[ -]+)?(\\d+)/(\\d+)(\\s*[a-zA-Z\"]*)");
  private static final int RULER = 16;
  private static final double LONG = 20;

  private NumberStep() {}

  /**
   * The next value.
   *
   * @param text as it stands in the field
   * @param key of the field
   * @param unit of lengths that carry none of their own
   * @param steps how many, negative for down
   * @return the text with the number changed; the same text where there is no number
   */
  static String by(String text, InputKey key, LengthUnit unit, int steps) {
    Matcher fraction = FRACTION.matcher(text.strip());
    if (fraction.matches()) {
      return fraction(fraction, steps);
    }
    Matcher decimal = DECIMAL.matcher(text.strip());
    if (!decimal.matches()) {
      return text;
    }
    String own = decimal.group(2).strip();
    boolean inches = own.isEmpty() ? unit == LengthUnit.IN : own.matches("in|inch|inches|\"");
    if (key.kind() == ValueKind.LENGTH && inches && decimal.group(1).matches("\\d+")) {
      return ruler(Long.parseLong(decimal.group(1)) * RULER + steps) + decimal.group(2);
    }
    BigDecimal step = step(key, own.isEmpty() ? unit : ownUnit(own), decimal.group(1));
    BigDecimal next = new BigDecimal(decimal.group(1)).add(step.multiply(new BigDecimal(steps)));
    return next.stripTrailingZeros().toPlainString() + decimal.group(2);
  }

  private static String fraction(Matcher fraction, int steps) {
    long whole = fraction.group(1) == null ? 0 : Long.parseLong(fraction.group(1));
    long over = Long.parseLong(fraction.group(2));
    long under = Math.max(1, Long.parseLong(fraction.group(3)));
    long parts = Math.round((whole + over / (double) under) * RULER) + steps;
    return ruler(Math.max(0, parts)) + fraction.group(4);
  }

  /** Inches from sixteenths. */
  private static String ruler(long sixteenths) {
    long whole = sixteenths / RULER;
    long rest = sixteenths % RULER;
    if (rest == 0) {
      return Long.toString(whole);
    }
    long shared = Long.lowestOneBit(rest);
    String part = rest / shared + "/" + RULER / shared;
    return whole == 0 ? part : whole + " " + part;
  }

  private static LengthUnit ownUnit(String symbol) {
    return switch (symbol) {
      case "cm" -> LengthUnit.CM;
      case "mm" -> LengthUnit.MM;
      default -> LengthUnit.IN;
    };
  }

  private static BigDecimal step(InputKey key, LengthUnit unit, String number) {
    return switch (key.kind()) {
      case LENGTH -> {
        double high = key.refused().map(range -> range.high()).orElse(LONG);
        BigDecimal millimetres = new BigDecimal(high > LONG ? "1" : "0.1");
        yield unit == LengthUnit.MM ? millimetres : millimetres.movePointLeft(1);
      }
      case SHARE -> new BigDecimal("0.01");
      case NUMBER -> {
        double size = Math.abs(Double.parseDouble(number));
        int digits = size > 0 ? (int) Math.floor(Math.log10(size)) : 0;
        yield BigDecimal.ONE.movePointRight(digits - 1);
      }
      default -> BigDecimal.ONE;
    };
  }
}
