package org.midlateral.solid;

import java.util.List;
import org.midlateral.digit.DigitSurface;
import org.midlateral.digit.Slice;
import org.midlateral.piece.Piece;

/**
 * Finds where on the inner surface a rim must start for its crest to stand over a point of the
 * finished edge: so that the line from the edge's skin point to the crest is the skin's normal
 * there. Holds what it found last, and sets out from there: the next seat along the edge lies off
 * its point much as the last one did.
 *
 * <p>Newton's method, its slopes mended by each step (C. G. Broyden, Math. Comp. 19 (1965)
 * 577-593).
 */
final class RimSeat {
  /** How far the crest may miss the finished edge on the skin (mm). */
  private static final double TOLERANCE = 3e-8;

  /** Beyond this there is no seat: the surface folds. */
  private static final double MISSED = 1e-3;

  private static final int MOST_STEPS = 60;

  /** Slopes are taken afresh where a step leaves more than this share of the miss. */
  private static final double GAIN = 0.5;

  /** The first seat is looked for so far inward, over the rim's radius. */
  private static final double INWARD = 0.8;

  /** Steps about the pole are shortened by this where they pass over their goal. */
  private static final double SHORTER = 0.7;

  private static final double STEP = 1e-4;

  /** Where no seat is found beside a crease of the skin, the crease is this wide (mm). */
  private static final double CREASE = 2e-3;

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
  private final double[] inward = new double[3];
  private final double[] normal = new double[3];
  private final double[] tangent = new double[3];
  private final double[] frame = new double[9];
  private final double[] beyond = new double[6];
  private final List<Double> creases;
  private boolean rounded;
  private final double[] move = new double[3];
  private final double[] before = new double[3];

  /** How the crest moves by angle, and by station. */
  private final double[] crest = new double[6];

  private double angle;
  private double station;

  /** Whether one was found before; how far it lay inward of its target and on along the edge. */
  private boolean known;

  private double in;
  private double on;

  RimSeat(Piece piece, OffsetSurface surface) {
    this.piece = piece;
    this.surface = surface;
    this.carrier = new OffsetSurface(piece.withGap(piece.bridge()));
    this.radius = piece.wall() / 2;
    this.creases = piece.digit().creases();
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
    if (known && seek(girth, at, direction) <= TOLERANCE) {
      return true;
    }
    known = false;
    in = INWARD * radius;
    on = 0;
    double size = seek(girth, at, direction);
    if (size > TOLERANCE && !creases.isEmpty()) {
      // A sloping gap makes the surface bend at once where the skin's bend changes at once.
      rounded = true;
      size = seek(girth, at, direction);
      rounded = false;
    }
    return size < MISSED;
  }

  /** Distance of the crest from its target where no step brings it nearer (mm). */
  private double seek(double girth, double at, double[] direction) {
    aim(girth, at, direction);
    DigitSurface digit = piece.digit();
    boolean pole =
        at > digit.tip() && digit.circumference(at) < NEAR_POLE * digit.circumference(digit.tip());
    return pole ? seekAboutPole(digit) : seekBySlopes();
  }

  private double seekBySlopes() {
    double angleOfTarget = angle;
    double stationOfTarget = station;
    double size = step(solve(target, 3));
    if (!known) {
      slopes();
    }
    for (int i = 1; i < MOST_STEPS && size > TOLERANCE; i++) {
      double[] d = solve(crest, 0);
      System.arraycopy(move, 0, before, 0, 3);
      double left = step(d);
      if (rounded || left > GAIN * size) {
        slopes();
      } else {
        mend(d);
      }
      size = left;
    }
    if (size <= TOLERANCE) {
      learn(angle - angleOfTarget, station - stationOfTarget);
    }
    return size;
  }

  private double step(double[] d) {
    double share = rounded ? upToCrease(d[1]) : 1;
    angle += share * d[0];
    station += share * d[1];
    return residual();
  }

  /** The share of a step up to the crease that it would pass over. */
  private double upToCrease(double along) {
    for (double crease : creases) {
      boolean passes = (station - crease) * (station + along - crease) < 0;
      if (passes && Math.abs(station - crease) > CREASE / 2) {
        return (crease - station) / along;
      }
    }
    return 1;
  }

