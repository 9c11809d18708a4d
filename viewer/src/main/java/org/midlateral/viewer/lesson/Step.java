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
      return "Held against the half: EI tells how stiff one section is, bend how the whole piece gives"
          + " way, and the angle held what the finger has of it once skin and closure give way too.";
    }
    RigidityBlock.Wrap wrap = comparison.cases().get(number - 1).figures();
    boolean elements = wrap.finiteElements() != null;
    return String.format(
        Locale.ROOT,
        "%s: a moment of %s N·mm about the PIP joint moves it %s mm and bends it by %s°, %s.%s",
        title(wrap),
        Scale.text(comparison.moment()),
        Scale.text(elements ? wrap.finiteElements().deflectionAtPip() : wrap.deflectionAtPip()),
        Scale.text(elements ? wrap.finiteElements().extensionLost() : wrap.extensionLost()),
        elements ? "by finite elements" : "as a beam",
        wrap.joint() == null
            ? ""
            : String.format(
                Locale.ROOT,
                " In its closure it holds the joint at %.1f°: skin and closure give way too.",
                wrap.joint().angleHeld()));
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
