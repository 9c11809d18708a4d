package org.midlateral.document.pattern;

import org.midlateral.measurement.Level;

/** Levels as the sheets call them. */
public final class LevelNames {
  private LevelNames() {}

  /** The name of a level, short enough for a margin. */
  public static String of(Level level) {
    return switch (level) {
      case WEB -> "web";
      case PROXIMAL_PHALANX -> "proximal phalanx";
      case PIP -> "PIP axis";
      case MIDDLE_PHALANX -> "middle phalanx";
      case DIP -> "DIP axis";
      case TIP -> "tip";
    };
  }
}
