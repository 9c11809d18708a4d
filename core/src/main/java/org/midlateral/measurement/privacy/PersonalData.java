package org.midlateral.measurement.privacy;

import java.util.Optional;
import org.midlateral.measurement.Finding;
import org.midlateral.measurement.entry.Setting;
import org.midlateral.measurement.key.Shown;

/**
 * Notices a reference that looks like a person's name or a birth date, and a note that holds one. A
 * reference is meant to be a code; what it stands for is kept elsewhere. A guess by form only:
 * nothing is looked up, nothing leaves the machine.
 */
public final class PersonalData {
  private PersonalData() {}

  /** Loads the words it goes by; a program that will read a file may do it early. */
  public static void prepare() {
    OrdinaryWords.contain("");
  }

  /** A caution about a text of the user's own, where its form gives cause. */
  public static Optional<Finding> caution(Setting setting) {
    return caution(setting.key().path(), setting);
  }

  /**
   * The same of a text in a list.
   *
   * @param key its path, with the number of the item
   */
  public static Optional<Finding> caution(String key, Setting setting) {
    String text = setting.word();
    if (DateForm.in(text)) {
      return Optional.of(caution(key, text, "a date, perhaps of birth"));
    }
    boolean named = isNote(key) ? NameForm.in(text) : NameForm.is(text);
    return named ? Optional.of(caution(key, text, "a person's name")) : Optional.empty();
  }

  private static boolean isNote(String key) {
    return key.endsWith("note");
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
            + (isNote(key)
                ? "; leave out what tells who the person is."
                : "; use a code of your own that says nothing about the person."),
        Double.NaN,
        Double.NaN);
  }
}
