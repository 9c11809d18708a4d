package org.midlateral.piece;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.locationtech.jts.geom.util.PolygonExtracter;

/**
 * The slopes round what is raised on a piece, as polygons. What is 0.6 mm high has slopes of some
 * 68 degrees: a printer needs no support for them, and a thumb meets no edge.
 *
 * @param foot where they begin
 * @param brow where they end, on the top
 * @param around the foot, some way off
 * @param within the brow, some way off
 */
public record RaisedSlopes(Geometry foot, Geometry brow, Geometry around, Geometry within) {
  /** Half the width of a slope in the plane (mm). */
  private static final double HALF = 0.12;

  /** From foot or brow to the ring beside it (mm). */
  private static final double APRON = 0.4;

  /** Corners sharper than this radius are rounded off (mm). */
  private static final double ROUND = 0.15;

  /** Lines to a quarter of an arc: they leave it by 0.02 mm at most. */
  private static final int ARC = 3;

  /** The slopes round polygons, true to size (mm). */
  static RaisedSlopes of(Geometry shape) {
    Geometry round = buffer(buffer(buffer(shape, ROUND), -2 * ROUND), ROUND);
    return new RaisedSlopes(
        buffer(round, HALF),
        buffer(round, -HALF),
        buffer(round, HALF + APRON),
        buffer(round, -HALF - APRON));
  }

  private static Geometry buffer(Geometry shape, double distance) {
    return shape.buffer(distance, ARC);
  }

  RaisedSlopes transformed(AffineTransformation by) {
    return new RaisedSlopes(
        by.transform(foot), by.transform(brow), by.transform(around), by.transform(within));
  }

  /** These and others, which lie clear of them. */
  RaisedSlopes and(RaisedSlopes other) {
    return new RaisedSlopes(
        together(foot, other.foot),
        together(brow, other.brow),
        together(around, other.around),
        together(within, other.within));
  }

  /** Polygons of both; nothing is cut where they meet. */
  static Geometry together(Geometry one, Geometry other) {
    List<Geometry> all = new ArrayList<>();
    PolygonExtracter.getPolygons(one, all);
    PolygonExtracter.getPolygons(other, all);
    return new GeometryFactory().createMultiPolygon(GeometryFactory.toPolygonArray(all));
  }
}
