package org.midlateral.measurement;

import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A length as people write it: {@code 62}, {@code 6.2cm}, {@code 2 1/2 in}, {@code 2-1/2"}.
 *
 * @param millimetres the length (mm)
 * @param unit the unit it was written in
 * @param ownUnit whether it carries that unit itself
 */
record LengthText(double millimetres, LengthUnit unit, boolean ownUnit) {

  /** What may be written, in words. */
  static final String FORMS = "62, 62 mm, 6.2 cm, 2 1/2 in or 2-1/2\"";

  private static final Pattern FORM =
      Pattern.compile(
          "(?<sign>[-+]?)\\s*"
              + "(?:(?<decimal>(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][-+]?\\d+)?)"
              + "|(?:(?<whole>\\d{1,9})(?:\\s+|\\s*-\\s*))?(?<over>\\d{1,9})/(?<under>\\d{1,9}))"
              + "\\s*(?<unit>[a-zA-Z\"″]*)");

  private static final Map<String, LengthUnit> UNITS =
      Map.of(
          "mm", LengthUnit.MM,
          "cm", LengthUnit.CM,
          "in", LengthUnit.IN,
          "inch", LengthUnit.IN,
          "inches", LengthUnit.IN,
          "\"", LengthUnit.IN,
          "″", LengthUnit.IN);

  private static final Map<String, String> SIGNS =
      Map.of("½", "1/2", "¼", "1/4", "¾", "3/4", "⅛", "1/8", "⅜", "3/8", "⅝", "5/8", "⅞", "7/8");

  /** A text that is no length; the message says what is wrong with it. */
  static final class NotALength extends Exception {
    private static final long serialVersionUID = 1;

    NotALength(String message) {
      super(message);
    }
  }

  /**
   * Reads one.
   *
   * @param text as written
   * @param fileUnit the unit of a length that carries none
   * @throws NotALength with a phrase that goes on after the value, as {@code is not a length}
   */
  static LengthText parse(String text, LengthUnit fileUnit) throws NotALength {
    Matcher form = FORM.matcher(withPlainFractions(text).strip());
    if (text.length() > 60 || !form.matches()) {
      throw new NotALength(
          text.matches("\\s*\\d+,\\d+\\D*") ? "has a comma; write a point" : "is not a length");
    }
    String symbol = form.group("unit").toLowerCase(Locale.ROOT);
    LengthUnit unit = symbol.isEmpty() ? fileUnit : UNITS.get(symbol);
    if (unit == null) {
      throw new NotALength("has a unit that is not known");
    }
    double size =
        form.group("decimal") != null ? Double.parseDouble(form.group("decimal")) : sum(form, unit);
    if (!Double.isFinite(size)) {
      throw new NotALength("is not a finite number");
    }
    double signed = form.group("sign").equals("-") ? -size : size;
    return new LengthText(signed * unit.millimetres(), unit, !symbol.isEmpty());
  }

  private static String withPlainFractions(String text) {
    String plain = text;
    for (Map.Entry<String, String> sign : SIGNS.entrySet()) {
      plain = plain.replace(sign.getKey(), " " + sign.getValue());
    }
    return plain;
  }

  /** A fraction of an inch, with or without whole inches, as a ruler is divided. */
  private static double sum(Matcher form, LengthUnit unit) throws NotALength {
    if (unit != LengthUnit.IN) {
      throw new NotALength("is a fraction, which is for inches");
    }
    int over = Integer.parseInt(form.group("over"));
    int under = Integer.parseInt(form.group("under"));
    if (under < 2 || under > 64 || Integer.bitCount(under) != 1 || over >= under) {
      throw new NotALength("is not a fraction of a ruler, from halves to sixty-fourths");
    }
    double whole = form.group("whole") == null ? 0 : Double.parseDouble(form.group("whole"));
    return whole + (double) over / under;
  }
}
