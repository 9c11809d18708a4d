package org.midlateral.inspection;

import java.util.Arrays;
import org.midlateral.digit.DigitSurface;
import org.midlateral.digit.Slice;
import org.midlateral.mesh.TriangleMesh;
import org.midlateral.mesh.query.BoundingVolumeHierarchy;
import org.midlateral.mesh.query.PointTriangleDistance;
import org.midlateral.solid.OffsetSurface;
import org.midlateral.solid.Solid;

/** How far the flat triangles of a solid stand from the exact surfaces they were lifted to. */
public final class ChordError {
  /** Walls alike up to rounding (mm). */
  public static final double LEVEL = 1e-6;

  private final Solid solid;
  private final BoundingVolumeHierarchy tree;
  private final OffsetSurface surface;
  private final DigitSurface digit;
  private final PointTriangleDistance triangle = new PointTriangleDistance();
  private final double[] p = new double[6];

  /** Wall, and what is raised on it, at each vertex (mm). */
  private final double[] thickness;

  /** The largest distance so far. */
  private double worst;

  /**
   * Of a solid.
   *
   * @param digit its skin, perhaps with known slices
   * @param tree over its mesh
   */
  ChordError(Solid solid, DigitSurface digit, BoundingVolumeHierarchy tree) {
    this.solid = solid;
    this.digit = digit;
    this.tree = tree;
    this.surface = new OffsetSurface(solid.piece());
    this.thickness = new double[solid.innerVertices()];
    Arrays.setAll(thickness, i -> thickness(solid, i));
  }

  /**
   * The largest distance (mm) over the middles of triangles and edges, and over the rim's round.
   * The slope of what is raised has none outside: it is straight from foot to brow by definition.
   */
  double largest() {
    worst = solid.rimError();
    TriangleMesh mesh = solid.mesh();
    for (int t = 0; t < solid.innerTriangles(); t++) {
      worst = Math.max(worst, at(t, 1.0 / 3, 1.0 / 3, 1.0 / 3));
      for (int c = 0; c < 3; c++) {
        int from = mesh.corner(t, (c + 1) % 3);
        int to = mesh.corner(t, (c + 2) % 3);
        // An edge with a triangle on either side counts with one of them.
        if (from < to || from < solid.edgeVertices()) {
          worst = Math.max(worst, at(t, c == 0 ? 0 : 0.5, c == 1 ? 0 : 0.5, c == 2 ? 0 : 0.5));
        }
      }
    }
    return worst;
  }

  private double at(int t, double wa, double wb, double wc) {
    TriangleMesh mesh = solid.mesh();
    int a = mesh.corner(t, 0);
    int b = mesh.corner(t, 1);
    int c = mesh.corner(t, 2);
    double s = wa * solid.station(a) + wb * solid.station(b) + wc * solid.station(c);
    double angle = wa * solid.angle(a) + wb * solid.angle(b) + wc * solid.angle(c);
    Slice slice = digit.slice(s);
    surface.at(slice, angle, solid.piece().gap().uniformAt(s), p, 0);
    double in = distance(p[0], p[1], p[2], t, wa, wb, wc);
    if (isSlope(a, b, wa, wb) || isSlope(b, c, wb, wc) || isSlope(c, a, wc, wa)) {
      return in;
    }
    double wall = wa * thickness[a] + wb * thickness[b] + wc * thickness[c];
    double x = p[0] + wall * p[3];
    double y = p[1] + wall * p[4];
    double z = p[2] + wall * p[5];
    double out = distance(x, y, z, solid.innerTriangles() + t, wa, wb, wc);
    return Math.max(in, out);
  }

  /** Whether two corners that count are raised by different heights. */
  private boolean isSlope(int a, int b, double wa, double wb) {
    return wa > 0 && wb > 0 && Math.abs(thickness[a] - thickness[b]) > LEVEL;
  }

  /**
   * Distance to the mesh, which is no farther than the place with these weights on a triangle, nor
   * than the triangle; where one of these is no farther than the worst so far, that one's.
   */
  private double distance(double x, double y, double z, int t, double wa, double wb, double wc) {
    TriangleMesh m = solid.mesh();
    int a = m.corner(t, 0);
    int b = m.corner(t, 1);
    int c = m.corner(t, 2);
    double dx = x - wa * m.x(a) - wb * m.x(b) - wc * m.x(c);
    double dy = y - wa * m.y(a) - wb * m.y(b) - wc * m.y(c);
    double dz = z - wa * m.z(a) - wb * m.z(b) - wc * m.z(c);
    double bound = Math.sqrt(dx * dx + dy * dy + dz * dz);
    if (bound <= worst) {
      return bound;
    }
    double known = Math.min(bound, tree.distance(x, y, z, t, triangle));
    return known <= worst ? known : Math.min(known, tree.distance(x, y, z, known));
  }

  private static double thickness(Solid solid, int inner) {
    TriangleMesh m = solid.mesh();
    int outer = inner + solid.innerVertices();
    double dx = m.x(outer) - m.x(inner);
    double dy = m.y(outer) - m.y(inner);
    double dz = m.z(outer) - m.z(inner);
    return Math.sqrt(dx * dx + dy * dy + dz * dz);
  }
}
