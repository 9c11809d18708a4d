package org.midlateral.measurement.entry;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.midlateral.measurement.LengthUnit;
import org.midlateral.measurement.key.Shown;

/**
 * A length as people write it: {@code 62}, {@code 6.2cm}, {@code 2 1/2 in}, {@code 2-1/2"}.
 *
 * @param millimetres the length (mm)
 * @param unit the unit it was written in
 * @param ownUnit whether it carries that unit itself
 */
public record LengthText(double millimetres, LengthUnit unit, boolean ownUnit) {

  /** What may be written, in words. */
  public static final String FORMS = "62, 62 mm, 6.2 cm, 2 1/2 in or 2-1/2\"";

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
  public static final class NotALength extends Exception {
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
  public static LengthText parse(String text, LengthUnit fileUnit) throws NotALength {
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
    BigDecimal size =
        form.group("decimal") != null ? decimal(form.group("decimal")) : sum(form, unit);
    double millimetres = size.multiply(BigDecimal.valueOf(unit.millimetres())).doubleValue();
    if (!Double.isFinite(millimetres)) {
      throw new NotALength("is not a finite number");
    }
    boolean negative = form.group("sign").equals("-") && millimetres != 0;
    return new LengthText(negative ? -millimetres : millimetres, unit, !symbol.isEmpty());
  }

  /** A decimal; kept decimal, so that 6.23 cm and 62.3 mm are the same double. */
  private static BigDecimal decimal(String text) throws NotALength {
    double value = Double.parseDouble(text);
    if (!Double.isFinite(value)) {
      throw new NotALength("is not a finite number");
    }
    return value == 0 ? BigDecimal.ZERO : new BigDecimal(text);
  }

  private static String withPlainFractions(String text) {
    String plain = text;
    for (Map.Entry<String, String> sign : SIGNS.entrySet()) {
      plain = plain.replace(sign.getKey(), " " + sign.getValue());
    }
    return plain;
  }

  /** A fraction of an inch, with or without whole inches, as a ruler is divided. */
  private static BigDecimal sum(Matcher form, LengthUnit unit) throws NotALength {
    if (unit != LengthUnit.IN) {
      throw new NotALength("is a fraction, which is for inches");
    }
    int over = Integer.parseInt(form.group("over"));
    int under = Integer.parseInt(form.group("under"));
    if (under < 2 || under > 64 || Integer.bitCount(under) != 1) {
      throw new NotALength("is not a fraction of a ruler, from halves to sixty-fourths");
    }
    if (over >= under) {
      throw new NotALength(overOne(form, over, under));
    }
    BigDecimal whole =
        form.group("whole") == null ? BigDecimal.ZERO : new BigDecimal(form.group("whole"));
    return whole.add(BigDecimal.valueOf((double) over / under));
  }

  /** What a fraction of an inch or more may have been meant to be: itself, or one that ran on. */
  private static String overOne(Matcher form, int over, int under) {
    String fraction = form.group("over") + "/" + form.group("under");
    if (form.group("whole") != null) {
      return "has a fraction of a whole inch or more, " + fraction;
    }
    String same = fraction(over * (64 / under));
    List<String> meant = new ArrayList<>(List.of(same));
    String digits = form.group("over");
    for (int cut = 1; cut < digits.length(); cut++) {
      int rest = Integer.parseInt(digits.substring(cut));
      if (rest > 0 && rest < under && digits.charAt(cut) != '0') {
        meant.add(digits.substring(0, cut) + " " + rest + "/" + under);
      }
    }
    return "is a fraction of a whole inch or more; write " + Shown.either(meant);
  }

  /**
   * A length as it is written in a file of some unit; reading it back gives the same double. Inches
   * are written as fractions of a ruler. What the unit cannot say exactly is written in mm.
   *
   * @param millimetres the length (mm)
   * @param fileUnit the unit of the file
   */
  public static String write(double millimetres, LengthUnit fileUnit) {
    BigDecimal exact = BigDecimal.valueOf(millimetres);
    if (fileUnit == LengthUnit.IN) {
      BigDecimal parts = exact.multiply(BigDecimal.valueOf(64));
      BigDecimal[] whole = parts.divideAndRemainder(BigDecimal.valueOf(25.4));
      if (whole[1].signum() == 0 && millimetres >= 0 && millimetres < 1e4) {
        return fraction(whole[0].intValue());
      }
    } else {
      BigDecimal inUnit = exact.divide(BigDecimal.valueOf(fileUnit.millimetres()));
      return plain(inUnit);
    }
    return plain(exact) + " mm";
  }

  /** The nearest length that a ruler of the unit shows: mm, tenths of a cm, 32nds of an inch. */
  public static String writeNearest(double millimetres, LengthUnit fileUnit) {
    return switch (fileUnit) {
      case IN -> fraction(2 * (int) Math.round(millimetres * 32 / 25.4));
      case CM, MM -> write(Math.rint(millimetres), fileUnit);
    };
  }

  private static String fraction(int sixtyFourths) {
    int whole = sixtyFourths / 64;
    int rest = sixtyFourths % 64;
    if (rest == 0) {
      return Integer.toString(whole);
    }
    int shared = Math.min(Integer.lowestOneBit(rest), 64);
    String fraction = rest / shared + "/" + 64 / shared;
    return whole == 0 ? fraction : whole + " " + fraction;
  }

  private static String plain(BigDecimal value) {
    return value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
  }
}
