package org.midlateral.solid;

import java.util.Arrays;
import org.locationtech.jts.geom.LineString;
import org.midlateral.digit.DigitSurface;
import org.midlateral.digit.Slice;
import org.midlateral.trough.Piece;

/**
 * One closed edge of a piece: where inner and outer surface end, and the rim between them begins.
 * It lies half a wall inside the finished edge, so that the rim's crest comes to stand on it.
 *
 * <p>Sample 2 i is a vertex of the surfaces, sample 2 i + 1 the point of the edge midway to the
 * next.
 */
final class EdgeLoop {
  /** How far the rim's crest may miss the finished edge on the skin (mm). */
  private static final double TOLERANCE = 1e-7;

  private static final int MOST_STEPS = 60;

  /** Over the pulp, where its sections are this much smaller than the tip's, the pole is near. */
  private static final double NEAR_POLE = 0.7;

  private final Piece piece;
  private final OffsetSurface surface;
  private final double radius;
  private final double[] angle;
  private final double[] station;

  /** Inner point, normal and outward conormal of each sample, 9 numbers each. */
  private final double[] frame;

  private EdgeLoop(Piece piece, OffsetSurface surface, int samples) {
    this.piece = piece;
    this.surface = surface;
    this.radius = piece.wall() / 2;
    this.angle = new double[samples];
    this.station = new double[samples];
    this.frame = new double[9 * samples];
  }

  /**
   * The edge half a wall inside a ring of the outline.
   *
   * @param ring closed, with the piece on its left
   * @param density spacing of the vertices on the mid-surface; closer where the ring bends sharply
   */
  static EdgeLoop inside(
      Piece piece, OffsetSurface surface, LineString ring, Chart chart, Density density) {
    RingSamples samples = RingSamples.of(ring, chart, piece.digit(), density);
    EdgeLoop loop = new EdgeLoop(piece, surface, samples.count());
    for (int i = 0; i < samples.count(); i++) {
      loop.place(i, samples);
    }
    return loop;
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

  /** Writes inner point, normal and conormal of a sample: 9 numbers. */
  void frame(int sample, double[] out) {
    System.arraycopy(frame, 9 * sample, out, 0, 9);
  }

  /**
   * Moves a first guess until the crest of the rim built on it stands over the finished edge: until
   * the line from the edge's skin point to the crest is the skin's normal there.
   */
  private void place(int i, RingSamples samples) {
    double[] target = new double[18];
    double[] here = new double[18];
    double[] offset = new double[6];
    double[] normal = new double[3];
    double[] edge = samples.direction(i);
    DigitSurface digit = piece.digit();
    Slice slice = digit.slice(samples.station(i));
    double t = skinAngle(slice, samples.girth(i));
    slice.jet(t, target);
    unitNormal(target, normal);
    double along = edge[1];
    double round = (edge[0] - drift(slice, t) * along) / slice.girthByAngle(t);
    double[] tangent = combine(target, round, along);
    double[] inward = new double[3];
    cross(normal, tangent, inward);
    unit(inward);

    double s = samples.station(i);
    double[] polar = new double[2];
    boolean pole =
        digit.circumference(s) < NEAR_POLE * digit.circumference(digit.tip()) && s > digit.tip();
    double[] move = scaled(inward, radius * 0.8);
    System.arraycopy(target, 0, here, 0, 18);
    double a = piece.dorsal() ? t - Math.copySign(Math.PI, t) : t;
    for (int step = 0; step < MOST_STEPS; step++) {
      double[] d = solve(here, move);
      if (pole) {
        polar = PulpPole.move(digit, a, s, d[0], d[1]);
        a = polar[0];
        s = polar[1];
      } else {
        a += d[0];
        s += d[1];
      }
      slice = digit.slice(s);
      slice.jet(surface.skinAngle(a), here);
      surface.at(slice, a, piece.gap().uniformAt(s), offset, 0);
      conormal(offset, tangent, i);
      double size = residual(target, normal, offset, i, move);
      if (size < TOLERANCE) {
        break;
      }
    }
    angle[i] = a;
    station[i] = s;
    System.arraycopy(offset, 0, frame, 9 * i, 6);
  }

  /** The skin's angle at a girth from the piece's own midline. */
  private double skinAngle(Slice slice, double girth) {
    double half = slice.circumference() / 2;
    return slice.angle(piece.dorsal() ? girth - Math.copySign(half, girth) : girth);
  }

  /** How the girth from the piece's own midline changes along the station at constant angle. */
  private double drift(Slice slice, double t) {
    double drift = slice.girthAlongStation(t);
    return piece.dorsal() ? drift - Math.copySign(slice.circumferenceByStation() / 2, t) : drift;
  }

  /** What is left, along the skin, from crest to target; written as the next move. */
  private double residual(double[] target, double[] normal, double[] offset, int i, double[] move) {
    double off = 0;
    for (int k = 0; k < 3; k++) {
      double crest = offset[k] + radius * (offset[3 + k] + frame[9 * i + 6 + k]);
      move[k] = target[k] - crest;
      off += move[k] * normal[k];
    }
    double size = 0;
    for (int k = 0; k < 3; k++) {
      move[k] -= off * normal[k];
      size += move[k] * move[k];
    }
    return Math.sqrt(size);
  }

  /** Direction off the edge in the inner surface's tangent plane: edge direction x normal. */
  private void conormal(double[] offset, double[] tangent, int i) {
    double[] n = Arrays.copyOfRange(offset, 3, 6);
    double[] out = new double[3];
    cross(tangent, n, out);
    unit(out);
    System.arraycopy(out, 0, frame, 9 * i + 6, 3);
  }

  /** Least-squares steps of angle and station that move the skin point by a vector. */
  private static double[] solve(double[] jet, double[] move) {
    double tt = 0;
    double ts = 0;
    double ss = 0;
    double tm = 0;
    double sm = 0;
    for (int k = 0; k < 3; k++) {
      tt += jet[3 + k] * jet[3 + k];
      ts += jet[3 + k] * jet[6 + k];
      ss += jet[6 + k] * jet[6 + k];
      tm += jet[3 + k] * move[k];
      sm += jet[6 + k] * move[k];
    }
    double det = tt * ss - ts * ts;
    return new double[] {(tm * ss - sm * ts) / det, (sm * tt - tm * ts) / det};
  }

  private static void unitNormal(double[] jet, double[] out) {
    cross(Arrays.copyOfRange(jet, 3, 6), Arrays.copyOfRange(jet, 6, 9), out);
    unit(out);
  }

  private static double[] combine(double[] jet, double round, double along) {
    double[] out = new double[3];
    for (int k = 0; k < 3; k++) {
      out[k] = round * jet[3 + k] + along * jet[6 + k];
    }
    return out;
  }

  private static double[] scaled(double[] v, double by) {
    return new double[] {v[0] * by, v[1] * by, v[2] * by};
  }

  private static void unit(double[] v) {
    double size = Math.sqrt(v[0] * v[0] + v[1] * v[1] + v[2] * v[2]);
    v[0] /= size;
    v[1] /= size;
    v[2] /= size;
  }

  private static void cross(double[] a, double[] b, double[] out) {
    out[0] = a[1] * b[2] - a[2] * b[1];
    out[1] = a[2] * b[0] - a[0] * b[2];
    out[2] = a[0] * b[1] - a[1] * b[0];
  }
}
