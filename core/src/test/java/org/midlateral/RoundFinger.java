package org.midlateral;

import java.util.Map;
import java.util.TreeMap;
import org.midlateral.measurement.Digit;
import org.midlateral.measurement.Hand;
import org.midlateral.measurement.LengthUnit;
import org.midlateral.measurement.Level;
import org.midlateral.measurement.Measurements;
import org.midlateral.measurement.Room;

/** A straight finger that is round and equally thick all along: closed forms hold on it. */
public final class RoundFinger {
  private RoundFinger() {}

  /**
   * Its measurements.
   *
   * @param radius of the skin (mm)
   */
  public static Measurements of(double radius) {
    return of(radius, 20, 30, 30, 30);
  }

  /**
   * Its measurements.
   *
   * @param radius of the skin (mm)
   * @param palmarCreaseToWeb and the further lengths (mm)
   */
  public static Measurements of(
      double radius, double palmarCreaseToWeb, double webToPip, double pipToDip, double dipToTip) {
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
        palmarCreaseToWeb,
        webToPip,
        pipToDip,
        dipToTip,
        0,
        0,
        2.5,
        7.5,
        Map.of(),
        Room.NONE);
  }
}
