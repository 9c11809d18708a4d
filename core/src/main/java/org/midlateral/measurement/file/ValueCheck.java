package org.midlateral.measurement.file;

import java.util.regex.Pattern;
import org.midlateral.measurement.InputError;
import org.midlateral.measurement.LengthUnit;
import org.midlateral.measurement.entry.Entry;
import org.midlateral.measurement.entry.Entry.NodeShape;
import org.midlateral.measurement.entry.LengthText;
import org.midlateral.measurement.entry.Setting;
import org.midlateral.measurement.key.InputKey;
import org.midlateral.measurement.key.Shown;
import org.midlateral.measurement.key.ValueKind;

/** Checks one scalar against its key. */
final class ValueCheck {

  private static final Pattern DECIMAL =
      Pattern.compile("[-+]?(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][-+]?\\d+)?");
  private static final Pattern NOT_FINITE =
      Pattern.compile("[-+]?\\.?(?:nan|inf|infinity)", Pattern.CASE_INSENSITIVE);

  /**
   * No value is as long, a note of 120 signs outside the basic plane included; matching a pattern
   * against a longer one could take for ever.
   */
  private static final int LONGEST = 256;

  /** A value that cannot stand; carries what to tell. */
  static final class Refused extends Exception {
    private static final long serialVersionUID = 1;
    private final transient InputError error;

    Refused(InputError error) {
      super(error.text());
      this.error = error;
    }

    InputError error() {
      return error;
    }
  }

  private final Entry entry;
  private final InputKey key;
  private final LengthUnit unit;

  private ValueCheck(Entry entry, InputKey key, LengthUnit unit) {
    this.entry = entry;
    this.key = key;
    this.unit = unit;
  }

  /**
   * Checks one.
   *
   * @param entry a scalar
   * @param key its key
   * @param unit of lengths that carry none of their own
   * @throws Refused with the error to report
   */
  static Setting check(Entry entry, InputKey key, LengthUnit unit) throws Refused {
    return new ValueCheck(entry, key, unit).check();
  }

  private Setting check() throws Refused {
    if (entry.shape() != NodeShape.SCALAR) {
      String shape = entry.shape() == NodeShape.MAPPING ? "a section" : "a list";
      throw refused("is " + shape + ", not " + key.kind().described());
    }
    if (entry.isNothing()) {
      throw refused("has no value");
    }
    if (entry.text().length() > LONGEST) {
      throw refused("is too long");
    }
    if (key.or().contains(entry.text())) {
      return key.kind().isNumeric() && DECIMAL.matcher(entry.text()).matches()
          ? number(Double.parseDouble(entry.text()), entry.text())
          : word(entry.text());
    }
    return switch (key.kind()) {
      case LENGTH -> length();
      case NUMBER, SHARE, ANGLE, COUNT -> ranged(decimal(), written(key.unit()));
      case CHOICE -> choice();
      case YES_NO -> word(yesOrNo());
      case TEXT -> text();
      case LIST -> throw refused("is not a list");
    };
  }

  private Setting length() throws Refused {
    refuseNotFinite();
    try {
      LengthText length = LengthText.parse(entry.text(), unit);
      String symbol = length.ownUnit() ? "" : length.unit().symbol();
      if (length.millimetres() == 0 && key.or().contains("0")) {
        return number(0, written(symbol));
      }
      return ranged(length.millimetres(), written(symbol));
    } catch (LengthText.NotALength e) {
      throw refused(e.getMessage());
    }
  }

  private double decimal() throws Refused {
    refuseNotFinite();
    if (!entry.plain()) {
      throw refused("is a text in quotes, not " + key.kind().described());
    }
    if (!DECIMAL.matcher(entry.text()).matches()) {
      boolean comma = entry.text().matches("\\d+,\\d+");
      throw refused(comma ? "has a comma; write a point" : "is not " + key.kind().described());
    }
    double value = Double.parseDouble(entry.text());
    if (!Double.isFinite(value)) {
      throw refused("is not a finite number");
    }
    if (key.kind() == ValueKind.COUNT && value != Math.rint(value)) {
      throw refused("is not a whole number");
    }
    return value;
  }

  private void refuseNotFinite() throws Refused {
    if (NOT_FINITE.matcher(entry.text()).matches()) {
      throw refused("is not a finite number");
    }
  }

  private Setting ranged(double value, String written) throws Refused {
    if (key.refused().isPresent() && !key.refused().get().contains(value)) {
      throw refused(written, "is out of range");
    }
    return number(value, written);
  }

  private Setting choice() throws Refused {
    String choice = entry.text();
    if (key.choices().contains("yes") && choice.matches("true|false")) {
      choice = choice.equals("true") ? "yes" : "no";
    }
    if (key.path().equals("digit") && choice.equalsIgnoreCase("thumb")) {
      throw refused("has no PIP joint");
    }
    if (!key.choices().contains(choice)) {
      throw refused("is not known");
    }
    return word(choice);
  }

  private String yesOrNo() throws Refused {
    return switch (entry.text()) {
      case "yes", "true" -> "yes";
      case "no", "false" -> "no";
      default -> throw refused("is neither yes nor no");
    };
  }

  private Setting text() throws Refused {
    if (!key.pattern().isEmpty() && !entry.text().matches(key.pattern())) {
      throw refused("is not in the form allowed");
    }
    return word(entry.text());
  }

  private Setting number(double value, String written) {
    return new Setting(key, value, "", written, entry.place());
  }

  private Setting word(String word) {
    return new Setting(key, Double.NaN, word, word, entry.place());
  }

  /** The value as it was written, with the unit it lacks. */
  private String written(String symbol) {
    String value = entry.text().isBlank() ? "\"\"" : Shown.shown(entry.text().strip());
    if (symbol.isEmpty() || value.endsWith(".")) {
      return value;
    }
    return symbol.equals("°") ? value + symbol : value + " " + symbol;
  }

  private Refused refused(String what) {
    return refused(
        entry.shape() == NodeShape.SCALAR && !entry.isNothing() ? written("") : "", what);
  }

  private Refused refused(String written, String what) {
    String allowed = Shown.allowed(key, unit);
    String text = (written.isEmpty() ? "" : written + " ") + what + "; allowed: " + allowed;
    if (what.equals("is not a length")) {
      text += ", written as " + LengthText.FORMS;
    }
    String value = written.isEmpty() ? entry.text() : written;
    return new Refused(entry.place().error(entry.path(), value, allowed, text));
  }
}
