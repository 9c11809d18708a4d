package org.midlateral.piece;

import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.util.AffineTransformation;

/**
 * Marks and letters that stand on the outside of a piece.
 *
 * @param shape polygons, x the girth from the piece's own midline (mm), y the station (mm)
 * @param slopes round it
 * @param height over the outer surface (mm)
 */
public record Raised(Geometry shape, RaisedSlopes slopes, double height) {

  /** A shape with the slopes that belong to it. */
  public static Raised of(Geometry shape, double height) {
    return new Raised(shape, RaisedSlopes.of(shape), height);
  }

  /** The same laid elsewhere. */
  public Raised transformed(AffineTransformation by) {
    return new Raised(by.transform(shape), slopes.transformed(by), height);
  }

  /** This and something as high that lies clear of it. */
  public Raised and(Raised other) {
    if (other.height != height) {
      throw new IllegalArgumentException("heights " + height + " and " + other.height);
    }
    return new Raised(RaisedSlopes.together(shape, other.shape), slopes.and(other.slopes), height);
  }

  /** The mirror image. */
  public Raised mirrored() {
    return transformed(AffineTransformation.reflectionInstance(0, 0, 0, 1));
  }
}
