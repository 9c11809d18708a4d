package org.midlateral.measurement;

/**
 * Something the user should know about an input or a design.
 *
 * @param severity note, caution or refusal
 * @param code a stable word for scripts, for example {@code web-clearance}
 * @param key the key of the file it is about, or null
 * @param text one sentence for a person: what is the matter and what to change
 * @param value the figure found, or NaN
 * @param limit the figure it is held against, or NaN
 */
public record Finding(
    Severity severity, String code, String key, String text, double value, double limit) {

  /** How much it matters. */
  public enum Severity {
    NOTE,
    CAUTION,
    /** The design cannot be made; no part is written. */
    REFUSAL
  }

  public static Finding note(String code, String key, String text, double value, double limit) {
    return new Finding(Severity.NOTE, code, key, text, value, limit);
  }

  public static Finding caution(String code, String key, String text, double value, double limit) {
    return new Finding(Severity.CAUTION, code, key, text, value, limit);
  }

  /** Made by {@link Refusals} alone. */
  static Finding refusal(String code, String key, String text, double value, double limit) {
    return new Finding(Severity.REFUSAL, code, key, text, value, limit);
  }
}
