package org.midlateral.solid;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.midlateral.RoundFinger;
import org.midlateral.cut.Outline;
import org.midlateral.digit.TapedDigit;
import org.midlateral.piece.GapField;
import org.midlateral.piece.Midline;
import org.midlateral.piece.Piece;

/** Half a round tube on a round, straight finger: closed forms hold on it. */
final class StraightTrough {
  static final double RADIUS = 9;
  static final double CLEARANCE = 0.4;
  static final double WALL = 1.6;

  /** Of the inner, the middle and the outer surface (mm). */
  static final double INNER = RADIUS + CLEARANCE;

  static final double MIDDLE = INNER + WALL / 2;
  static final double OUTER = INNER + WALL;

  private StraightTrough() {}

  /**
   * The piece, from station 5 on.
   *
   * @param length along the finger (mm)
   */
  static Piece of(double length) {
    double flank = Math.PI * RADIUS / 2;
    Polygon sheet =
        new GeometryFactory()
            .createPolygon(
                new Coordinate[] {
                  new Coordinate(3 - flank, 8),
                  new Coordinate(flank - 3, 8),
                  new Coordinate(flank - 3, 2 + length),
                  new Coordinate(3 - flank, 2 + length),
                  new Coordinate(3 - flank, 8)
                });
    // Corners of 3 mm radius; counter-clockwise.
    Polygon rounded = (Polygon) sheet.buffer(3, 32);
    Polygon turned = (Polygon) rounded.norm().reverse();
    return new Piece(
        "trough",
        TapedDigit.of(RoundFinger.of(RADIUS)),
        new Outline(turned, 0.5, 5, 8, 2 + length, 5 + length),
        Midline.VOLAR,
        GapField.uniform(CLEARANCE),
        WALL);
  }
}
