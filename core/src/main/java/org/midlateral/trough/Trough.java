package org.midlateral.trough;

import org.midlateral.cut.Outline;
import org.midlateral.digit.DigitSurface;
import org.midlateral.measurement.Design.TroughDesign;
import org.midlateral.measurement.DesignRefused;
import org.midlateral.measurement.Refusals;
import org.midlateral.piece.GapField;
import org.midlateral.piece.Midline;
import org.midlateral.piece.Piece;

/** Makes the volar piece from its outline: clearance, liner and flare, and the wall. */
public final class Trough {
  /** Name of the piece in files and reports. */
  public static final String NAME = "trough";

  /** The outside of a bend keeps this share of its length, so that the wall never folds. */
  private static final double LEAST_LENGTH = 0.25;

  private Trough() {}

  /**
   * The trough before any relief.
   *
   * @throws DesignRefused where the volar wall would fold in the bend
   */
  public static Piece of(TroughDesign design, DigitSurface digit, Outline outline)
      throws DesignRefused {
    double web = outline.flankStart();
    double half = design.wrap() / 2 * digit.circumference(web);
    GapField gap =
        GapField.uniform(design.clearance() + design.liner())
            .plus(
                new Flare(
                    design.flare(), design.flareWidth(), web, web - outline.proximal(), half));
    requireUnfolded(design, digit, outline);
    return new Piece(NAME, digit, outline, Midline.VOLAR, gap, design.wall());
  }

  private static void requireUnfolded(TroughDesign design, DigitSurface digit, Outline outline)
      throws DesignRefused {
    double thickness = design.clearance() + design.liner() + design.wall();
    for (double s = outline.proximal(); s < outline.flankEnd(); s += 0.5) {
      double left = 1 - digit.curvature(s) * (digit.halfDepth(s) + thickness);
      if (left < LEAST_LENGTH) {
        throw new DesignRefused(Refusals.bendFolds(s, left, LEAST_LENGTH));
      }
    }
  }
}
