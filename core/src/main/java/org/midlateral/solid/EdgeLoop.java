package org.midlateral.solid;

import org.locationtech.jts.geom.LineString;
import org.midlateral.accuracy.ErrorBudget;
import org.midlateral.measurement.DesignRefused;
import org.midlateral.measurement.Refusals;
import org.midlateral.piece.Piece;

/**
 * One closed edge of a piece: where inner and outer surface end, and the rim between them begins.
 * It lies half a wall inside the finished edge, so that the rim's crest comes to stand on it.
 *
 * <p>Sample 2 i is a vertex of the surfaces, sample 2 i + 1 the point of the edge midway to the
 * next.
 */
final class EdgeLoop {
  private static final int TRIES = 3;

  private final double[] angle;
  private final double[] station;

  /** Inner point, normal and outward conormal of each sample, 9 numbers each. */
  private final double[] frame;

  private EdgeLoop(int samples) {
    this.angle = new double[samples];
    this.station = new double[samples];
    this.frame = new double[9 * samples];
  }

  /**
   * The edge half a wall inside a ring of the outline.
   *
   * @param ring closed, with the piece on its left
   * @param density spacing of the vertices on the mid-surface; closer where the ring bends sharply
   * @throws DesignRefused where the surface folds at the edge
   */
  static EdgeLoop inside(
      Piece piece, OffsetSurface surface, LineString ring, Chart chart, SizingField density)
      throws DesignRefused {
    EdgeLoop loop = null;
    double bend = ErrorBudget.CHORD_OF_EDGES_AT_FIRST;
    // The ring's samples are seated some way off the ring, where the surfaces may bend more.
    for (int i = 0;
        i < TRIES && (i == 0 || loop.error(piece.wall()) > ErrorBudget.CHORD_OF_EDGES);
        i++) {
      loop = seated(piece, surface, RingSamples.of(ring, piece, surface, chart, density, bend));
      bend *= 0.6;
    }
    return loop;
  }

  private static EdgeLoop seated(Piece piece, OffsetSurface surface, RingSamples samples)
      throws DesignRefused {
    EdgeLoop loop = new EdgeLoop(samples.count());
    RimSeat seat = new RimSeat(piece, surface);
    for (int i = 0; i < samples.count(); i++) {
      if (!seat.find(samples.girth(i), samples.station(i), samples.direction(i))) {
        throw new DesignRefused(Refusals.edgeFolds(piece.name(), samples.station(i)));
      }
      loop.angle[i] = seat.angle();
      loop.station[i] = seat.station();
      System.arraycopy(seat.frame(), 0, loop.frame, 9 * i, 9);
    }
    return loop;
  }

  /** How far the worst edge stands off the surfaces (mm), as in {@link Refinement}. */
  private double error(double wall) {
    double most = 0;
    for (int i = 0; i < frame.length; i += 18) {
      int j = (i + 18) % frame.length;
      most = Math.max(most, OffsetSurface.bend(frame, i, j, wall) / 8);
    }
    return most;
  }

  int vertices() {
    return angle.length / 2;
  }

  /** Angle off the piece's midline at a sample (rad). */
  double angle(int sample) {
    return angle[sample];
  }

  /** Station of a sample (mm). */
  double station(int sample) {
    return station[sample];
  }

  /** Writes inner point and normal of a sample: 6 numbers. */
  void place(int sample, double[] out, int at) {
    System.arraycopy(frame, 9 * sample, out, at, 6);
  }

  /** Writes inner point, normal and conormal of a sample: 9 numbers. */
  void frame(int sample, double[] out) {
    System.arraycopy(frame, 9 * sample, out, 0, 9);
  }
}
