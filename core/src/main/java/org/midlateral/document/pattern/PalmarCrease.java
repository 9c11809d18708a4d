package org.midlateral.document.pattern;

import org.midlateral.measurement.Digit;

/** The crease under a finger's MCP joint, by its name. From memory, common anatomy. */
public final class PalmarCrease {
  private PalmarCrease() {}

  /** Its name under a finger: the distal one does not reach the index finger. */
  public static String under(Digit digit) {
    return digit == Digit.INDEX
        ? "radial end of the proximal palmar crease"
        : "distal palmar crease";
  }

  /** Which of the palmar creases, in a margin. */
  static String which(Digit digit) {
    return digit == Digit.INDEX ? "proximal, radial" : "distal";
  }
}
