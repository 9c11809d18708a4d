package org.midlateral.document.pattern;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.midlateral.digit.DigitSurface;
import org.midlateral.digit.Slice;
import org.midlateral.measurement.Order;
import org.midlateral.piece.Piece;

/**
 * The blank for a dorsal piece by hand, to be laid over the seated trough. Girth from the dorsal
 * midline to the right as seen from outside, station upward; lengths are those of the middle of the
 * sheet where it lies on the trough, so that it is large enough over the dorsum too.
 *
 * @param outline to cut (mm)
 * @param finished edge of the trimmed piece (mm)
 * @param rims of the trough beneath, from proximal to distal: left, then right (mm)
 * @param axis station of the PIP axis (mm)
 * @param thickness of the sheet (mm)
 */
public record DorsalBlank(
    Polygon outline, Polygon finished, List<List<Coordinate>> rims, double axis, double thickness) {

  /** Sheet beside the finished edge, to be cut away (mm). Common practice, no source. */
  public static final double SPARE = 8;

  private static final int QUARTER_PARTS = 16;
  private static final double STEP = 1;

  public DorsalBlank {
    rims = List.copyOf(rims);
  }

  /** The blank for a shell over its trough. */
  public static DorsalBlank of(Order order, Piece trough, Piece shell) {
    DigitSurface digit = trough.digit();
    double off = order.design().trough().liner() + trough.wall() + shell.wall() / 2;
    List<Coordinate> edge = new ArrayList<>();
    for (Coordinate c : shell.outline().polygon().getExteriorRing().getCoordinates()) {
      edge.add(new Coordinate(flat(digit.slice(c.y), c.x, off), c.y));
    }
    Polygon finished = new GeometryFactory().createPolygon(edge.toArray(Coordinate[]::new));
    List<List<Coordinate>> rims = new ArrayList<>();
    for (int side = -1; side <= 1; side += 2) {
      List<Coordinate> rim = new ArrayList<>();
      double from = shell.outline().proximal();
      double to = shell.outline().distal();
      int parts = (int) Math.ceil((to - from) / STEP);
      for (int i = 0; i <= parts; i++) {
        double station = from + (to - from) * i / parts;
        Slice slice = digit.slice(station);
        double girth = (1 - trough.outline().wrap()) * slice.circumference() / 2;
        rim.add(new Coordinate(flat(slice, side * girth, off), station));
      }
      rims.add(List.copyOf(rim));
    }
    return new DorsalBlank(
        (Polygon) finished.buffer(SPARE, QUARTER_PARTS),
        finished,
        rims,
        digit.pipAxis(),
        shell.wall());
  }

  /** Length from the dorsal midline, off the skin; exact for a convex section. */
  private static double flat(Slice slice, double girth, double off) {
    Vector3D dorsal = slice.pointByAngle(Math.PI);
    double t = slice.angle(slice.circumference() / 2 - Math.abs(girth));
    return girth + Math.signum(girth) * off * dorsal.angle(slice.pointByAngle(t));
  }
}
