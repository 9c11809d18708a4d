package org.midlateral.piece;

import java.util.Locale;
import org.midlateral.digit.DigitSurface;
import org.midlateral.digit.Slice;
import org.midlateral.measurement.DesignRefused;
import org.midlateral.measurement.Finding;

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
            throw refusal(piece, s, 1 / bend, off);
          }
        }
      }
    }
  }

  private static DesignRefused refusal(Piece piece, double station, double radius, double off) {
    String beside = station > piece.digit().pipAxis() ? "middle-phalanx" : "proximal-phalanx";
    return new DesignRefused(
        Finding.refusal(
            "waist-folds",
            "circumference." + beside,
            String.format(
                Locale.ROOT,
                "At station %.1f mm the skin bends in with a radius of %.1f mm, and the outside of"
                    + " the %s lies %.1f mm off it and would fold; measure circumference.pip and"
                    + " circumference.%s and the lengths beside the joint again, or choose a"
                    + " thinner wall, liner or trough.",
                station,
                radius,
                piece.name(),
                off,
                beside),
            off,
            radius));
  }
}
