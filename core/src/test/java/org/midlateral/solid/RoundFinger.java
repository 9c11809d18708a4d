package org.midlateral.solid;

import java.util.Map;
import java.util.TreeMap;
import org.midlateral.measurement.Digit;
import org.midlateral.measurement.Hand;
import org.midlateral.measurement.LengthUnit;
import org.midlateral.measurement.Level;
import org.midlateral.measurement.Measurements;

/** A straight finger that is round and equally thick all along: closed forms hold on it. */
final class RoundFinger {
  private RoundFinger() {}

  /**
   * Its measurements.
   *
   * @param radius of the skin (mm)
   */
  static Measurements of(double radius) {
    Map<Level, Double> tapes = new TreeMap<>();
    Map<Level, Double> widths = new TreeMap<>();
    for (Level level :
        new Level[] {Level.PROXIMAL_PHALANX, Level.PIP, Level.MIDDLE_PHALANX, Level.TIP}) {
      tapes.put(level, 2 * Math.PI * radius);
      widths.put(level, 2 * radius);
    }
    return new Measurements(
        "round",
        Hand.RIGHT,
        Digit.MIDDLE,
        LengthUnit.MM,
        tapes,
        widths,
        20,
        30,
        30,
        30,
        0,
        0,
        2.5,
        7.5,
        Map.of());
  }
}
