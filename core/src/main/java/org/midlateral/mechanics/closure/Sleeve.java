package org.midlateral.mechanics.closure;

import java.util.List;

/**
 * A tubular sleeve drawn over finger and orthosis.
 *
 * @param levels its girth where it is worn
 * @param length along the finger (mm)
 * @param slackest flat width above which it hangs loose at its thinnest level (mm)
 * @param tightest flat width below which it is too tight at its thickest level (mm)
 */
public record Sleeve(List<LevelGirth> levels, double length, double slackest, double tightest) {
  /** A sleeve holds when it is stretched at least so far. Common practice, no source. */
  public static final double LEAST_STRETCH = 1.05;

  /** A sleeve presses too much when it is stretched farther. Common practice, no source. */
  public static final double MOST_STRETCH = 1.50;

  /** Past the ends of the orthosis, on each side (mm). Common practice, no source. */
  private static final double PAST_END = 5;

  public Sleeve {
    levels = List.copyOf(levels);
  }

  static Sleeve of(List<LevelGirth> levels, double from, double to) {
    double thinnest = levels.stream().mapToDouble(LevelGirth::worn).min().orElseThrow();
    double thickest = levels.stream().mapToDouble(LevelGirth::worn).max().orElseThrow();
    return new Sleeve(
        levels,
        to - from + 2 * PAST_END,
        thinnest / 2 / LEAST_STRETCH,
        thickest / 2 / MOST_STRETCH);
  }

  /** Whether one even width serves all levels. */
  public boolean oneWidthServes() {
    return tightest <= slackest;
  }
}
