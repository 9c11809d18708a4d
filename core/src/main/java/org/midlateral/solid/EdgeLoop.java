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

  /** No edge is divided into more at once: where a surface folds, no spacing mends it. */
  private static final double MOST_CLOSER = 2.5;

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
    RingSamples samples = RingSamples.of(ring, piece, surface, chart, density);
    EdgeLoop loop = seated(piece, surface, samples);
    // The ring's samples are seated some way off the ring, where the surfaces may bend more.
    for (int i = 1; i < TRIES && loop.error(piece.wall()) > ErrorBudget.CHORD_OF_EDGES; i++) {
      samples = samples.closer(loop.closer(piece.wall()));
      loop = seated(piece, surface, samples);
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

  /** How far the worst edge stands off the surfaces (mm). */
  private double error(double wall) {
    double most = 0;
    for (int i = 0; i < vertices(); i++) {
      most = Math.max(most, error(i, wall));
    }
    return most;
  }

  /** How far the edge after a vertex stands off the surfaces (mm), as in {@link Refinement}. */
  private double error(int vertex, double wall) {
    int i = 18 * vertex;
    return OffsetSurface.bend(frame, i, (i + 18) % frame.length, wall) / 8;
  }

  /**
   * How many times as close the samples must stand after each vertex. Over a crease the error falls
   * with the spacing alone, not with its square.
   */
  private double[] closer(double wall) {
    double[] times = new double[vertices()];
    for (int i = 0; i < times.length; i++) {
      double error = error(i, wall);
      times[i] =
          error > ErrorBudget.CHORD_OF_EDGES
              ? Math.min(MOST_CLOSER, error / ErrorBudget.CHORD_OF_EDGES_AT_FIRST)
              : 1;
    }
    return times;
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
