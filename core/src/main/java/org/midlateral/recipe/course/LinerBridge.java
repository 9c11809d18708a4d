package org.midlateral.recipe.course;

import java.util.OptionalDouble;
import org.midlateral.recipe.refit.Refit;
import org.midlateral.recipe.refit.Refit.AtLevel;

/** A liner that takes up what a loose trough stands off. */
final class LinerBridge {
  /** Liners are sold in steps of half a millimetre; common practice, no source. */
  private static final double STEP = 0.5;

  /** The thickest that is worth it (mm); more, and the piece is remade. Common practice. */
  static final double MOST = 2;

  private LinerBridge() {}

  /**
   * The liner to lay in (mm), beside the one that is there.
   *
   * @param trough on today's finger
   * @param liner that is in it (mm)
   * @return empty where the trough stands off too much, or by too uneven a gap, for one thickness
   */
  static OptionalDouble of(Refit trough, double liner) {
    double most = 0;
    double least = Double.POSITIVE_INFINITY;
    for (AtLevel level : trough.levels()) {
      most = Math.max(most, level.mean() - level.asMade());
      least = Math.min(least, level.mean() - level.asMade());
    }
    return of(most, least, trough.asMade(), liner);
  }

  /**
   * The same from what it stands off more than as made: no thicker than the room at its closest.
   *
   * @param most at any level (mm)
   * @param least at any level (mm)
   * @param asMade gap it was made with (mm)
   * @param liner that is in it (mm)
   */
  static OptionalDouble of(double most, double least, double asMade, double liner) {
    double thickness =
        STEP * Math.min(Math.round(most / STEP), Math.floor((least + asMade) / STEP));
    boolean thin = thickness >= STEP && liner + thickness <= MOST + STEP;
    boolean enough = most - thickness <= Refit.LOOSE;
    return thin && enough ? OptionalDouble.of(thickness) : OptionalDouble.empty();
  }
}
