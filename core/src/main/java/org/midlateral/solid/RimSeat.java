package org.midlateral.solid;

import org.midlateral.digit.DigitSurface;
import org.midlateral.digit.Slice;
import org.midlateral.piece.Piece;

/**
 * Finds where on the inner surface a rim must start for its crest to stand over a point of the
 * finished edge: so that the line from the edge's skin point to the crest is the skin's normal
 * there. Newton's method; holds what it found last.
 */
final class RimSeat {
  /** How far the crest may miss the finished edge on the skin (mm). */
  private static final double TOLERANCE = 1e-7;

  /** Beyond this there is no seat: the surface folds. */
  private static final double MISSED = 1e-3;

  private static final int MOST_STEPS = 60;

  /** Slopes serve again as long as each step leaves no more than this share of the miss. */
  private static final double GAIN = 0.1;

  /** Steps about the pole are shortened by this where they pass over their goal. */
  private static final double SHORTER = 0.7;

  private static final double STEP = 1e-4;

  /** Half of the step along the edge that its tangent is taken from (mm). */
  private static final double ALONG = 1e-4;

  /** Over the pulp, where its sections are this much smaller than the tip's, the pole is near. */
  private static final double NEAR_POLE = 0.7;

  private final Piece piece;
  private final OffsetSurface surface;

  /** The skin, raised where the piece bridges it: the edge is measured square to it. */
  private final OffsetSurface carrier;

  private final double radius;

  private final double[] target = new double[18];
  private final double[] normal = new double[3];
  private final double[] tangent = new double[3];
  private final double[] skin = new double[18];
  private final double[] frame = new double[9];
  private final double[] move = new double[3];
  private final double[] byAngle = new double[3];
  private final double[] byStation = new double[3];
  private double angle;
  private double station;

  RimSeat(Piece piece, OffsetSurface surface) {
    this.piece = piece;
    this.surface = surface;
    this.carrier = new OffsetSurface(piece.withGap(piece.bridge()));
    this.radius = piece.wall() / 2;
  }

  /**
   * Finds the seat for one point of the finished edge.
   *
   * @param girth of the point from the piece's own midline (mm)
   * @param at station of the point (mm)
   * @param direction of the edge there, girth and station, with the piece on its left
   * @return whether there is one
   */
  boolean find(double girth, double at, double[] direction) {
    aim(girth, at, direction);
    DigitSurface digit = piece.digit();
    boolean pole =
        at > digit.tip() && digit.circumference(at) < NEAR_POLE * digit.circumference(digit.tip());
    double size = Double.POSITIVE_INFINITY;
    boolean stale = true;
    double share = 1;
    for (int step = 0; step < MOST_STEPS && size > TOLERANCE; step++) {
      if (step == 0 || pole) {
        System.arraycopy(skin, 3, byAngle, 0, 3);
        System.arraycopy(skin, 6, byStation, 0, 3);
      } else if (stale) {
        slopes();
      }
      double[] d = solve();
      if (pole) {
        double[] moved = PulpPole.move(digit, angle, station, share * d[0], share * d[1]);
        angle = moved[0];
        station = moved[1];
      } else {
        angle += d[0];
        station += d[1];
      }
      double left = residual(angle, station);
      stale = left > GAIN * size || step == 0;
      if (left > size / 2) {
        // Well off the sharply bent pulp the crest moves by more than the skin's point does.
        share *= SHORTER;
      }
      size = left;
    }
    return size < MISSED;
  }

  double angle() {
    return angle;
  }

  double station() {
    return station;
  }

  /** Inner point, normal and outward conormal at the seat: 9 numbers, this object's own. */
  double[] frame() {
    return frame;
  }

