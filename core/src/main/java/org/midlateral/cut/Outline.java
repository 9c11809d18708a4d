package org.midlateral.cut;

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
