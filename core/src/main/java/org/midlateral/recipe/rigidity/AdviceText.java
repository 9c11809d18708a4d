package org.midlateral.recipe.rigidity;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.midlateral.recipe.rigidity.Adviser.Advised;
import org.midlateral.recipe.rigidity.Adviser.DesignAdvice;

/** Advice as a table for a person, in letters of one width. */
public final class AdviceText {
  private static final double KPA = 1000;
  private static final String HEAD = "%-40s %8s %8s %8s %9s";

  private AdviceText() {}

  /** The lines; this design's row first. */
  public static List<String> lines(DesignAdvice advice) {
    List<String> lines = new ArrayList<>();
    lines.add(
        String.format(
            Locale.ROOT,
            "Designs that hold the joint within %.0f degrees, the lowest pressure first",
            advice.within()));
    lines.add(String.format(Locale.ROOT, HEAD, "", "closure", "pull", "beyond", "pressure"));
    lines.add(String.format(Locale.ROOT, HEAD, "", "", "N", "degrees", "kPa"));
    lines.add(line(advice.own(), "this design"));
    for (Advised one : advice.better()) {
      lines.add(line(one, one.design()));
      lines.add("    " + settings(one));
    }
    if (advice.better().isEmpty()) {
      lines.add("No design that was tried holds it.");
    }
    lines.add("Beyond: how far the joint goes beyond the angle that was measured by hand.");
    return lines;
  }

  /** What to type, or to write into the file. */
  private static String settings(Advised one) {
    return one.settings().stream()
        .map(set -> "--set " + (set.contains(" ") ? "\"" + set + "\"" : set))
        .collect(Collectors.joining(" "));
  }

  private static String line(Advised one, String name) {
    return String.format(
        Locale.ROOT,
        "%-40s %8s %8.2f %8.1f %9.1f",
        name,
        one.closure(),
        one.tension(),
        one.angleHeld(),
        KPA * one.peakPressure());
  }
}
