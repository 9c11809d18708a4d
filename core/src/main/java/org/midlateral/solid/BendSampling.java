package org.midlateral.solid;

import org.locationtech.jts.geom.Coordinate;
import org.midlateral.digit.Slice;
import org.midlateral.piece.Piece;

/**
 * How sharply the surfaces of a piece bend: normals are sampled a row at a time and compared with
 * their neighbours round the finger and along it. Both sides count for the same angle. Lengths are
 * the chart's, since points are spread in it: over a relief, say, they come to stand further apart.
 */
final class BendSampling {
  private final Piece piece;
  private final OffsetSurface surface;
  private final Chart chart;
  private final double turn;
  private final int half;
  private double[] before;
  private double[] here;
  private double reached = Double.NEGATIVE_INFINITY;

  /**
   * Sampling of a piece.
   *
   * @param turn between samples round the finger (rad)
   */
  BendSampling(Piece piece, Chart chart, double turn) {
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
    double wide = chart.rho(station) * turn;
    double on = chart.v(station) - reached;
    reached = chart.v(station);
    double last = 0;
    for (int i = 0; i <= 2 * half; i++) {
      double next = i < 2 * half ? bend(here, 6 * i, here, 6 * (i + 1), wide * wide) : 0;
      int column = Math.abs(i - half);
      round[column] = Math.max(round[column], scale * Math.max(last, next));
      along[column] = Math.max(along[column], scale * sharpest(i, wide * wide, on * on));
      last = next;
    }
  }

  /**
   * The sharpest bend from the station before: straight on, and to both sides where a flare or a
   * relief may climb aslant. A dorsal shell's step runs along the finger: what its diagonals see is
   * what is seen round it.
   *
   * @param wide squared length of a step round the finger (mm²)
   * @param on squared length of the step along it (mm²)
   */
  private double sharpest(int i, double wide, double on) {
    double sharpest = bend(before, 6 * i, here, 6 * i, on);
    if (i > 0 && !piece.dorsal()) {
      sharpest = Math.max(sharpest, bend(before, 6 * (i - 1), here, 6 * i, on + wide));
    }
    if (i < 2 * half && !piece.dorsal()) {
      sharpest = Math.max(sharpest, bend(before, 6 * (i + 1), here, 6 * i, on + wide));
    }
    return sharpest;
  }

  /** Turn of the normal times the longer of two ways, per squared length in the chart (1/mm). */
  private double bend(double[] a, int i, double[] b, int j, double square) {
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
    return Math.sqrt(turned * Math.max(inner, outer)) / square;
  }
}
