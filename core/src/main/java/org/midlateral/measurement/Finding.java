package org.midlateral.measurement;

import java.util.List;
import java.util.Locale;

/**
 * Something the user should know about an input or a design.
 *
 * @param severity note, caution or refusal
 * @param code a stable word for scripts, for example {@code web-clearance}
 * @param key the key of the file it is about, or null
 * @param text one sentence for a person: what is the matter and what to change
 * @param value the figure found, or NaN
 * @param limit the figure it is held against, or NaN
 * @param remedies of a refusal: changes that were tried and pass, nearest first
 */
public record Finding(
    Severity severity,
    String code,
    String key,
    String text,
    double value,
    double limit,
    List<Remedy> remedies) {

  public Finding {
    remedies = List.copyOf(remedies);
  }

  /** How much it matters. */
  public enum Severity {
    NOTE,
    CAUTION,
    /** The design, or a part of it, cannot be made. */
    REFUSAL
  }

  public static Finding note(String code, String key, String text, double value, double limit) {
    return new Finding(Severity.NOTE, code, key, text, value, limit, List.of());
  }

  public static Finding caution(String code, String key, String text, double value, double limit) {
    return new Finding(Severity.CAUTION, code, key, text, value, limit, List.of());
  }

  /**
   * A place along the finger in words, as {@code 24.0 mm from the web}.
   *
   * @param station mm, negative toward the palm
   */
  public static String fromWeb(double station) {
    return station < 0
        ? String.format(Locale.ROOT, "%.1f mm proximal of the web", -station)
        : String.format(Locale.ROOT, "%.1f mm from the web", station);
  }

  /** Made by {@link Refusals} alone. */
  static Finding refusal(String code, String key, String text, double value, double limit) {
    return new Finding(Severity.REFUSAL, code, key, text, value, limit, List.of());
  }

  /** The same with another sentence, and with remedies. */
  Finding with(String sentence, List<Remedy> tried) {
    return new Finding(severity, code, key, sentence, value, limit, tried);
  }
}
