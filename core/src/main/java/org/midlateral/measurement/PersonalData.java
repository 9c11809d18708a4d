package org.midlateral.measurement;

import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Notices a reference that looks like a person's name or a birth date, and a note that holds one. A
 * reference is meant to be a code; what it stands for is kept elsewhere. A guess by form only:
 * nothing is looked up, nothing leaves the machine.
 */
final class PersonalData {
  private static final String CENTURY = "(19|20)\\d\\d";
  private static final String DAY = "(0?[1-9]|[12]\\d|3[01])";
  private static final String MONTH = "(0?[1-9]|1[0-2])";
  private static final String BETWEEN = "[-._/ ]";

  /** Year, month, day in one of the usual orders, with marks between or eight figures on end. */
  private static final Pattern DATE =
      Pattern.compile(
          "(?<!\\d)("
              + (CENTURY + BETWEEN + MONTH + BETWEEN + DAY)
              + ("|" + DAY + BETWEEN + MONTH + BETWEEN + CENTURY)
              + ("|" + MONTH + BETWEEN + DAY + BETWEEN + CENTURY)
              + ("|" + CENTURY + "(0[1-9]|1[0-2])(0[1-9]|[12]\\d|3[01])")
              + ("|(0[1-9]|[12]\\d|3[01])(0[1-9]|1[0-2])" + CENTURY)
              + ")(?!\\d)");

  /** Two words that begin with a capital, as Anna-Muster, MusterAnna or muster.A do. */
  private static final String NAME =
      "\\p{Lu}\\p{Ll}+[-._ ,]*\\p{Lu}\\p{Ll}+([-._ ]\\p{Lu}\\p{Ll}*)*\\d{0,2}"
          + "|\\p{Lu}\\p{Ll}{2,}[-._ ,]+\\p{Lu}\\.?"
          + "|\\p{Lu}[-._ ]+\\p{Lu}\\p{Ll}{2,}"
          + "|(?i:mr|mrs|ms|dr)[-._ ]+\\p{L}+";

  private static final Pattern ALL_NAME = Pattern.compile(NAME, Pattern.UNICODE_CHARACTER_CLASS);

  /** A name between other words. */
  private static final Pattern HOLDS_NAME =
      Pattern.compile(
          "(?<![\\p{L}\\d])(" + NAME + ")(?![\\p{L}\\d])", Pattern.UNICODE_CHARACTER_CLASS);

  private PersonalData() {}

  /** A caution about a text of the user's own, where its form gives cause. */
  static Optional<Finding> caution(Setting setting) {
    String text = setting.word();
    String key = setting.key().path();
    if (DATE.matcher(text).find()) {
      return Optional.of(caution(key, text, "a date, perhaps of birth"));
    }
    boolean named =
        key.equals("note") ? HOLDS_NAME.matcher(text).find() : ALL_NAME.matcher(text).matches();
    if (named) {
      return Optional.of(caution(key, text, "a person's name"));
    }
    return Optional.empty();
  }

  private static Finding caution(String key, String text, String what) {
    return Finding.caution(
        "personal-data",
        key,
        key
            + ": "
            + Shown.shown(text)
            + " looks like "
            + what
            + (key.equals("note")
                ? "; leave out what tells who the person is."
                : "; use a code of your own that says nothing about the person."),
        Double.NaN,
        Double.NaN);
  }
}
