package org.midlateral.cut;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiPredicate;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.distance.IndexedFacetDistance;
import org.midlateral.digit.DigitSurface;

/** Round vents: holes of an outline, in staggered rows along the finger. */
public final class Vents {
  /** Material left between a vent and the finished edge, beside the rims (mm). */
  private static final double BRIDGE = 2;

  private static final int POINTS = 72;

  private Vents() {}

  /**
   * The outline with vents wherever there is room for one.
   *
   * @param outline of the piece, girth from its own midline
   * @param diameter of a vent (mm); 0 makes none
   * @param spacing between centres (mm)
   * @param wall of the piece (mm)
   * @param offset of the mid-surface from the skin (mm): vents are round there
   * @param closed whether a place (girth, station) must stay closed
   */
  public static Outline in(
      Outline outline,
      DigitSurface digit,
      double diameter,
      double spacing,
      double wall,
      double offset,
      BiPredicate<Double, Double> closed) {
    if (diameter == 0) {
      return outline;
    }
    double radius = diameter / 2;
    double clear = radius + wall + BRIDGE;
    Polygon whole = outline.polygon();
    IndexedFacetDistance edge = new IndexedFacetDistance(whole.getExteriorRing());
    GeometryFactory factory = whole.getFactory();
    List<LinearRing> holes = new ArrayList<>();
    double rise = spacing * Math.sqrt(3) / 2;
    int rows = (int) ((outline.distal() - outline.proximal()) / rise);
    double widest = whole.getEnvelopeInternal().getMaxX();
    for (int row = 0; row <= rows; row++) {
      double s =
          outline.proximal()
              + (outline.distal() - outline.proximal() - rows * rise) / 2
              + row * rise;
      double shift = row % 2 == 0 ? 0 : spacing / 2;
      for (int k = -(int) (widest / spacing) - 1; k <= widest / spacing; k++) {
        double g = k * spacing + shift;
        Coordinate centre = new Coordinate(g, s);
        if (whole.contains(factory.createPoint(centre))
            && edge.distance(factory.createPoint(centre)) > clear
            && !closed.test(g, s)) {
          holes.add(ring(factory, centre, radius, shrink(digit, s, offset)));
        }
      }
    }
    Polygon vented =
        factory.createPolygon(whole.getExteriorRing(), holes.toArray(LinearRing[]::new));
    return outline.withPolygon(vented);
  }

  /** Girth on the skin under one millimetre of the mid-surface's girth. */
  private static double shrink(DigitSurface digit, double station, double offset) {
    double mean = digit.circumference(station) / (2 * Math.PI);
    return mean / (mean + offset);
  }

  /** Clockwise: the piece is on the ring's left. */
  private static LinearRing ring(
      GeometryFactory factory, Coordinate centre, double radius, double shrink) {
    Coordinate[] ring = new Coordinate[POINTS + 1];
    for (int i = 0; i < POINTS; i++) {
      double turn = -2 * Math.PI * i / POINTS;
      ring[i] =
          new Coordinate(
              centre.x + shrink * radius * Math.cos(turn), centre.y + radius * Math.sin(turn));
    }
    ring[POINTS] = ring[0].copy();
    return factory.createLinearRing(ring);
  }
}
