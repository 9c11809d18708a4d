package org.midlateral.shell;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.operation.buffer.BufferParameters;

/**
 * The sign at the proximal end of the dorsal shell: a bar across, and from its radial end a leg
 * that points distally. It has a hand, so that the shell can be taken neither for its mirror image
 * nor turned around, and it reads by touch.
 */
public final class ProximalMark {
  /** Height over the outer surface (mm). */
  public static final double HEIGHT = 0.6;

  /** Width of its strokes (mm): their flat top, inside the slopes, is 1.2 mm wide at least. */
  public static final double STROKE = 1.5;

  /** Room it takes along the finger (mm). */
  static final double LENGTH = 5;

  private static final double BAR = 7;

  private ProximalMark() {}

  /**
   * The mark as polygons, girth from the dorsal midline and station (mm).
   *
   * @param proximal station of the bar's proximal edge (mm)
   */
  static Geometry at(double proximal) {
    double bar = proximal + STROKE / 2;
    double leg = proximal + LENGTH - STROKE / 2;
    // From the dorsal midline radial girths of a right hand are negative: +g goes on over +pi.
    Coordinate[] hook = {
      new Coordinate(BAR / 2, bar), new Coordinate(-BAR / 2, bar), new Coordinate(-BAR / 2, leg)
    };
    return new GeometryFactory()
        .createLineString(hook)
        .buffer(STROKE / 2, 8, BufferParameters.CAP_ROUND);
  }
}
