package org.midlateral.cut;

import java.util.Optional;
import org.locationtech.jts.geom.CoordinateSequence;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;

/**
 * The finished edge of a piece in the unrolled plane.
 *
 * @param polygon x is the girth g (mm), y the station s (mm); its shell runs counter-clockwise; its
 *     holes are vents
 * @param wrap share of the circumference between the flanks
 * @param proximal station of the most proximal point (mm)
 * @param flankStart station at which the flanks start (mm)
 * @param flankEnd station at which the flanks end and the distal corners begin (mm)
 * @param distal station of the most distal point (mm)
 */
public record Outline(
    Polygon polygon,
    double wrap,
    double proximal,
    double flankStart,
    double flankEnd,
    double distal) {

  /**
   * How far a piece reaches round the finger at one station.
   *
   * @param from its least girth (mm)
   * @param to its largest (mm)
   */
  public record Reach(double from, double to) {
    public double width() {
      return to - from;
    }
  }

  /** From one finished edge to the other at a station (mm); empty where there is no piece. */
  public Optional<Reach> reach(double station) {
    CoordinateSequence ring = polygon.getExteriorRing().getCoordinateSequence();
    double from = Double.POSITIVE_INFINITY;
    double to = Double.NEGATIVE_INFINITY;
    for (int i = 1; i < ring.size(); i++) {
      double before = ring.getY(i - 1) - station;
      double after = ring.getY(i) - station;
      if (before * after <= 0) {
        double share = before == after ? 0 : before / (before - after);
        double girth = ring.getX(i - 1) + share * (ring.getX(i) - ring.getX(i - 1));
        double other = before == after ? ring.getX(i) : girth;
        from = Math.min(from, Math.min(girth, other));
        to = Math.max(to, Math.max(girth, other));
      }
    }
    return from <= to ? Optional.of(new Reach(from, to)) : Optional.empty();
  }

  /** The same outline drawn otherwise, as with vents. */
  public Outline withPolygon(Polygon other) {
    return new Outline(other, wrap, proximal, flankStart, flankEnd, distal);
  }

  /** The outline with its two sides exchanged. */
  public Outline mirrored() {
    Polygon flipped =
        (Polygon) AffineTransformation.reflectionInstance(0, 0, 0, 1).transform(polygon).reverse();
    return new Outline(flipped, wrap, proximal, flankStart, flankEnd, distal);
  }
}
