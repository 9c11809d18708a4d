package org.midlateral.viewer.lesson;

import java.util.Locale;
import org.midlateral.mechanics.RigidityBlock;
import org.midlateral.viewer.colour.Scale;

/**
 * One step of the lesson.
 *
 * @param number 0 before any load; then one a wrap; the last with all ratios
 */
record Step(int number) {
  static final Step FIRST = new Step(0);

  static int last(Comparison comparison) {
    return comparison.cases().size() + 1;
  }

  /** Whether a wrap bears its load yet. */
  boolean isLoaded(int wrap) {
    return wrap < number;
  }

  /** Whether ratios to the half are told. */
  boolean tellsRatios(Comparison comparison) {
    return number == last(comparison);
  }

  /** What is to be seen, in a sentence or two. */
  String text(Comparison comparison) {
    if (number == 0) {
      return "One finger, one wall, one material; only the wrap differs. Nothing presses yet.";
    }
    if (tellsRatios(comparison)) {
      return "Held against the half: the section's EI, and the extension that is lost. The two do"
          + " not tell the same story.";
    }
    RigidityBlock.Wrap wrap = comparison.cases().get(number - 1).figures();
    return String.format(
        Locale.ROOT,
        "%s: a moment of %s N·mm about the PIP joint moves it %s mm and costs %s° of extension.",
        title(wrap),
        Scale.text(comparison.moment()),
        Scale.text(wrap.deflectionAtPip()),
        Scale.text(wrap.extensionLost()));
  }

  /** What a wrap is called. */
  static String title(RigidityBlock.Wrap wrap) {
    if (wrap.wrap() == 1) {
      return "Closed";
    }
    String share = String.format(Locale.ROOT, "%.2f", wrap.wrap());
    return wrap.wrap() == 0.5 ? "Half, wrap " + share : "Shallow, wrap " + share;
  }
}
