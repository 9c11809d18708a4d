package org.midlateral.measurement.privacy;

import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The usual forms of a date, by which one of birth may stand in a text. */
final class DateForm {
  private DateForm() {}

  /** Made for the first text with a figure in it; every form has some. */
  private static final class Forms {
    private static final String CENTURY = "(19|20)\\d\\d";
    private static final String DAY = "(0?[1-9]|[12]\\d|3[01])";
    private static final String MONTH = "(0?[1-9]|1[0-2])";
    private static final String TWO_DAY = "(0[1-9]|[12]\\d|3[01])";
    private static final String TWO_MONTH = "(0[1-9]|1[0-2])";
    private static final String BETWEEN = "[-._/ ]";

    /** As they are abbreviated and written out in some of the languages notes are written in. */
    private static final String MONTH_NAME =
        CalendarNames.all().values().stream()
            .flatMap(names -> Stream.concat(names.months().stream(), names.shortMonths().stream()))
            .distinct()
            .map(Pattern::quote)
            .collect(Collectors.joining("|", "(", ")\\.?"));

    /** In figures, with marks between, or eight on end. */
    private static final Pattern FIGURES =
        Pattern.compile(
            "(?<!\\d)("
                + (CENTURY + BETWEEN + MONTH + BETWEEN + DAY)
                + ("|" + DAY + BETWEEN + MONTH + BETWEEN + CENTURY)
                + ("|" + MONTH + BETWEEN + DAY + BETWEEN + CENTURY)
                + ("|" + CENTURY + TWO_MONTH + TWO_DAY)
                + ("|" + TWO_DAY + TWO_MONTH + CENTURY)
                // A year of two figures is none in a longer row of numbers.
                + ("|(?<!\\d[-._/ ])" + DAY + "(?<mark>[./-])" + MONTH)
                + "\\k<mark>\\d\\d(?![-._/]\\d)"
                + ")(?!\\d)");

    /** A day, a month by its name, and a year, in the orders they are written in. */
    private static final Pattern NAMED =
        Pattern.compile(
            "(?<![\\p{L}\\d])("
                + (DAY + "(st|nd|rd|th)?[-._/ ]*" + MONTH_NAME + "[-._/, ]*(\\d{4}|\\d\\d)")
                + ("|" + MONTH_NAME + "[-._/ ]*" + DAY + "(st|nd|rd|th)?[-._/, ]+(\\d{4}|\\d\\d)")
                + ("|" + CENTURY + BETWEEN + MONTH_NAME + BETWEEN + DAY)
                + ")(?!\\d)",
            Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);

    /** What says itself that it is a birth's. */
    private static final Pattern BIRTH =
        Pattern.compile(
            "(?<!\\p{L})(born|birth|birthday|dob|d\\.o\\.b|geb|geboren)\\P{L}{0,8}\\d{2,4}",
            Pattern.CASE_INSENSITIVE);

    /** Six figures and nothing else: year, month, day, or day, month, year. */
    private static final Pattern SIX_FIGURES =
        Pattern.compile("\\d\\d" + TWO_MONTH + TWO_DAY + "|" + TWO_DAY + TWO_MONTH + "\\d\\d");
  }

  /** Whether a text holds one. */
  static boolean in(String text) {
    return hasFigure(text)
        && (Forms.FIGURES.matcher(text).find()
            || Forms.NAMED.matcher(text).find()
            || Forms.BIRTH.matcher(text).find()
            || Forms.SIX_FIGURES.matcher(text).matches());
  }

  private static boolean hasFigure(String text) {
    for (int i = 0; i < text.length(); i++) {
      if (text.charAt(i) >= '0' && text.charAt(i) <= '9') {
        return true;
      }
    }
    return false;
  }
}
