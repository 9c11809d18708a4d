package org.midlateral.solid;

import org.locationtech.jts.geom.Coordinate;
import org.midlateral.digit.Slice;
import org.midlateral.trough.Piece;

/**
 * How sharply the surfaces of a piece bend: normals are sampled a row at a time and compared with
 * their neighbours round the finger and along it. Both sides count for the same angle. Lengths are
 * the chart's, since points are spread in it: over a relief, say, they come to stand further apart.
 */
final class Bends {
  private final Piece piece;
  private final OffsetSurface surface;
  private final Chart chart;
  private final double turn;
  private final int half;
  private double[] before;
  private double[] here;
  private double last = Double.NEGATIVE_INFINITY;

  /**
   * Sampling of a piece.
   *
   * @param turn between samples round the finger (rad)
   */
  Bends(Piece piece, Chart chart, double turn) {
    this.piece = piece;
    this.chart = chart;
    this.surface = new OffsetSurface(piece);
    this.turn = turn;
    double widest = 0;
    for (Coordinate c : piece.outline().polygon().getExteriorRing().getCoordinates()) {
      double whole = piece.digit().circumference(Math.min(c.y, piece.digit().pulpEnd() - 1e-3));
      widest = Math.max(widest, Math.abs(c.x) * 2 * Math.PI / whole);
    }
    this.half = (int) Math.ceil(Math.min(Math.PI, 1.1 * widest) / turn);
    this.here = new double[6 * (2 * half + 1)];
    this.before = new double[here.length];
  }

  /** Number of angles, from the midline outward. */
  int columns() {
    return half + 1;
  }

  /**
   * Samples the next station.
   *
   * @param scale of what is written
   * @param round receives the turn of the normal times length per squared length, round the finger
   * @param along receives the same along the finger, from the station before
   */
  void at(double station, double scale, double[] round, double[] along) {
    double[] swap = before;
    before = here;
    here = swap;
    Slice slice = piece.digit().slice(station);
    boolean uniform = piece.gap().uniformAt(station);
    for (int i = -half; i <= half; i++) {
      surface.at(slice, i * turn, uniform, here, i + half);
    }
    double across = chart.rho(station) * turn;
    double on = chart.v(station) - last;
    last = chart.v(station);
    double byRound = scale / (across * across);
    double byAlong = on == Double.POSITIVE_INFINITY ? 0 : scale / (on * on);
    for (int i = 0; i <= 2 * half; i++) {
      int column = Math.abs(i - half);
      if (i > 0) {
        double bend = byRound * bend(here, 6 * (i - 1), here, 6 * i);
        round[column] = Math.max(round[column], bend);
        int other = Math.abs(i - 1 - half);
        round[other] = Math.max(round[other], bend);
      }
      along[column] = Math.max(along[column], byAlong * bend(before, 6 * i, here, 6 * i));
    }
  }

  /** Turn of the normal from one point to another, times the longer of the two ways (mm). */
  private double bend(double[] a, int i, double[] b, int j) {
    double turned = 0;
    double inner = 0;
    double outer = 0;
    for (int k = 0; k < 3; k++) {
      double dn = b[j + 3 + k] - a[i + 3 + k];
      double dq = b[j + k] - a[i + k];
      turned += dn * dn;
      inner += dq * dq;
      outer += (dq + piece.wall() * dn) * (dq + piece.wall() * dn);
    }
    return Math.sqrt(turned * Math.max(inner, outer));
  }
}
