package org.midlateral.viewer.draft;

import java.util.Locale;
import org.midlateral.measurement.LengthUnit;
import org.midlateral.measurement.entry.LengthText;
import org.midlateral.measurement.key.AllowedRange;

/** Changes of the rises of a relief, as they are made in the picture. */
public final class RiseEdit {
  /** The list they stand in. */
  public static final String LIST = "relief.bubbles";

  /** By how much one is made higher or lower (mm). */
  private static final double STEP = 0.5;

  /** The highest that the key allows (mm). */
  private static final double HIGHEST =
      Draft.key(LIST + "[0].height").orElseThrow().refused().orElseThrow().high();

  /** Of the pair over the collateral ligaments. */
  private static final String PAIR_HEIGHT = "relief.height";

  private static final String PAIR_OFFSET = "relief.volar-offset";

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
    return higher(draft, path(number, "height"), steps);
  }

  private static Draft higher(Draft draft, String path, int steps) {
    try {
      double height = LengthText.parse(draft.get(path), draft.unit()).millimetres();
      double next = STEP * (Math.round(height / STEP) + steps);
      return draft.with(path, length(draft, Math.max(STEP, Math.min(HIGHEST, next))));
    } catch (LengthText.NotALength e) {
      return draft;
    }
  }

  /**
   * The pair with its middles elsewhere, as far as the key allows.
   *
   * @param offset volar of the mid-lateral lines (mm)
   */
  public static Draft pairMoved(Draft draft, double offset) {
    AllowedRange allowed = Draft.key(PAIR_OFFSET).orElseThrow().refused().orElseThrow();
    double kept = Math.max(allowed.low(), Math.min(allowed.high(), offset));
    return draft.with(PAIR_OFFSET, length(draft, kept));
  }

  /** The pair higher or lower, as one that stands by itself. */
  public static Draft pairRaised(Draft draft, int steps) {
    String usual = Draft.key(PAIR_HEIGHT).orElseThrow().standard().orElseThrow();
    boolean unset = draft.get(PAIR_HEIGHT).isEmpty();
    return higher(unset ? draft.with(PAIR_HEIGHT, usual + " mm") : draft, PAIR_HEIGHT, steps);
  }

  /** No pair. */
  public static Draft pairTakenOut(Draft draft) {
    return draft.with("relief.make", "no");
  }

  /** A length (mm) as a draft takes it, to a tenth of a millimetre whatever its unit is. */
  private static String length(Draft draft, double length) {
    // No minus before a zero.
    double rounded = Math.rint(10 * length) / 10 + 0.0;
    String unit = draft.unit() == LengthUnit.MM ? "" : " mm";
    return String.format(Locale.ROOT, "%.1f", rounded) + unit;
  }
}
