package org.midlateral.viewer.draft;

import java.util.Locale;
import org.midlateral.measurement.LengthUnit;
import org.midlateral.measurement.entry.LengthText;

/** Changes of the rises that a relief has one by one, as they are made in the picture. */
public final class RiseEdit {
  /** The list they stand in. */
  public static final String LIST = "relief.bubbles";

  /** By how much one is made higher or lower (mm). */
  private static final double STEP = 0.5;

  /** The highest that the key allows (mm). */
  private static final double HIGHEST =
      Draft.key(LIST + "[0].height").orElseThrow().refused().orElseThrow().high();

  private RiseEdit() {}

  /** Where the value of a rise stands. */
  public static String path(int number, String key) {
    return LIST + "[" + number + "]." + key;
  }

  /**
   * One more, a millimetre high.
   *
   * @param station of its middle (mm from the web)
   * @param girth of its middle from the volar midline (mm), positive to the radial side
   */
  public static Draft added(Draft draft, double station, double girth) {
    int number = draft.items(LIST);
    return moved(draft, number, station, girth).with(path(number, "height"), length(draft, 1));
  }

  /** One of them with its middle elsewhere (mm). */
  public static Draft moved(Draft draft, int number, double station, double girth) {
    return draft
        .with(path(number, "station"), length(draft, station))
        .with(path(number, "girth"), length(draft, girth));
  }

  /**
   * One of them higher or lower, by half millimetres, and never lower than that.
   *
   * @param steps how many; less than none for lower
   */
  public static Draft raised(Draft draft, int number, int steps) {
    String path = path(number, "height");
    try {
      double height = LengthText.parse(draft.get(path), draft.unit()).millimetres();
      double next = STEP * (Math.round(height / STEP) + steps);
      return draft.with(path, length(draft, Math.max(STEP, Math.min(HIGHEST, next))));
    } catch (LengthText.NotALength e) {
      return draft;
    }
  }

  /** A length (mm) as a draft takes it, to a tenth of a millimetre whatever its unit is. */
  private static String length(Draft draft, double length) {
    // No minus before a zero.
    double rounded = Math.rint(10 * length) / 10 + 0.0;
    String unit = draft.unit() == LengthUnit.MM ? "" : " mm";
    return String.format(Locale.ROOT, "%.1f", rounded) + unit;
  }
}
