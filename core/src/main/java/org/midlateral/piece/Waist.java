package org.midlateral.piece;

import org.midlateral.digit.DigitSurface;
import org.midlateral.digit.Slice;
import org.midlateral.measurement.DesignRefused;
import org.midlateral.measurement.Level;
import org.midlateral.measurement.Refusals;

/**
 * Where a finger narrows beside its joint the skin bends in along the finger. What lies off it by
 * as much as the radius of that bend has shrunk to a crease, and beyond it folds.
 */
public final class Waist {
  /** The outside keeps this share of the skin's length at least. */
  private static final double LEAST_LENGTH = 0.2;

  private static final double STEP = 0.5;
  private static final int ANGLES = 6;

  private Waist() {}

  /**
   * Sees to it that a piece can lie over the waists of its finger.
   *
   * @throws DesignRefused where its outside would fold
   */
  public static void requireRoom(Piece piece) throws DesignRefused {
    DigitSurface digit = piece.digit();
    double from = piece.dorsal() ? piece.outline().proximal() : piece.outline().flankStart();
    double to = Math.min(piece.outline().distal(), digit.tip());
    for (double s = from; s < to; s += STEP) {
      Slice slice = digit.slice(s);
      double edge = Math.PI * piece.outline().wrap();
      for (int i = -ANGLES; i <= ANGLES; i++) {
        double t = piece.midline().skinAngle(edge * i / ANGLES);
        double bend = slice.curvatureAlong(t);
        if (bend > 0) {
          double off = piece.gap().at(slice.girth(t), s) + piece.wall();
          if (1 - bend * off < LEAST_LENGTH) {
            Level beside = s > digit.pipAxis() ? Level.MIDDLE_PHALANX : Level.PROXIMAL_PHALANX;
            throw new DesignRefused(Refusals.waistFolds(piece.name(), beside, s, 1 / bend, off));
          }
        }
      }
    }
  }
}
