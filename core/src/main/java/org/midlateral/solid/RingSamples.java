package org.midlateral.solid;

import java.util.Arrays;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.densify.Densifier;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineString;
import org.midlateral.accuracy.ErrorBudget;
import org.midlateral.digit.DigitSurface;
import org.midlateral.digit.Slice;
import org.midlateral.piece.Piece;

/**
 * Points spread along a ring of the outline, evenly on the mid-surface, denser in sharp bends: an
 * even number, every second one meant for a vertex.
 */
final class RingSamples {
  /** The ring is looked at in steps no longer than this (mm). */
  private static final double STEP = 0.3;

  /** Half-length over which a bend is measured, and density smoothed (mm). */
  private static final double REACH = 0.6;

  /** Root of the bend that a chord of the surfaces' edges may span at first (mm^1/2). */
  private static final double BEND = Math.sqrt(8 * ErrorBudget.CHORD_OF_EDGES_AT_FIRST);

  private final Coordinate[] ring;

  /** How many vertices there are up to each of the ring's corners. */
  private final double[] at;

  private final int count;
  private final double last;
  private final int[] segment;
  private final double[] share;

  private RingSamples(Coordinate[] ring, double[] at, double last) {
    this.last = last;
    this.ring = ring;
    this.at = at;
    this.count = 2 * (int) Math.ceil(at[at.length - 1] - 1e-6);
    this.segment = new int[count];
    this.share = new double[count];
    double total = at[at.length - 1];
    int k = 0;
    for (int i = 0; i < count; i++) {
      double target = total * i / count;
      while (at[k + 1] <= target) {
        k++;
      }
      segment[i] = k;
      share[i] = (target - at[k]) / (at[k + 1] - at[k]);
    }
  }

  /**
   * Points along a ring.
   *
   * @param line closed, counter-clockwise for an outer edge, clockwise round a hole
   * @param piece whose surfaces end half a wall off the ring: round a hole, they end on a longer
   *     one
   * @param surface its inner surface
   */
  static RingSamples of(
      LineString line, Piece piece, OffsetSurface surface, Chart chart, SizingField density) {
    double rim = piece.wall() / 2;
    DigitSurface digit = piece.digit();
    Coordinate[] ring = Densifier.densify(line, STEP).getCoordinates();
    boolean hole = !Orientation.isCCW(ring);
    int n = ring.length - 1;
    double[][] point = new double[n][];
    for (int i = 0; i < n; i++) {
      point[i] = roundBody(ring[i], chart, digit);
    }
    double[] length = new double[n];
    for (int i = 0; i < n; i++) {
      length[i] = Math.sqrt(square(point[i], point[(i + 1) % n]));
    }
    double[] frame = new double[6 * n];
    for (int i = 0; i < n; i++) {
      double s = Math.min(ring[i].y, digit.pulpEnd() - 1e-6);
      Slice slice = digit.slice(s);
      surface.at(
          slice, piece.midline().angle(slice, ring[i].x), piece.gap().uniformAt(s), frame, i);
    }
    double[] at = new double[n + 1];
    for (int i = 0; i < n; i++) {
      int j = (i + 1) % n;
      double radius = Math.min(radius(point, length, i), radius(point, length, j));
      double counted = counted(ring[i], ring[j], chart, digit, density);
      double longer = hole ? 1 + rim / radius : 1;
      double counts = longer * counted / density.spacing(ring[i].y);
      counts = Math.max(counts, bends(frame, i, j, piece.wall()) / BEND);
      at[i + 1] =
          at[i] + Math.max(counts, length[i] / Math.sqrt(8 * ErrorBudget.CHORD_ALONG_RIM * radius));
    }
    double shortOfPole = 1e-6 * (digit.pulpEnd() - digit.tip());
    return new RingSamples(ring, at, digit.pulpEnd() - shortOfPole);
  }

  /**
   * The same, closer in places.
   *
   * @param times how many times as close after each vertex
   */
  RingSamples closer(double[] times) {
    double[] most = new double[ring.length - 1];
    Arrays.fill(most, 1);
    for (int i = 0; i < times.length; i++) {
      int end = i + 1 < times.length ? segment[2 * i + 2] : most.length - 1;
      for (int k = segment[2 * i]; k <= end; k++) {
        most[k] = Math.max(most[k], times[i]);
      }
    }
    double[] closer = new double[at.length];
    for (int k = 0; k < most.length; k++) {
      closer[k + 1] = closer[k] + most[k] * (at[k + 1] - at[k]);
    }
    return new RingSamples(ring, closer, last);
  }