  /** Takes up the point of the edge, and as a first move most of the rim's radius inward. */
  private void aim(double girth, double at, double[] direction) {
    Slice slice = piece.digit().slice(at);
    double t = slice.angle(piece.midline().skinGirth(girth, slice.circumference()));
    double drift = slice.girthAlongStation(t);
    if (piece.dorsal()) {
      drift -= Math.signum(t) * slice.circumferenceByStation() / 2;
    }
    slice.jet(t, target);
    double round = (direction[0] - drift * direction[1]) / slice.girthByAngle(t);
    for (int k = 0; k < 3; k++) {
      tangent[k] = round * target[3 + k] + direction[1] * target[6 + k];
    }
    cross(target, 3, target, 6, normal, 0);
    unit(normal, 0);
    if (!isLevelZero(at)) {
      raise(girth, at, direction);
    }
    cross(normal, 0, tangent, 0, move, 0);
    unit(move, 0);
    for (int k = 0; k < 3; k++) {
      move[k] *= 0.8 * radius;
    }
    angle = piece.midline().ownAngle(t);
    station = at;
    System.arraycopy(target, 0, skin, 0, 18);
  }

  private boolean isLevelZero(double at) {
    return piece.bridge().uniformAt(at) && piece.bridge().at(0, at) == 0;
  }

  /** Takes point, normal and tangent from the carrier instead of the skin. */
  private void raise(double girth, double at, double[] direction) {
    double size = Math.hypot(direction[0], direction[1]) / ALONG;
    double[] there = new double[18];
    for (int i = -1; i <= 1; i++) {
      double s = at + i * direction[1] / size;
      Slice slice = piece.digit().slice(s);
      double own = piece.midline().angle(slice, girth + i * direction[0] / size);
      carrier.at(slice, own, piece.bridge().uniformAt(s), there, i + 1);
    }
    for (int k = 0; k < 3; k++) {
      target[k] = there[6 + k];
      normal[k] = there[9 + k];
      tangent[k] = there[12 + k] - there[k];
    }
  }

  /** Distance, along the skin, from crest to target; written as the next move. */
  private double residual(double a, double s) {
    Slice slice = piece.digit().slice(s);
    slice.jet(piece.midline().skinAngle(a), skin);
    surface.at(slice, a, piece.gap().uniformAt(s), frame, 0);
    cross(tangent, 0, frame, 3, frame, 6);
    unit(frame, 6);
    double off = 0;
    for (int k = 0; k < 3; k++) {
      move[k] = target[k] - frame[k] - radius * (frame[3 + k] + frame[6 + k]);
      off += move[k] * normal[k];
    }
    double size = 0;
    for (int k = 0; k < 3; k++) {
      move[k] -= off * normal[k];
      size += move[k] * move[k];
    }
    return Math.sqrt(size);
  }

  /** How the crest moves with angle and station, by differences. */
  private void slopes() {
    double x = move[0];
    double y = move[1];
    double z = move[2];
    residual(angle + STEP, station);
    slope(byAngle, x, y, z);
    residual(angle, station + STEP);
    slope(byStation, x, y, z);
    move[0] = x;
    move[1] = y;
    move[2] = z;
  }

  private void slope(double[] out, double x, double y, double z) {
    out[0] = (x - move[0]) / STEP;
    out[1] = (y - move[1]) / STEP;
    out[2] = (z - move[2]) / STEP;
  }

  /** Least-squares steps of angle and station that make the move. */
  private double[] solve() {
    double tt = dot(byAngle, byAngle);
    double ts = dot(byAngle, byStation);
    double ss = dot(byStation, byStation);
    double tm = dot(byAngle, move);
    double sm = dot(byStation, move);
    double det = tt * ss - ts * ts;
    return new double[] {(tm * ss - sm * ts) / det, (sm * tt - tm * ts) / det};
  }

  private static double dot(double[] a, double[] b) {
    return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
  }

  private static void unit(double[] v, int i) {
    double size = Math.sqrt(v[i] * v[i] + v[i + 1] * v[i + 1] + v[i + 2] * v[i + 2]);
    v[i] /= size;
    v[i + 1] /= size;
    v[i + 2] /= size;
  }

  private static void cross(double[] a, int i, double[] b, int j, double[] out, int k) {
    double x = a[i + 1] * b[j + 2] - a[i + 2] * b[j + 1];
    double y = a[i + 2] * b[j] - a[i] * b[j + 2];
    double z = a[i] * b[j + 1] - a[i + 1] * b[j];
    out[k] = x;
    out[k + 1] = y;
    out[k + 2] = z;
  }
}
