package org.midlateral.piece;

import java.util.ArrayList;
import java.util.List;
import org.midlateral.digit.DigitSurface;

/**
 * A stretch of the finger over which a piece stands further off the skin than its gap asks, since
 * it bridges a bend that its wall cannot follow.
 *
 * @param from station of its proximal end (mm)
 * @param to station of its distal end (mm)
 * @param rise at most, beyond the gap the piece would have there (mm)
 * @param station of that place (mm)
 * @param girth of that place from the volar midline, on either side (mm)
 */
public record BridgedStretch(double from, double to, double rise, double station, double girth) {
  /** Less is not told (mm): no hand feels it, and no tape reads it. */
  public static final double TOLD = 0.1;

  private static final double STEP = 0.1;
  private static final int COLUMNS = 24;

  /** The stretches that a piece bridges, from proximal to distal. */
  public static List<BridgedStretch> of(Piece piece) {
    List<BridgedStretch> stretches = new ArrayList<>();
    DigitSurface digit = piece.digit();
    double first = piece.outline().proximal();
    double last = Math.min(piece.outline().distal(), digit.tip());
    BridgedStretch open = null;
    for (double s = first; s <= last; s += STEP) {
      BridgedStretch here = highest(piece, s);
      if (here.rise < TOLD) {
        if (open != null) {
          stretches.add(open);
        }
        open = null;
      } else {
        open = open == null ? here : open.and(here);
      }
    }
    if (open != null) {
      stretches.add(open);
    }
    return List.copyOf(stretches);
  }

  private BridgedStretch and(BridgedStretch next) {
    BridgedStretch higher = next.rise > rise ? next : this;
    return new BridgedStretch(from, next.to, higher.rise, higher.station, higher.girth);
  }

  /** The highest place of one station under the piece, counted as a stretch of no length. */
  private static BridgedStretch highest(Piece piece, double station) {
    double half = piece.outline().wrap() * piece.digit().circumference(station) / 2;
    double[] jet = new double[3];
    double rise = 0;
    double girth = 0;
    if (piece.bridge().uniformAt(station)) {
      // A bridge rises in places; where it is the same all round there is none.
      return new BridgedStretch(station, station, 0, station, 0);
    }
    for (int i = -COLUMNS; i <= COLUMNS; i++) {
      double skin = piece.skinGirth(half * i / COLUMNS, station);
      piece.bridge().jet(skin, station, jet);
      if (jet[0] > rise) {
        rise = jet[0];
        girth = Math.abs(skin);
      }
    }
    return new BridgedStretch(station, station, rise, station, girth);
  }
}
