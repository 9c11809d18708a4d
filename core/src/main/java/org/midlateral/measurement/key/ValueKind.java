package org.midlateral.measurement.key;

/** What kind of value a key takes. */
public enum ValueKind {
  /** A length; mm in the key table and in records. */
  LENGTH("length", "a length"),
  NUMBER("number", "a number"),
  COUNT("count", "a whole number"),
  /** A part of a whole, as 0.5. */
  SHARE("share", "a share"),
  /** Degrees in files, radians in records. */
  ANGLE("angle", "an angle in degrees"),
  CHOICE("choice", "one of some words"),
  YES_NO("yes-no", "yes or no"),
  TEXT("text", "a text"),
  /** Items under it, each with keys of its own. */
  LIST("list", "a list");

  private final String word;
  private final String described;

  ValueKind(String word, String described) {
    this.word = word;
    this.described = described;
  }

  /** How a message names it. */
  public String described() {
    return described;
  }

  /** Whether its value is a number. */
  public boolean isNumeric() {
    return switch (this) {
      case LENGTH, NUMBER, COUNT, SHARE, ANGLE -> true;
      case CHOICE, YES_NO, TEXT, LIST -> false;
    };
  }

  static ValueKind of(String word) {
    for (ValueKind kind : values()) {
      if (kind.word.equals(word)) {
        return kind;
      }
    }
    throw new IllegalArgumentException("no kind named " + word);
  }
}
