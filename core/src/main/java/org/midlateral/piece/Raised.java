package org.midlateral.piece;

import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.util.AffineTransformation;

/**
 * Marks and letters that stand on the outside of a piece.
 *
 * @param shape polygons, x the girth from the piece's own midline (mm), y the station (mm)
 * @param height over the outer surface (mm)
 */
public record Raised(Geometry shape, double height) {
  /** The mirror image. */
  public Raised mirrored() {
    return new Raised(AffineTransformation.reflectionInstance(0, 0, 0, 1).transform(shape), height);
  }
}
