package org.midlateral.document.pattern;

import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.midlateral.solid.Solid;

/**
 * The finished trough laid flat, to compare with; a sheet that need only be bent is traced from it.
 *
 * @param unrolled its mid-surface
 * @param outline its finished edge (mm)
 */
public record TraceTemplate(Unrolled unrolled, Polygon outline) {
  private static final int QUARTER_PARTS = 16;

  /** The trough's template. The rim's roundness reaches half a wall past the mid-surface. */
  public static TraceTemplate of(Solid trough) {
    Unrolled unrolled = Unrolled.of(MidSurface.of(trough));
    Geometry finished = unrolled.outline().buffer(trough.piece().wall() / 2, QUARTER_PARTS);
    return new TraceTemplate(unrolled, (Polygon) finished);
  }
}
