package org.midlateral.mechanics.joint;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.locationtech.jts.algorithm.ConvexHull;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.midlateral.cut.Outline;
import org.midlateral.digit.DigitSurface;
import org.midlateral.digit.Slice;
import org.midlateral.mechanics.SectionPlane;
import org.midlateral.piece.Midline;
import org.midlateral.piece.Piece;
import org.midlateral.solid.OffsetSurface;

/**
 * How a strip of a band laid round finger and pieces lies taut: along the convex hull of their
 * section. Only where it bends does it press, on skin or on plastic.
 *
 * @param from proximal edge of the strip (mm)
 * @param to distal edge (mm)
 * @param radius of a circle as long as the skin's section under its middle (mm)
 * @param length once round (mm)
 * @param bends where it bends
 * @param arc angle by which it turns on skin (rad)
 * @param skinLength length of it on skin (mm)
 * @param curving by how much faster it grows, per length, as the finger rises from the pieces
 *     (1/mm)
 */
record TautBand(
    double from,
    double to,
    double radius,
    double length,
    List<BandBend> bends,
    double arc,
    double skinLength,
    double curving) {
  private static final int SKIN_POINTS = 120;
  private static final int PIECE_POINTS = 60;

  /** The finger is raised so far to see how the band's straight parts turn (mm). */
  private static final double RISE = 3;

  /** A band that takes less of a rise than this pull times it lies on no skin. */
  private static final double LEAST_PULL = 0.1;

  /** A band that turns less on skin (rad) lies on none. */
  private static final double LEAST_ARC = 0.3;

  private static final GeometryFactory FACTORY = new GeometryFactory();

  /**
   * A place where the band bends.
   *
   * @param piece it lies on, or -1 for skin
   * @param at mm
   * @param pull of the band on it, for a unit of tension
   */
  record BandBend(int piece, Vector3D at, Vector3D pull) {}

  /** A point of the section: y and n (mm), and what it belongs to. */
  private record SectionPoint(double y, double n, int piece) {}

  /**
   * The part of a section that lies under a piece: no band comes near the skin there.
   *
   * @param from angle at one edge, from the piece's own midline (rad)
   * @param to angle at the other edge
   */
  private record Covered(Midline midline, double from, double to) {
    static Covered of(Piece piece, Outline.Reach across, Slice slice) {
      Midline midline = piece.midline();
      return new Covered(
          midline, midline.angle(slice, across.from()), midline.angle(slice, across.to()));
    }

    boolean holds(double skinAngle) {
      double angle = midline.ownAngle(skinAngle);
      return angle > from && angle < to;
    }
  }

  TautBand {
    bends = List.copyOf(bends);
  }

  /** Station of the strip's middle (mm). */
  double station() {
    return (from + to) / 2;
  }

  /** Whether it lies on enough skin to press on it. */
  boolean onSkin() {
    return arc > LEAST_ARC;
  }

  /** Area of skin under it (mm²). */
  double area() {
    return skinLength * (to - from);
  }

  /**
   * The band between two stations.
   *
   * @param pieces what is worn
   */
  static TautBand between(DigitSurface digit, List<Piece> pieces, double from, double to) {
    double station = (from + to) / 2;
    SectionPlane plane = SectionPlane.at(digit, station);
    List<SectionPoint> worn = new ArrayList<>();
    List<Covered> covered = new ArrayList<>();
    for (int k = 0; k < pieces.size(); k++) {
      Piece piece = pieces.get(k);
      Optional<Outline.Reach> across = piece.outline().reach(station);
      if (across.isPresent()) {
        Slice slice = piece.digit().slice(station);
        outside(piece, k, across.get(), slice, plane, worn);
        covered.add(Covered.of(piece, across.get(), slice));
      }
    }
    Slice section = digit.slice(station);
    List<SectionPoint> skin = skin(section, covered, plane);
    List<SectionPoint> hull = hull(worn, skin, 0);
    double rest = length(hull);
    List<BandBend> bends = new ArrayList<>();
    double pull = 0;
    double arc = 0;
    double onSkin = 0;
    for (int i = 0; i < hull.size(); i++) {
      SectionPoint before = hull.get((i + hull.size() - 1) % hull.size());
      SectionPoint here = hull.get(i);
      SectionPoint after = hull.get((i + 1) % hull.size());
      double[] in = unit(here, before);
      double[] out = unit(here, after);
      double y = in[0] + out[0];
      double n = in[1] + out[1];
      Vector3D at =
          plane.origin().add(Vector3D.of(0, here.y, 0)).add(plane.dorsal().multiply(here.n));
      bends.add(new BandBend(here.piece, at, Vector3D.of(0, y, 0).add(plane.dorsal().multiply(n))));
      if (here.piece < 0) {
        pull -= n;
        arc += Math.acos(Math.max(-1, Math.min(1, -in[0] * out[0] - in[1] * out[1])));
        onSkin += after.piece < 0 ? Math.hypot(after.y - here.y, after.n - here.n) : 0;
      }
    }
    double curving = pull > LEAST_PULL ? bend(worn, skin, rest, pull) / (pull * pull) : 0;
    double radius = section.circumference() / (2 * Math.PI);
    return new TautBand(from, to, radius, rest, bends, arc, onSkin, curving);
  }

  /**
   * By how much faster a band grows as the skin rises (1/mm): what its length has grown by more
   * than its first slope tells.
   *
   * @param rest its length before
   * @param slope by how much it grows at first, as the skin rises
   */
  private static double bend(
      List<SectionPoint> worn, List<SectionPoint> skin, double rest, double slope) {
    double grown = length(hull(worn, skin, RISE)) - rest;
    return Math.max(0, 2 * (grown - slope * RISE) / (RISE * RISE));
  }

  private static double[] unit(SectionPoint from, SectionPoint to) {
    double y = to.y - from.y;
    double n = to.n - from.n;
    double size = Math.hypot(y, n);
    return new double[] {y / size, n / size};
  }

  private static double length(List<SectionPoint> hull) {
    double length = 0;
    for (int i = 0; i < hull.size(); i++) {
      SectionPoint a = hull.get(i);
      SectionPoint b = hull.get((i + 1) % hull.size());
      length += Math.hypot(b.y - a.y, b.n - a.n);
    }
    return length;
  }

  /** The hull, with the skin raised. */
  private static List<SectionPoint> hull(
      List<SectionPoint> worn, List<SectionPoint> skin, double rise) {
    List<SectionPoint> all = new ArrayList<>(worn);
    for (SectionPoint p : skin) {
      all.add(new SectionPoint(p.y, p.n + rise, -1));
    }
    Coordinate[] points = new Coordinate[all.size()];
    for (int i = 0; i < points.length; i++) {
      points[i] = new Coordinate(all.get(i).y, all.get(i).n, i);
    }
    Coordinate[] ring = new ConvexHull(points, FACTORY).getConvexHull().getCoordinates();
    List<SectionPoint> hull = new ArrayList<>();
    for (int i = 0; i + 1 < ring.length; i++) {
      hull.add(all.get((int) ring[i].getZ()));
    }
    return hull;
  }

  /** The skin that lies open. */
  private static List<SectionPoint> skin(Slice slice, List<Covered> covered, SectionPlane plane) {
    List<SectionPoint> points = new ArrayList<>();
    for (int i = 0; i < SKIN_POINTS; i++) {
      double angle = 2 * Math.PI * (i + 0.5) / SKIN_POINTS - Math.PI;
      if (covered.stream().noneMatch(c -> c.holds(angle))) {
        points.add(point(plane, slice.point(angle), -1));
      }
    }
    return points;
  }

  private static SectionPoint point(SectionPlane plane, Vector3D at, int piece) {
    Vector3D off = plane.origin().vectorTo(at);
    return new SectionPoint(off.getY(), off.dot(plane.dorsal()), piece);
  }

  /** The outside of a piece from one finished edge to the other. */
  private static void outside(
      Piece piece,
      int number,
      Outline.Reach reach,
      Slice slice,
      SectionPlane plane,
      List<SectionPoint> points) {
    OffsetSurface surface = new OffsetSurface(piece);
    double[] frame = new double[6];
    double inset = Math.min(piece.wall() / 2, reach.width() / 2);
    for (int i = 0; i <= PIECE_POINTS; i++) {
      double share = (double) i / PIECE_POINTS;
      double girth = reach.from() + inset + share * (reach.width() - 2 * inset);
      surface.at(slice, piece.midline().angle(slice, girth), false, frame, 0);
      points.add(point(plane, at(frame, piece.wall()), number));
    }
    // The rim's crest.
    for (double girth : new double[] {reach.from(), reach.to()}) {
      surface.at(slice, piece.midline().angle(slice, girth), false, frame, 0);
      points.add(point(plane, at(frame, piece.wall() / 2), number));
    }
  }

  private static Vector3D at(double[] frame, double height) {
    return Vector3D.of(
        frame[0] + height * frame[3], frame[1] + height * frame[4], frame[2] + height * frame[5]);
  }
}
