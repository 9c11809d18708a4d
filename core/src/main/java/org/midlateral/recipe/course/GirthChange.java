package org.midlateral.recipe.course;

import org.midlateral.measurement.Level;
import org.midlateral.measurement.ReadingError;

/**
 * A girth now against the one the present piece was made by.
 *
 * @param level where
 * @param asMade girth that the piece was made by (mm)
 * @param now last reading (mm)
 * @param otherPart whether one was read in the morning and one in the evening
 */
public record GirthChange(Level level, double asMade, double now, boolean otherPart) {

  /** Now less as made (mm). */
  public double change() {
    return now - asMade;
  }

  /** The smallest change that counts (mm); more between morning and evening. */
  public double smallest() {
    return ReadingError.TAPE.smallestChange() + (otherPart ? ReadingError.GIRTH_OVER_THE_DAY : 0);
  }

  /** Whether the finger is thicker there by more than the tape and the day can tell. */
  public boolean grown() {
    return change() > smallest();
  }

  /** Whether it is thinner there, likewise. */
  public boolean fallen() {
    return change() < -smallest();
  }
}
