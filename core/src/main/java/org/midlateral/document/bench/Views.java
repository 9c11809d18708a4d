package org.midlateral.document.bench;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.Function;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.locationtech.jts.geom.Coordinate;
import org.midlateral.digit.DigitSurface;
import org.midlateral.document.drawing.Mark.Point;
import org.midlateral.mechanics.closure.OuterGirth;
import org.midlateral.solid.Solid;

/**
 * Outlines of pieces and skin as seen from the side and from above, in mm: x distal to the right;
 * seen from the side the dorsum is up, seen from above +y is up.
 */
final class Views {
  /** Distance between the cuts an outline is drawn through (mm). */
  private static final double STEP = 0.5;

  private final DigitSurface digit;
  private final Function<Vector3D, Point> projection;
  private final Function<Coordinate, Double> height;

  private Views(
      DigitSurface digit,
      Function<Vector3D, Point> projection,
      Function<Coordinate, Double> height) {
    this.digit = digit;
    this.projection = projection;
    this.height = height;
  }

  static Views fromTheSide(DigitSurface digit) {
    return new Views(digit, p -> new Point(p.getX(), p.getZ()), c -> c.y);
  }

  static Views fromAbove(DigitSurface digit) {
    return new Views(digit, p -> new Point(p.getX(), p.getY()), c -> c.x);
  }

  /** The outline of a piece. */
  List<Point> outline(Solid solid) {
    double past = 2 * solid.piece().wall() + 3;
    List<Point> upper = new ArrayList<>();
    List<Point> lower = new ArrayList<>();
    double end = solid.piece().outline().distal() + past;
    for (double s = solid.piece().outline().proximal() - past; s <= end; s += STEP) {
      List<Coordinate> cut = OuterGirth.cut(digit, solid.mesh(), s);
      if (!cut.isEmpty()) {
        double station = s;
        Coordinate top = Collections.max(cut, this::byHeight);
        Coordinate low = Collections.min(cut, this::byHeight);
        upper.add(projection.apply(place(station, top)));
        lower.add(projection.apply(place(station, low)));
      }
    }
    Collections.reverse(lower);
    upper.addAll(lower);
    return upper;
  }

  private int byHeight(Coordinate a, Coordinate b) {
    return Double.compare(height.apply(a), height.apply(b));
  }

  /** The outline of the skin, open at its proximal end. */
  List<Point> skin(double from) {
    List<Point> upper = new ArrayList<>();
    List<Point> lower = new ArrayList<>();
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

  /** A line across the finger at a station, this far either side of the centreline (mm). */
  List<Point> across(double station, double half) {
    return List.of(
        projection.apply(place(station, at(half))), projection.apply(place(station, at(-half))));
  }

  /** The point of the cut whose height in this view is given, and whose other one is zero. */
  private Coordinate at(double half) {
    Coordinate unit = new Coordinate(1, 0);
    return height.apply(unit) == 1 ? new Coordinate(half, 0) : new Coordinate(0, half);
  }

  private Vector3D place(double station, Coordinate cut) {
    Vector3D dorsal = digit.tangent(station).cross(Vector3D.Unit.PLUS_Y);
    return digit
        .centre(station)
        .add(Vector3D.Unit.PLUS_Y.multiply(cut.x))
        .add(dorsal.multiply(cut.y));
  }
}
