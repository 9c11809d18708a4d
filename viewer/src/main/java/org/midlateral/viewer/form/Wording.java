package org.midlateral.viewer.form;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Locale;
import java.util.Map;
import org.midlateral.measurement.LengthUnit;
import org.midlateral.measurement.key.AllowedRange;
import org.midlateral.measurement.key.InputKey;
import org.midlateral.measurement.key.ValueKind;

/** Words for keys, made from their names and the key table. */
final class Wording {
  private static final Map<String, String> SHORT_FORMS =
      Map.of(
          "pip", "PIP", "dip", "DIP", "pa12", "PA12", "petg", "PETG", "pla", "PLA", "pp", "PP",
          "tpu", "TPU", "pcl", "PCL");

  /** Words for keys whose names say less than a label can. */
  private static final Map<String, String> LABELS =
      Map.of(
          "trough.wrap", "Share of the girth",
          "relief.bubbles[].station", "From the web",
          "relief.bubbles[].girth", "From the midline");

  private Wording() {}

  /** What stands before a key's field. */
  static String label(InputKey key) {
    return LABELS.getOrDefault(key.path(), title(key.name()));
  }

  /** {@code PIP to DIP} for {@code pip-to-dip}. */
  static String title(String name) {
    StringBuilder title = new StringBuilder();
    for (String word : name.split("-")) {
      String shown = SHORT_FORMS.getOrDefault(word, word);
      if (title.length() == 0) {
        shown = shown.substring(0, 1).toUpperCase(Locale.ROOT) + shown.substring(1);
      }
      title.append(title.length() == 0 ? "" : " ").append(shown);
    }
    return title.toString();
  }

  /** A key's name where its section's head does not stand over it. */
  static String whole(InputKey key) {
    return key.section().isEmpty() ? label(key) : sectionTitle(key.section()) + ", " + label(key);
  }

  /** A word that can be chosen; units stay as they are written. */
  static String choice(InputKey key, String word) {
    return key.path().equals("unit") ? word : title(word);
  }

  /** The title of a section. */
  static String sectionTitle(String section) {
    if (section.equals("station")) {
      return "From the web";
    }
    return section.isEmpty()
        ? "Order"
        : title(section.replace(".", "-").replace("relief-bubbles[]", "rise"));
  }

  /** The unit beside a field; a length shows the unit of the file. */
  static String unit(InputKey key, LengthUnit unit) {
    return key.kind() == ValueKind.LENGTH ? unit.symbol() : key.unit();
  }

  /** A range of a key in the unit of its field, as {@code 44–75}. */
  static String range(AllowedRange range, InputKey key, LengthUnit unit) {
    return range(range, key, unit, 3);
  }

  /** The usual range as it stands beside a field: shorter in inches, where it would not fit. */
  static String usual(AllowedRange range, InputKey key, LengthUnit unit) {
    return range(range, key, unit, key.kind() == ValueKind.LENGTH && unit == LengthUnit.IN ? 2 : 3);
  }

  private static String range(AllowedRange range, InputKey key, LengthUnit unit, int digits) {
    double scale = key.kind() == ValueKind.LENGTH ? unit.millimetres() : 1;
    return number(range.low() / scale, digits) + "–" + number(range.high() / scale, digits);
  }

  static String number(double value) {
    return number(value, 3);
  }

  private static String number(double value, int digits) {
    BigDecimal rounded = new BigDecimal(value).round(new MathContext(digits));
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }

  /** All a user may want to know of a key, in one or two sentences. */
  static String hint(InputKey key, LengthUnit unit) {
    StringBuilder hint = new StringBuilder(key.comment());
    String symbol = unit(key, unit);
    String after = symbol.isEmpty() ? "" : symbol.equals("°") ? symbol : " " + symbol;
    key.refused()
        .filter(range -> key.kind().isNumeric())
        .ifPresent(r -> hint.append(" Allowed: ").append(range(r, key, unit)).append(after));
    key.usual().ifPresent(r -> hint.append("; usual: ").append(range(r, key, unit)).append(after));
    if (!key.form().isEmpty()) {
      hint.append(" Allowed: ").append(key.form());
    }
    if (hint.charAt(hint.length() - 1) != '.') {
      hint.append('.');
    }
    key.standard().ifPresent(s -> hint.append(" Left empty: ").append(standard(key, unit, s)));
    return hint.toString();
  }

  private static String standard(InputKey key, LengthUnit unit, String standard) {
    return shownDefault(key, unit) + (key.or().contains(standard) ? "" : spaced(key, unit)) + ".";
  }

  private static String spaced(InputKey key, LengthUnit unit) {
    String symbol = unit(key, unit);
    return symbol.isEmpty() || symbol.equals("°") ? symbol : " " + symbol;
  }

  /** The default as a field would show it; empty where there is none. */
  static String shownDefault(InputKey key, LengthUnit unit) {
    String standard = key.standard().orElse("");
    if (key.kind() != ValueKind.LENGTH || unit == LengthUnit.MM || !standard.matches("[\\d.]+")) {
      return standard;
    }
    return number(Double.parseDouble(standard) / unit.millimetres());
  }
}
