package org.midlateral.shell;

import org.midlateral.piece.Piece;

/**
 * Gap between a dorsal shell and the skin along the dorsal midline.
 *
 * @param min least (mm)
 * @param max largest, reliefs and bridges included (mm)
 */
public record DorsumGap(double min, double max) {
  private static final double STEP = 0.5;

  /** The gap of a shell. */
  public static DorsumGap of(Piece shell) {
    double min = Double.POSITIVE_INFINITY;
    double max = 0;
    for (double s = shell.outline().proximal(); s <= shell.outline().distal(); s += STEP) {
      double gap = shell.gap().at(shell.skinGirth(0, s), s);
      min = Math.min(min, gap);
      max = Math.max(max, gap);
    }
    return new DorsumGap(min, max);
  }
}
