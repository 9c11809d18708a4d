package org.midlateral.shell;

import org.midlateral.cut.Outline;
import org.midlateral.digit.DigitSurface;
import org.midlateral.measurement.Design;
import org.midlateral.measurement.Design.DorsalShellDesign;
import org.midlateral.measurement.DesignRefused;
import org.midlateral.measurement.Refusals;
import org.midlateral.piece.Bridge;
import org.midlateral.piece.GapField;
import org.midlateral.piece.Midline;
import org.midlateral.piece.Piece;
import org.midlateral.piece.Raised;
import org.midlateral.relief.Relief;

/** Makes the dorsal piece: it lies over the trough's rims and closes the tube. */
public final class DorsalShell {
  /** Name of the piece in files and reports. */
  public static final String NAME = "dorsal-shell";

  /** A shell shorter than this does not close a tube (mm). Common practice, no source. */
  public static final double SHORTEST = 15;

  /** Girth left between the two steps over the dorsum (mm). */
  private static final double LEAST_DORSUM = 2;

  /**
   * The usual wall is the trough's up to this (mm); a thicker one needs more girth for its step.
   */
  private static final double MOST_WALL = 1.6;

  /** Girth that a step over the trough's rim takes at least, however low it is (mm). */
  private static final double LEAST_STEP = 0.5;

  /** Distance of the mark from the rim (mm). */
  private static final double MARK_INSET = 1;

  private DorsalShell() {}

  /**
   * The dorsal shell that goes over a trough.
   *
   * @param bare the trough before its reliefs
   * @param trough with its reliefs, as it lies over the finger's waists
   * @param relief shared by both pieces
   * @throws DesignRefused where there is no room for it
   */
  public static Piece of(Design design, DigitSurface digit, Piece bare, Piece trough, Relief relief)
      throws DesignRefused {
    DorsalShellDesign shell = design.dorsalShell();
    Outline outline = DorsalOutline.of(shell, bare.outline(), digit, design.trough().corner());
    double wall = wall(shell, bare);
    double onTop = bare.wall() + shell.fitGap();
    requireStepUp(design, onTop);
    double rim = shell.fitGap();
    double top = highest(bare, outline, digit) + onTop;
    double room = room(outline, digit) - rim;
    if (room < LEAST_STEP) {
      throw new DesignRefused(
          Refusals.dorsalShellStep(
              rim + LEAST_STEP, 2 * (room - LEAST_STEP) + LEAST_DORSUM, LEAST_DORSUM));
    }
    double width = Math.min(room, OverlapStep.width(top - shell.clearance(), wall));
    double clearance =
        Math.max(shell.clearance(), top - OverlapStep.height(width, wall, radius(outline, digit)));
    GapField own = GapField.uniform(clearance).plus(relief.field());
    GapField gap =
        new OverlapStep(digit, bare.outline().wrap(), own, trough.gap(), onTop, rim, width);
    GapField under =
        new OverlapStep(
            digit, bare.outline().wrap(), GapField.uniform(0), trough.bridge(), 0, rim, width);
    Piece plain =
        Bridge.laid(
            new Piece(NAME, digit, outline, Midline.DORSAL, gap, wall).withBridge(under),
            new Bridge.Under(trough.gap(), onTop, bare.outline().wrap()));
    double inset = wall + MARK_INSET;
    return plain.withRaised(
        Raised.of(ProximalMark.at(outline.proximal() + inset), ProximalMark.HEIGHT));
  }

  /** Station from which the shell is free of its proximal mark (mm). */
  public static double free(Piece shell) {
    return shell.outline().proximal() + shell.wall() + 2 * MARK_INSET + ProximalMark.LENGTH;
  }

  /** The trough's largest gap under the shell's edges, reliefs left out: both pieces share them. */
  private static double highest(Piece bare, Outline outline, DigitSurface digit) {
    double highest = 0;
    for (double s = outline.proximal(); s <= outline.distal(); s += 0.5) {
      double edge = bare.outline().wrap() / 2 * digit.circumference(s);
      highest = Math.max(highest, bare.gap().at(edge, s));
    }
    return highest;
  }

  /** Over the trough's rims the shell must not come nearer to the skin than over the dorsum. */
  private static void requireStepUp(Design design, double onTop) throws DesignRefused {
    double top = design.trough().clearance() + design.trough().liner() + onTop;
    double clearance = design.dorsalShell().clearance();
    if (clearance > top) {
      throw new DesignRefused(Refusals.dorsalShellClearance(clearance, top));
    }
  }

  /** The wall asked for; else the trough's, as far as a step over its rim has room (mm). */
  private static double wall(DorsalShellDesign shell, Piece bare) {
    return shell.wall().orElse(Math.min(MOST_WALL, bare.wall()));
  }

  /** Girth that a step may take on either side (mm). */
  private static double room(Outline outline, DigitSurface digit) {
    double least = Double.POSITIVE_INFINITY;
    for (double s = outline.proximal(); s <= outline.distal(); s += 0.5) {
      least = Math.min(least, outline.wrap() * digit.circumference(s));
    }
    return (least - LEAST_DORSUM) / 2;
  }

  /** The largest mean radius under the shell (mm). */
  private static double radius(Outline outline, DigitSurface digit) {
    double most = 0;
    for (double s = outline.proximal(); s <= outline.distal(); s += 0.5) {
      most = Math.max(most, digit.circumference(s) / (2 * Math.PI));
    }
    return most;
  }
}
