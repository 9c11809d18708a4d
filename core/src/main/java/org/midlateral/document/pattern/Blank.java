package org.midlateral.document.pattern;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.midlateral.digit.DigitSurface;
import org.midlateral.digit.Slice;
import org.midlateral.measurement.Design.TroughDesign;
import org.midlateral.measurement.Measurements;
import org.midlateral.piece.Piece;

/**
 * The blank to cut from a cold sheet: wrapped right round the finger, pinched together dorsally,
 * and trimmed once it is cold.
 *
 * @param length from the palmar crease to past the end of the pulp (mm)
 * @param width once round the thickest level, with what is pinched (mm)
 * @param thickness of the sheet (mm)
 * @param tongueWidth at the palmar crease (mm)
 * @param outline girth to the right, station upward (mm)
 * @param finished edge of the trimmed trough on it (mm)
 */
public record Blank(
    double length,
    double width,
    double thickness,
    double tongueWidth,
    Polygon outline,
    Polygon finished) {

  /** Added to the girth, to pinch (mm). Common practice, no source. */
  public static final double PINCH = 25;

  /** How far the blank goes past the end of the pulp (mm). Common practice, no source. */
  public static final double PAST_END = 10;

  /** Radius of the corners (mm). Common practice, no source. */
  private static final double CORNER = 4;

  /** Sheet beside the finished edge, to be cut away (mm). */
  public static final double SPARE = 3;

  private static final GeometryFactory FLAT = new GeometryFactory();

  /** Parts of the tongue's curve, and of a quarter of a rounded corner. */
  private static final int PARTS = 32;

  /** The blank for the trough of a finger. */
  public static Blank of(Measurements measurements, TroughDesign design, Piece trough) {
    DigitSurface digit = trough.digit();
    double wall = trough.wall();
    double crease = -measurements.palmarCreaseToWeb();
    double end = digit.pulpEnd() + PAST_END;
    double width =
        SheetArc.round(largestGirth(measurements, design, digit), design.liner() + wall) + PINCH;
    double tongue = 2 * digit.slice(0).halfWidth();
    Polygon finished = finished(trough, design.liner() + wall / 2);
    Polygon sharp = sharp(width / 2, tongue / 2, root(design, digit, wall), design, crease, end);
    Geometry spared =
        sharp
            .union(finished.buffer(SPARE, PARTS))
            .intersection(FLAT.toGeometry(new Envelope(-width / 2, width / 2, crease, end)));
    return new Blank(end - crease, width, wall, tongue, rounded(spared), finished);
  }

  /** The trough's edge in the flat sheet. */
  private static Polygon finished(Piece trough, double off) {
    List<Coordinate> edge = new ArrayList<>();
    for (Coordinate c : trough.outline().polygon().getExteriorRing().getCoordinates()) {
      edge.add(new Coordinate(SheetArc.length(trough.digit().slice(c.y), c.x, off), c.y));
    }
    return FLAT.createPolygon(edge.toArray(Coordinate[]::new));
  }

  /** Half of the blank's width at a station (mm). */
  double halfWidth(double station) {
    double half = 0;
    Coordinate[] ring = outline.getExteriorRing().getCoordinates();
    for (int i = 1; i < ring.length; i++) {
      if (ring[i - 1].y < station != ring[i].y < station) {
        double share = (station - ring[i - 1].y) / (ring[i].y - ring[i - 1].y);
        half = Math.max(half, Math.abs(ring[i - 1].x + share * (ring[i].x - ring[i - 1].x)));
      }
    }
    return half;
  }

  /** Of the levels and of the root of the finger; between levels the girth is monotone. */
  private static double largestGirth(
      Measurements measurements, TroughDesign design, DigitSurface digit) {
    double root = digit.circumference(design.webClearance());
    return measurements.circumference().keySet().stream()
        .map(level -> digit.circumference(measurements.stationOf(level)))
        .reduce(root, Math::max);
  }

  /** Half-width of the tongue where it leaves the web: the trim line there, and some to spare. */
  private static double root(TroughDesign design, DigitSurface digit, double wall) {
    Slice web = digit.slice(design.webClearance());
    double off = design.clearance() + design.liner() + wall + design.flare();
    return SheetArc.length(web, design.wrap() * web.circumference() / 2, off) + SPARE;
  }

  /** The outline before its corners are rounded. */
  private static Polygon sharp(
      double half, double tip, double root, TroughDesign design, double crease, double end) {
    double web = design.webClearance();
    List<Coordinate> right = new ArrayList<>();
    for (int i = 0; i <= PARTS; i++) {
      double turn = Math.PI / 2 * i / PARTS;
      double x = tip + (Math.max(root, tip) - tip) * Math.sin(turn);
      right.add(new Coordinate(x, web + (crease - web) * Math.cos(turn)));
    }
    right.add(new Coordinate(half, web));
    right.add(new Coordinate(half, end));
    List<Coordinate> ring = new ArrayList<>(right);
    for (int i = right.size() - 1; i >= 0; i--) {
      ring.add(new Coordinate(-right.get(i).x, right.get(i).y));
    }
    ring.add(ring.get(0).copy());
    return FLAT.createPolygon(ring.toArray(Coordinate[]::new));
  }

  /** Rounds the corners that point outward, then those that point inward. */
  private static Polygon rounded(Geometry sharp) {
    return (Polygon) grown(grown(grown(sharp, -CORNER), 2 * CORNER), -CORNER);
  }

  private static Geometry grown(Geometry shape, double by) {
    BufferParameters round = new BufferParameters(PARTS);
    round.setSimplifyFactor(1e-6);
    return BufferOp.bufferOp(shape, by, round);
  }
}
