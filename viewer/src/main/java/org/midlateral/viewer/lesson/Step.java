package org.midlateral.viewer.lesson;

import java.util.Locale;
import java.util.Optional;
import org.midlateral.mechanics.RigidityBlock;
import org.midlateral.viewer.colour.Scale;

/**
 * One step of the lesson.
 *
 * @param number 0 before any load; then one a wrap; then all ratios; then one a reason
 */
record Step(int number) {
  static final Step FIRST = new Step(0);

  /** Why it is so. */
  enum Reason {
    /** Where the material stands from the neutral axis. */
    SECTIONS(
        "Why: material counts by the square of its distance from the neutral axis. A shallow trough"
            + " has all of it near the axis; the half has rims that stand far from it.",
        "From the neutral axis to the farthest material; EI: elastic modulus times second moment of"
            + " area at the PIP axis"),
    /** How the section itself gives way. */
    RIMS(
        "The section gives way too: under the strap the rims of an open trough move, which a beam"
            + " knows nothing of. Joined to its other half it keeps its shape.",
        "Change of the distance between the rims at the PIP axis, by finite elements"),
    /** EI along the finger. */
    CURVES(
        "The same all along the finger: each trough lies over the one before it, on a scale where"
            + " every line is ten times the last.",
        "EI of each trough's section from its proximal end to its distal one"),
    /** Slipping against bonded. */
    RING(
        "Closed is only sometimes better: two pieces that slip on each other bend each for itself."
            + " Only bonded along both edges do they make one tube.",
        "EI of this design's own pieces at the PIP axis, and how many times the trough's"),
    /** What the joint has of it. */
    JOINT(
        "And the finger? Play, skin and closure give way as well, often more than the plastic. Long"
            + " lever arms help all of them: the same moment takes less force.",
        "From the angle that the joint reaches to the angle at which it is held, by what gives way");

    private final String text;
    private final String figures;

    Reason(String text, String figures) {
      this.text = text;
      this.figures = figures;
    }

    /** What its figures are of. */
    String figures() {
      return figures;
    }
  }

  private static int ratios(Comparison comparison) {
    return comparison.cases().size() + 1;
  }

  static int last(Comparison comparison) {
    return ratios(comparison) + Reason.values().length;
  }

  /** The reason that is told; empty before. */
  Optional<Reason> reason(Comparison comparison) {
    int at = number - ratios(comparison) - 1;
    return at < 0 ? Optional.empty() : Optional.of(Reason.values()[at]);
  }

  /** Whether a wrap bears its load yet. */
  boolean isLoaded(int wrap) {
    return wrap < number;
  }

  /** Whether ratios to the half are told. */
  boolean tellsRatios(Comparison comparison) {
    return number >= ratios(comparison);
  }

  /** What is to be seen, in a sentence or two. */
  String text(Comparison comparison) {
    if (reason(comparison).isPresent()) {
      return reason(comparison).get().text;
    }
    if (number == 0) {
      return "One finger, one wall, one material; only how far they go round the finger differs."
          + " Nothing presses yet.";
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
        WrapTitle.of(wrap),
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
}
