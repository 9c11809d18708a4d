package org.midlateral.measurement;

/** The levels along the finger at which a tape or a calliper is laid, proximal to distal. */
public enum Level {
  WEB("web"),
  PROXIMAL_PHALANX("proximal-phalanx"),
  PIP("pip"),
  MIDDLE_PHALANX("middle-phalanx"),
  DIP("dip"),
  TIP("tip");

  private final String key;

  Level(String key) {
    this.key = key;
  }

  /** The name of the level in measurement files and reports. */
  public String key() {
    return key;
  }

  /** Where the level lies, as a sentence has it. */
  public String words() {
    return switch (this) {
      case PIP -> "PIP joint";
      case DIP -> "DIP joint";
      default -> key.replace('-', ' ');
    };
  }
}