  /** By the skin's slopes, which hold anywhere about the pole. */
  private double seekAboutPole(DigitSurface digit) {
    double[] skin = target.clone();
    double size = Double.POSITIVE_INFINITY;
    double share = 1;
    for (int i = 0; i < MOST_STEPS && size > TOLERANCE; i++) {
      double[] d = solve(skin, 3);
      double[] moved = PulpPole.move(digit, angle, station, share * d[0], share * d[1]);
      angle = moved[0];
      station = moved[1];
      double left = residual();
      if (left > size / 2) {
        // Well off the sharply bent pulp the crest moves by more than the skin's point does.
        share *= SHORTER;
      }
      size = left;
      digit.slice(station).jet(piece.midline().skinAngle(angle), skin);
    }
    return size;
  }

  /** Keeps how far the seat lies off its target. */
  private void learn(double byAngle, double byStation) {
    double length = Math.sqrt(dot(tangent, 0, tangent, 0));
    in = 0;
    on = 0;
    for (int k = 0; k < 3; k++) {
      double way = byAngle * target[3 + k] + byStation * target[6 + k];
      in += way * inward[k];
      on += way * tangent[k] / length;
    }
    known = true;
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

  /** Takes up the point of the edge, and as a first move what led to the last seat. */
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
    cross(normal, 0, tangent, 0, inward, 0);
    unit(inward, 0);
    double length = Math.sqrt(dot(tangent, 0, tangent, 0));
    for (int k = 0; k < 3; k++) {
      move[k] = in * inward[k] + on * tangent[k] / length;
    }
    angle = piece.midline().ownAngle(t);
    station = at;
  }

  private boolean isLevelZero(double at) {
    return piece.bridge().uniformAt(at) && piece.bridge().at(0, at) == 0;
  }

  /** Takes point, normal and tangent from the carrier instead of the skin. */
  private void raise(double girth, double at, double[] direction) {
    double size = Math.sqrt(direction[0] * direction[0] + direction[1] * direction[1]) / ALONG;
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
  private double residual() {
    place();
    cross(tangent, 0, frame, 3, frame, 6);
    unit(frame, 6);
    double off = 0;
    for (int k = 0; k < 3; k++) {
      move[k] = target[k] - frame[k] - radius * (frame[3 + k] + frame[6 + k]);
      off += move[k] * normal[k];
    }
    for (int k = 0; k < 3; k++) {
      move[k] -= off * normal[k];
    }
    return Math.sqrt(dot(move, 0, move, 0));
  }

  private void place() {
    for (double crease : creases) {
      if (rounded && Math.abs(station - crease) < CREASE / 2) {
        double share = (station - crease) / CREASE + 0.5;
        place(crease - CREASE / 2, frame);
        place(crease + CREASE / 2, beyond);
        for (int k = 0; k < 6; k++) {
          frame[k] += share * (beyond[k] - frame[k]);
        }
        unit(frame, 3);
        return;
      }
    }
    place(station, frame);
  }

  private void place(double at, double[] out) {
    surface.at(piece.digit().slice(at), angle, piece.gap().uniformAt(at), out, 0);
  }

  /** How the crest moves with angle and station, by differences. */
  private void slopes() {
    double[] here = move.clone();
    double[] placed = frame.clone();
    angle += STEP;
    residual();
    slope(0, here);
    angle -= STEP;
    station += STEP;
    residual();
    slope(3, here);
    station -= STEP;
    System.arraycopy(here, 0, move, 0, 3);
    System.arraycopy(placed, 0, frame, 0, 9);
  }

  private void slope(int at, double[] here) {
    for (int k = 0; k < 3; k++) {
      crest[at + k] = (here[k] - move[k]) / STEP;
    }
  }

  /** Mends the slopes by what a step brought: no more than it takes to foretell that step. */
  private void mend(double[] d) {
    double byAngle = d[0] * dot(crest, 0, crest, 0);
    double byStation = d[1] * dot(crest, 3, crest, 3);
    double size = d[0] * byAngle + d[1] * byStation;
    for (int k = 0; k < 3; k++) {
      double off = before[k] - move[k] - d[0] * crest[k] - d[1] * crest[3 + k];
      crest[k] += off * byAngle / size;
      crest[3 + k] += off * byStation / size;
    }
  }

  /** Least-squares steps of angle and station that make the move, by slopes in an array. */
  private double[] solve(double[] by, int at) {
    double tt = dot(by, at, by, at);
    double ts = dot(by, at, by, at + 3);
    double ss = dot(by, at + 3, by, at + 3);
    double tm = dot(by, at, move, 0);
    double sm = dot(by, at + 3, move, 0);
    double det = tt * ss - ts * ts;
    return new double[] {(tm * ss - sm * ts) / det, (sm * tt - tm * ts) / det};
  }

  private static double dot(double[] a, int i, double[] b, int j) {
    return a[i] * b[j] + a[i + 1] * b[j + 1] + a[i + 2] * b[j + 2];
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
