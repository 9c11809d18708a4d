package org.midlateral.measurement.key;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Locale;
import org.midlateral.measurement.LengthUnit;

/** Values as messages and files show them. */
public final class Shown {

  private static final int LONGEST = 48;

  private Shown() {}

  /** A text from outside, on one line, printable and short. */
  public static String shown(String text) {
    StringBuilder shown = new StringBuilder();
    int at = 0;
    while (at < text.length() && shown.length() < LONGEST) {
      int point = text.codePointAt(at);
      at += Character.charCount(point);
      if (isPrintable(point)) {
        shown.appendCodePoint(point);
      } else {
        shown.append(String.format(Locale.ROOT, "\\u%04x", point));
      }
    }
    return at < text.length() ? shown + "..." : shown.toString();
  }

  private static boolean isPrintable(int point) {
    return switch (Character.getType(point)) {
      case Character.CONTROL,
          Character.FORMAT,
          Character.SURROGATE,
          Character.PRIVATE_USE,
          Character.UNASSIGNED,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR ->
          false;
      default -> true;
    };
  }

  /** A number to at most six significant digits, without an exponent where it is of usual size. */
  public static String number(double value) {
    if (value == 0 || !Double.isFinite(value)) {
      return value == 0 ? "0" : Double.toString(value);
    }
    BigDecimal rounded = new BigDecimal(value).round(new MathContext(6)).stripTrailingZeros();
    boolean usual = Math.abs(value) >= 1e-4 && Math.abs(value) < 1e9;
    return usual ? rounded.toPlainString() : rounded.toString();
  }

  /** Words in a row, as {@code a, b or c}. */
  public static String either(List<String> words) {
    int last = words.size() - 1;
    if (last < 1) {
      return String.join("", words);
    }
    return String.join(", ", words.subList(0, last)) + " or " + words.get(last);
  }

  /** What a key allows, in words: {@code 25 to 120 mm}. */
  public static String allowed(InputKey key, LengthUnit unit) {
    String base =
        switch (key.kind()) {
          case CHOICE -> either(key.choices());
          case YES_NO -> "yes or no";
          case TEXT -> key.form();
          case LIST ->
              "a list of " + key.refused().map(r -> range(r, "", 1)).orElse("some") + " items";
          default -> key.refused().map(r -> range(r, key, unit)).orElse(key.kind().described());
        };
    return key.or().isEmpty() ? base : either(key.or()) + ", or " + base;
  }

  /** A range of a key in words; a length in the user's unit, and in mm beside it. */
  public static String range(AllowedRange range, InputKey key, LengthUnit unit) {
    String inOwn = range(range, key.unit(), 1);
    if (key.kind() != ValueKind.LENGTH || unit == LengthUnit.MM) {
      return inOwn;
    }
    return range(range, unit.symbol(), unit.millimetres()) + " (" + inOwn + ")";
  }

  /** A range of a key in words, a length in one unit only. */
  public static String rangeIn(AllowedRange range, InputKey key, LengthUnit unit) {
    return key.kind() == ValueKind.LENGTH
        ? range(range, unit.symbol(), unit.millimetres())
        : range(range, key.unit(), 1);
  }

  private static String range(AllowedRange range, String unit, double scale) {
    String numbers = three(range.low() / scale) + " to " + three(range.high() / scale);
    return unit.isEmpty() || unit.equals("°") ? numbers + unit : numbers + " " + unit;
  }

  private static String three(double value) {
    return new BigDecimal(value).round(new MathContext(3)).stripTrailingZeros().toPlainString();
  }
}
