package org.midlateral.document.bench;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.Function;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.midlateral.digit.DigitSurface;
import org.midlateral.digit.NailPlate;
import org.midlateral.digit.Slice;
import org.midlateral.document.drawing.Mark.PointMark;
import org.midlateral.document.pattern.Borders;
import org.midlateral.mesh.TriangleMesh;
import org.midlateral.solid.Solid;

/**
 * Outlines of pieces and skin as seen from the side and from above, in mm: x distal to the right;
 * seen from the side the dorsum is up, seen from above +y is up.
 */
final class Views {
  /** Distance between the sections the skin is drawn through (mm). */
  private static final double STEP = 0.5;

  /** Points along a nail's edge or a crease, less one. */
  private static final int ALONG_NAIL = 16;

  /** How far round a crease is drawn, of half of the girth (common practice, no source). */
  private static final double CREASE = 0.33;

  private final DigitSurface digit;
  private final Function<Vector3D, PointMark> projection;
  private final Function<Coordinate, Double> height;

  private Views(
      DigitSurface digit,
      Function<Vector3D, PointMark> projection,
      Function<Coordinate, Double> height) {
    this.digit = digit;
    this.projection = projection;
    this.height = height;
  }

  static Views fromTheSide(DigitSurface digit) {
    return new Views(digit, p -> new PointMark(p.getX(), p.getZ()), c -> c.y);
  }

  static Views fromAbove(DigitSurface digit) {
    return new Views(digit, p -> new PointMark(p.getX(), p.getY()), c -> c.x);
  }

  /** The outline of a piece. */
  List<PointMark> outline(Silhouette silhouette) {
    List<PointMark> upper = new ArrayList<>();
    List<PointMark> lower = new ArrayList<>();
    for (Silhouette.Ring ring : silhouette.rings()) {
      Envelope box = ring.box();
      Coordinate top = new Coordinate(box.getMaxX(), box.getMaxY());
      Coordinate low = new Coordinate(box.getMinX(), box.getMinY());
      upper.add(projection.apply(place(ring.station(), at(height.apply(top)))));
      lower.add(projection.apply(place(ring.station(), at(height.apply(low)))));
    }
    Collections.reverse(lower);
    upper.addAll(lower);
    return upper;
  }

  /** The edge of a piece's inner surface: its rim lies between this and the outline. */
  List<PointMark> innerEdge(Solid solid) {
    List<PointMark> edge = new ArrayList<>();
    TriangleMesh inner = solid.inner();
    Borders.shell(inner).forEach(vertex -> edge.add(projection.apply(inner.vertex(vertex))));
    return edge;
  }

  /** The outline of the skin, open at its proximal end. */
  List<PointMark> skin(double from) {
    List<PointMark> upper = new ArrayList<>();
    List<PointMark> lower = new ArrayList<>();
    for (double s = from; s < digit.pulpEnd(); s += STEP) {
      var slice = digit.slice(s);
      Coordinate corner = new Coordinate(slice.halfWidth(), slice.halfDepth());
      double half = height.apply(corner);
      upper.add(projection.apply(place(s, at(half))));
      lower.add(projection.apply(place(s, at(-half))));
    }
    upper.add(projection.apply(digit.centre(digit.pulpEnd())));
    Collections.reverse(lower);
    upper.addAll(lower);
    return upper;
  }

  /** The nail, from the dorsal midline to the edge that is seen. */
  List<PointMark> nail(NailPlate plate) {
    List<PointMark> outline = new ArrayList<>();
    List<PointMark> edge = new ArrayList<>();
    for (int i = 0; i <= ALONG_NAIL; i++) {
      double share = i / (double) ALONG_NAIL;
      double station = plate.station(share);
      double half = digit.circumference(station) / 2;
      outline.add(onSkin(station, half));
      edge.add(onSkin(station, half - plate.halfWidth(share)));
    }
    Collections.reverse(edge);
    outline.addAll(edge);
    return outline;
  }

  /** A crease, from the volar midline as far round as it is seen. */
  List<PointMark> crease(double station) {
    List<PointMark> line = new ArrayList<>();
    double reach = CREASE * digit.circumference(station) / 2;
    for (int i = 0; i <= ALONG_NAIL; i++) {
      line.add(onSkin(station, reach * i / ALONG_NAIL));
    }
    return line;
  }

  private PointMark onSkin(double station, double girth) {
    Slice slice = digit.slice(station);
    return projection.apply(slice.point(slice.angle(girth)));
  }

  /** How far from the centreline pieces and skin reach at a station (mm). */
  double reach(double station, List<Silhouette> silhouettes) {
    var slice = digit.slice(station);
    double reach = height.apply(new Coordinate(slice.halfWidth(), slice.halfDepth()));
    for (Silhouette silhouette : silhouettes) {
      for (Silhouette.Ring ring : silhouette.rings()) {
        if (Math.abs(ring.station() - station) < 1) {
          Envelope box = ring.box();
          double top = height.apply(new Coordinate(box.getMaxX(), box.getMaxY()));
          double low = height.apply(new Coordinate(box.getMinX(), box.getMinY()));
          reach = Math.max(reach, Math.max(top, -low));
        }
      }
    }
    return reach;
  }

  /** A line across the finger at a station, this far to both sides of the centreline (mm). */
  List<PointMark> across(double station, double reach) {
    return List.of(
        projection.apply(place(station, at(reach))), projection.apply(place(station, at(-reach))));
  }

  /** The point of the cut whose height in this view is given, and whose other one is zero. */
  private Coordinate at(double half) {
    Coordinate unit = new Coordinate(1, 0);
    return height.apply(unit) == 1 ? new Coordinate(half, 0) : new Coordinate(0, half);
  }

  private Vector3D place(double station, Coordinate cut) {
    Vector3D dorsal = digit.dorsal(station);
    return digit
        .centre(station)
        .add(Vector3D.Unit.PLUS_Y.multiply(cut.x))
        .add(dorsal.multiply(cut.y));
  }
}