  /**
   * Root of what the surfaces bend over a segment (mm^1/2): eight times an edge's error is its
   * square.
   */
  private static double bends(double[] frame, int i, int j, double wall) {
    return Math.sqrt(OffsetSurface.bend(frame, 6 * i, 6 * j, wall));
  }

  /** Length of a step with the stretched angles that the density's spacing is for (mm). */
  private static double counted(
      Coordinate a, Coordinate b, Chart chart, DigitSurface digit, SizingField density) {
    double turn = density.stretched(angle(b, digit)) - density.stretched(angle(a, digit));
    double rho = (chart.rho(a.y) + chart.rho(b.y)) / 2;
    double round = rho * turn;
    double along = chart.v(b.y) - chart.v(a.y);
    return Math.sqrt(round * round + along * along);
  }

  /** The angle that a girth would have on a round section (rad). */
  private static double angle(Coordinate c, DigitSurface digit) {
    return c.x * 2 * Math.PI / digit.circumference(Math.min(c.y, digit.pulpEnd() - 1e-9));
  }

  /** The mid-surface's point as it would stand on a straight finger of round sections (mm). */
  private static double[] roundBody(Coordinate c, Chart chart, DigitSurface digit) {
    double t = angle(c, digit);
    double rho = chart.rho(c.y);
    return new double[] {rho * Math.sin(t), -rho * Math.cos(t), chart.axial(c.y)};
  }

  private static double square(double[] a, double[] b) {
    double sum = 0;
    for (int k = 0; k < 3; k++) {
      sum += (b[k] - a[k]) * (b[k] - a[k]);
    }
    return sum;
  }

  /** Radius of the circle through a point and its neighbours some way off (mm). */
  private static double radius(double[][] point, double[] length, int i) {
    int n = point.length;
    int before = i;
    for (double way = 0; way < REACH; way += length[before]) {
      before = (before + n - 1) % n;
    }
    int after = i;
    for (double way = 0; way < REACH; after = (after + 1) % n) {
      way += length[after];
    }
    double aa = square(point[before], point[i]);
    double bb = square(point[i], point[after]);
    double cc = square(point[before], point[after]);
    // Heron: 16 area² = 2(aa bb + bb cc + cc aa) - (aa² + bb² + cc²); R = abc / (4 area).
    double area16 = 2 * (aa * bb + bb * cc + cc * aa) - (aa * aa + bb * bb + cc * cc);
    return Math.sqrt(aa * bb * cc / Math.max(1e-12 * aa * bb, area16));
  }

  int count() {
    return count;
  }

  /** Girth of a sample from the piece's midline (mm). */
  double girth(int i) {
    Coordinate from = ring[segment[i]];
    Coordinate to = ring[segment[i] + 1];
    return from.x + share[i] * (to.x - from.x);
  }

  /** Station of a sample (mm), just short of the pole where the ring passes over it. */
  double station(int i) {
    Coordinate from = ring[segment[i]];
    Coordinate to = ring[segment[i] + 1];
    return Math.min(last, from.y + share[i] * (to.y - from.y));
  }

  /** Direction of the ring at a sample, girth and station, turning evenly along each segment. */
  double[] direction(int i) {
    int n = ring.length - 1;
    int k = segment[i];
    double[] here = difference(k, (k + 1) % n);
    double[] before = difference((k + n - 1) % n, k);
    double[] after = difference((k + 1) % n, (k + 2) % n);
    double f = share[i];
    return new double[] {
      here[0] + (1 - f) * before[0] + f * after[0], here[1] + (1 - f) * before[1] + f * after[1]
    };
  }

  private double[] difference(int from, int to) {
    double dg = ring[to].x - ring[from].x;
    double ds = ring[to].y - ring[from].y;
    double size = Math.sqrt(dg * dg + ds * ds);
    return new double[] {dg / size, ds / size};
  }
}
