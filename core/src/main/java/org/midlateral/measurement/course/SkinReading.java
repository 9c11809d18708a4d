package org.midlateral.measurement.course;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What was seen of skin and fingertip, and what the patient says of soreness.
 *
 * @param skin under the piece
 * @param tip with the piece on
 * @param soreness 0 none to 10 the worst there is
 * @param at where it is sore or red
 */
public record SkinReading(
    Optional<SkinState> skin,
    Optional<TipState> tip,
    OptionalDouble soreness,
    Optional<SorePlace> at) {

  /** Skin under the piece. */
  public enum SkinState {
    CLEAR,
    /** Red, and gone within 30 minutes of taking it off. */
    RED_CLEARS,
    RED_STAYS,
    BROKEN
  }

  /** The fingertip with the piece on. */
  public enum TipState {
    USUAL,
    NUMB,
    BLUE,
    COLD
  }

  /** Where it is sore or red. */
  public enum SorePlace {
    RADIAL_SIDE,
    ULNAR_SIDE,
    DORSUM,
    VOLAR_SIDE,
    TIP,
    PALM;

    /** In words. */
    public String shown() {
      return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
  }
}
