package org.midlateral.solid;

import org.midlateral.digit.Slice;
import org.midlateral.trough.Piece;

/**
 * How close the points of a piece must stand at each station: as asked for, closer where the
 * surfaces bend so sharply that flat triangles would leave them by too much (G9).
 */
final class Density {
  /** Chord error aimed at (mm); what is left to the bound covers the uneven triangles. */
  private static final double SAGITTA = 0.0145;

  /** An uneven triangle's longest edge, squared, over the spacing's. */
  private static final double UNEVEN = 1.75;

  /** Over the pulp the chart, which knows mean radii only, makes true lengths vary more. */
  private static final double UNEVEN_PULP = 2.3;

  /** The spacing changes by no more than this along the finger (1). */
  private static final double GRADE = 0.12;

  /** Normals are not sampled nearer to the pole of the pulp (mm). */
  private static final double SHORT = 0.05;

  private static final double STEP = 1;
  private static final double TURN = Math.toRadians(7);

  private final Chart chart;
  private final double from;
  private final double[] spacing;

  private Density(Chart chart, double from, double[] spacing) {
    this.chart = chart;
    this.from = from;
    this.spacing = spacing;
  }

  /**
   * The density of a piece.
   *
   * @param asked the largest spacing (mm)
   */
  static Density of(Piece piece, Chart chart, double asked) {
    double from = chart.v(piece.outline().proximal());
    double to = chart.v(Math.min(piece.outline().distal(), piece.digit().pulpEnd() - SHORT));
    int n = (int) Math.ceil((to - from) / STEP) + 1;
    double[] spacing = new double[n];
    Bends bends = new Bends(piece);
    for (int i = 0; i < n; i++) {
      double station = chart.station(Math.min(to, from + i * STEP));
      double uneven = station > piece.digit().tip() ? UNEVEN_PULP : UNEVEN;
      double sharpest = bends.sharpestAt(station);
      spacing[i] = Math.min(asked, Math.sqrt(8 * SAGITTA / (uneven * sharpest)));
    }
    for (int i = 1; i < n; i++) {
      spacing[i] = Math.min(spacing[i], spacing[i - 1] + GRADE * STEP);
    }
    for (int i = n - 2; i >= 0; i--) {
      spacing[i] = Math.min(spacing[i], spacing[i + 1] + GRADE * STEP);
    }
    return new Density(chart, from, spacing);
  }

  /** The spacing at a station (mm). */
  double spacing(double station) {
    double at = (chart.v(station) - from) / STEP;
    int k = (int) Math.max(0, Math.min(spacing.length - 2, at));
    double share = Math.max(0, Math.min(1, at - k));
    return spacing[k] + share * (spacing[k + 1] - spacing[k]);
  }

  /** Samples normals over a piece, a row at a time, and compares each with its neighbours. */
  private static final class Bends {
    private final Piece piece;
    private final OffsetSurface surface;
    private final int half;
    private double[] before;
    private double[] here;

    Bends(Piece piece) {
      this.piece = piece;
      this.surface = new OffsetSurface(piece);
      double widest = 0;
      for (var c : piece.outline().polygon().getExteriorRing().getCoordinates()) {
        double whole = piece.digit().circumference(Math.min(c.y, piece.digit().pulpEnd() - 1e-3));
        widest = Math.max(widest, Math.abs(c.x) * 2 * Math.PI / whole);
      }
      this.half = (int) Math.ceil(Math.min(Math.PI, widest) / TURN);
      this.here = new double[6 * (2 * half + 1)];
      this.before = new double[here.length];
    }

    /** The largest turn of the normal times length per squared length (1/mm) about a station. */
    double sharpestAt(double station) {
      double[] swap = before;
      before = here;
      here = swap;
      Slice slice = piece.digit().slice(station);
      boolean uniform = piece.gap().uniformAt(station);
      for (int i = -half; i <= half; i++) {
        surface.at(slice, i * TURN, uniform, here, i + half);
      }
      double sharpest = 1e-9;
      boolean first = before[3] == 0 && before[4] == 0 && before[5] == 0;
      for (int i = 0; i <= 2 * half; i++) {
        if (i > 0) {
          sharpest = Math.max(sharpest, bend(here, 6 * (i - 1), here, 6 * i));
        }
        if (!first) {
          sharpest = Math.max(sharpest, bend(before, 6 * i, here, 6 * i));
        }
      }
      return sharpest;
    }

    private double bend(double[] a, int i, double[] b, int j) {
      double turn = 0;
      double inner = 0;
      double middle = 0;
      double outer = 0;
      double wall = piece.wall();
      for (int k = 0; k < 3; k++) {
        double dn = b[j + 3 + k] - a[i + 3 + k];
        double dq = b[j + k] - a[i + k];
        turn += dn * dn;
        inner += dq * dq;
        middle += (dq + wall / 2 * dn) * (dq + wall / 2 * dn);
        outer += (dq + wall * dn) * (dq + wall * dn);
      }
      return Math.sqrt(turn * Math.max(inner, outer)) / middle;
    }
  }
}
