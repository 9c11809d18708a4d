package org.midlateral.measurement;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** The digits that have a PIP joint; a thumb has none. */
public enum Digit {
  INDEX,
  MIDDLE,
  RING,
  LITTLE;

  /** How a file names it. */
  public String key() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The digit that a file names so. */
  public static Optional<Digit> of(String key) {
    return Stream.of(values()).filter(digit -> digit.key().equals(key)).findFirst();
  }
}
