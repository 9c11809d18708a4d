package org.midlateral.mechanics.closure;

import java.util.ArrayList;
import java.util.List;

/**
 * A tubular sleeve drawn over finger and orthosis.
 *
 * @param levels its girth where it is worn
 * @param length along the finger (mm)
 * @param slackest flat width above which it hangs loose at its thinnest level (mm)
 * @param tightest flat width below which it is too tight at its thickest level (mm)
 * @param parts proximal to distal: one where one even width serves, two of a graded sleeve, none
 *     where no two widths serve either
 */
public record Sleeve(
    List<LevelGirth> levels,
    double length,
    double slackest,
    double tightest,
    List<SleevePart> parts) {
  /** A sleeve holds when it is stretched at least so far. Common practice, no source. */
  public static final double LEAST_STRETCH = 1.05;

  /** A sleeve presses too much when it is stretched farther. Common practice, no source. */
  public static final double MOST_STRETCH = 1.50;

  /** Past the ends of the orthosis, on each side (mm). Common practice, no source. */
  private static final double PAST_END = 5;

  public Sleeve {
    levels = List.copyOf(levels);
    parts = List.copyOf(parts);
  }

  /**
   * A part of a sleeve of one even width.
   *
   * @param from station of its proximal end (mm)
   * @param to station of its distal end (mm)
   * @param tightest flat width below which it is too tight at its thickest level (mm)
   * @param slackest flat width above which it hangs loose at its thinnest level (mm)
   */
  public record SleevePart(double from, double to, double tightest, double slackest) {
    private static SleevePart of(List<LevelGirth> levels, double from, double to) {
      double thinnest = levels.stream().mapToDouble(LevelGirth::worn).min().orElseThrow();
      double thickest = levels.stream().mapToDouble(LevelGirth::worn).max().orElseThrow();
      return new SleevePart(from, to, thickest / 2 / MOST_STRETCH, thinnest / 2 / LEAST_STRETCH);
    }

    /** How much wider the slackest is than the tightest; below 1 no width serves. */
    private double choice() {
      return slackest / tightest;
    }
  }

  static Sleeve of(List<LevelGirth> levels, double from, double to) {
    double start = from - PAST_END;
    double end = to + PAST_END;
    SleevePart even = SleevePart.of(levels, start, end);
    return new Sleeve(
        levels,
        end - start,
        even.slackest(),
        even.tightest(),
        even.choice() >= 1 ? List.of(even) : graded(levels, start, end));
  }

  /** Two widths that meet midway between two levels, where the choice of both is widest. */
  private static List<SleevePart> graded(List<LevelGirth> levels, double start, double end) {
    List<SleevePart> best = new ArrayList<>();
    double widest = 1;
    for (int k = 1; k < levels.size(); k++) {
      double meet = (levels.get(k - 1).station() + levels.get(k).station()) / 2;
      SleevePart proximal = SleevePart.of(levels.subList(0, k), start, meet);
      SleevePart distal = SleevePart.of(levels.subList(k, levels.size()), meet, end);
      double choice = Math.min(proximal.choice(), distal.choice());
      if (choice >= widest) {
        widest = choice;
        best = List.of(proximal, distal);
      }
    }
    return best;
  }

  /** Whether one even width serves all levels. */
  public boolean oneWidthServes() {
    return tightest <= slackest;
  }
}
