package org.midlateral.shell;

import org.midlateral.cut.Outline;
import org.midlateral.digit.DigitSurface;
import org.midlateral.measurement.Design;
import org.midlateral.measurement.Design.DorsalShellDesign;
import org.midlateral.measurement.DesignRefused;
import org.midlateral.measurement.Refusals;
import org.midlateral.piece.GapField;
import org.midlateral.piece.Midline;
import org.midlateral.piece.Piece;
import org.midlateral.piece.Raised;
import org.midlateral.relief.Relief;

/** Makes the dorsal piece: it lies over the trough's rims and closes the tube. */
public final class DorsalShell {
  /** Name of the piece in files and reports. */
  public static final String NAME = "dorsal-shell";

  /** Girth left between the two steps over the dorsum (mm). */
  private static final double LEAST_DORSUM = 2;

  /** Distance of the mark from the rim (mm). */
  private static final double MARK_INSET = 1;

  private DorsalShell() {}

  /**
   * The dorsal shell that goes over a trough.
   *
   * @param bare the trough before its reliefs
   * @param relief shared by both pieces
   * @throws DesignRefused where there is no room for it
   */
  public static Piece of(Design design, DigitSurface digit, Piece bare, Relief relief)
      throws DesignRefused {
    DorsalShellDesign shell = design.dorsalShell();
    Outline outline = DorsalOutline.of(shell, bare.outline(), digit, design.trough().corner());
    double wall = shell.wall().orElse(bare.wall());
    double onTop = bare.wall() + shell.fitGap();
    requireStepUp(design, onTop);
    double rim = shell.fitGap();
    double height = highest(bare, outline, digit) + onTop - shell.clearance();
    double width = OverlapStep.width(height, wall);
    requireRoom(outline, digit, rim + width);
    GapField own = GapField.uniform(shell.clearance()).plus(relief.field());
    GapField gap =
        new OverlapStep(
            digit, bare.outline().wrap(), own, relief.over(bare).gap(), onTop, rim, width);
    Piece plain = new Piece(NAME, digit, outline, Midline.DORSAL, gap, wall);
    double inset = wall + MARK_INSET;
    return plain.withRaised(
        new Raised(ProximalMark.at(outline.proximal() + inset), ProximalMark.HEIGHT));
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

  private static void requireRoom(Outline outline, DigitSurface digit, double step)
      throws DesignRefused {
    for (double s = outline.proximal(); s <= outline.distal(); s += 0.5) {
      double dorsum = outline.wrap() * digit.circumference(s) - 2 * step;
      if (dorsum < LEAST_DORSUM) {
        throw new DesignRefused(Refusals.dorsalShellStep(step, dorsum, LEAST_DORSUM));
      }
    }
  }
}
