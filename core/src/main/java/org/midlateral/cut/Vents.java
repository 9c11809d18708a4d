package org.midlateral.cut;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.BiPredicate;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.distance.IndexedFacetDistance;

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
   * @param diameter of a vent (mm)
   * @param spacing between centres (mm)
   * @param wall of the piece (mm)
   * @param middle the point of the middle of the wall at girth and station: vents are round there
   * @param closed whether a place (girth, station) must stay closed
   */
  public static Outline in(
      Outline outline,
      double diameter,
      double spacing,
      double wall,
      BiFunction<Double, Double, Vector3D> middle,
      BiPredicate<Double, Double> closed) {
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
          holes.add(ring(factory, centre, radius, middle));
        }
      }
    }
    Polygon vented =
        factory.createPolygon(whole.getExteriorRing(), holes.toArray(LinearRing[]::new));
    return outline.withPolygon(vented);
  }

  /**
   * The ring of the unrolled plane that is a circle in the middle of the wall, by the lengths that
   * girth and station have across the vent there. Clockwise: the piece is on the ring's left.
   */
  private static LinearRing ring(
      GeometryFactory factory,
      Coordinate centre,
      double radius,
      BiFunction<Double, Double, Vector3D> middle) {
    double g = centre.x;
    double s = centre.y;
    Vector3D byGirth = middle.apply(g - radius, s).vectorTo(middle.apply(g + radius, s));
    Vector3D byStation = middle.apply(g, s - radius).vectorTo(middle.apply(g, s + radius));
    double round = byGirth.norm() / (2 * radius);
    double lean = byGirth.dot(byStation) / byGirth.normSq();
    double along = byStation.subtract(byGirth.multiply(lean)).norm() / (2 * radius);
    Coordinate[] ring = new Coordinate[POINTS + 1];
    for (int i = 0; i < POINTS; i++) {
      double turn = -2 * Math.PI * i / POINTS;
      double ds = radius * Math.sin(turn) / along;
      ring[i] = new Coordinate(g + radius * Math.cos(turn) / round - lean * ds, s + ds);
    }
    ring[POINTS] = ring[0].copy();
    return factory.createLinearRing(ring);
  }
}
