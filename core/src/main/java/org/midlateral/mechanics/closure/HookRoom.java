package org.midlateral.mechanics.closure;

import java.util.List;
import org.midlateral.digit.DigitSurface;
import org.midlateral.digit.Slice;
import org.midlateral.measurement.Order;
import org.midlateral.piece.Piece;
import org.midlateral.solid.Solid;

/** The room for a hook on the trough's outside, between its rims or the edges of its shell. */
final class HookRoom {
  /** The hook stays so far from a shell's edge, which slides on the trough (mm). */
  private static final double OFF_EDGE = 1;

  private static final double STEP = 1;

  private HookRoom() {}

  /**
   * Room along the girth, where it is least under the band (mm).
   *
   * @param solids what is worn, the trough first
   * @param width of the band, centred on the PIP axis (mm)
   */
  static double along(Order order, DigitSurface digit, List<Solid> solids, double width) {
    Piece trough = solids.get(0).piece();
    double covered = solids.size() > 1 ? order.design().dorsalShell().overlap() + OFF_EDGE : 0;
    double least = Double.POSITIVE_INFINITY;
    int steps = (int) Math.ceil(width / STEP);
    for (int i = 0; i <= steps; i++) {
      double station = digit.pipAxis() + width * ((double) i / steps - 0.5);
      double off = trough.gap().at(0, station) + trough.wall();
      Slice slice = digit.slice(station);
      double girth = trough.outline().wrap() * slice.circumference() / 2 - covered;
      least = Math.min(least, 2 * outside(slice, girth, off));
    }
    return least;
  }

  /** Length of the parallel curve some way off the skin: exact for a convex section. */
  private static double outside(Slice slice, double girth, double off) {
    double turn = slice.pointByAngle(0).angle(slice.pointByAngle(slice.angle(girth)));
    return girth + off * turn;
  }
}
