package org.midlateral.solid;

import org.midlateral.digit.DigitSurface;
import org.midlateral.digit.Slice;

/** How far the flat triangles of a solid stand from the exact surfaces they were lifted to. */
final class ChordError {
  /** Up to here the distance from a triangle's plane, which is never too small, is good enough. */
  private static final double PLANE_IS_ENOUGH = 0.008;

  private static final double FAR = 10;

  private final Solid solid;
  private final MeshTree inner;
  private final MeshTree outer;
  private final OffsetSurface surface;
  private final DigitSurface digit;
  private final double[] p = new double[6];

  /**
   * Of a solid.
   *
   * @param digit its skin, perhaps with known slices
   */
  ChordError(Solid solid, DigitSurface digit, MeshTree inner, MeshTree outer) {
    this.solid = solid;
    this.digit = digit;
    this.inner = inner;
    this.outer = outer;
    this.surface = new OffsetSurface(solid.piece());
  }

  /**
   * The largest distance (mm) over the middles of triangles and edges, and over the rim's round.
   */
  double largest() {
    TriangleMesh mesh = solid.mesh();
    double worst = solid.rimSagitta();
    for (int t = 0; t < solid.innerTriangles(); t++) {
      worst = Math.max(worst, at(t, 1.0 / 3, 1.0 / 3, 1.0 / 3));
      for (int c = 0; c < 3; c++) {
        // An edge has a triangle on each side; it is looked at from one of them.
        int from = mesh.corner(t, (c + 1) % 3);
        int to = mesh.corner(t, (c + 2) % 3);
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
    double wall = solid.piece().wall();
    double in = fromPlane(t, p[0], p[1], p[2]);
    double out =
        fromPlane(
            solid.innerTriangles() + t, p[0] + wall * p[3], p[1] + wall * p[4], p[2] + wall * p[5]);
    if (in > PLANE_IS_ENOUGH) {
      in = inner.distance(p[0], p[1], p[2], FAR);
    }
    if (out > PLANE_IS_ENOUGH) {
      out = outer.distance(p[0] + wall * p[3], p[1] + wall * p[4], p[2] + wall * p[5], FAR);
    }
    return Math.max(in, out);
  }

  private double fromPlane(int t, double x, double y, double z) {
    TriangleMesh m = solid.mesh();
    int a = m.corner(t, 0);
    int b = m.corner(t, 1);
    int c = m.corner(t, 2);
    double ux = m.x(b) - m.x(a);
    double uy = m.y(b) - m.y(a);
    double uz = m.z(b) - m.z(a);
    double vx = m.x(c) - m.x(a);
    double vy = m.y(c) - m.y(a);
    double vz = m.z(c) - m.z(a);
    double nx = uy * vz - uz * vy;
    double ny = uz * vx - ux * vz;
    double nz = ux * vy - uy * vx;
    double off = (x - m.x(a)) * nx + (y - m.y(a)) * ny + (z - m.z(a)) * nz;
    return Math.abs(off) / Math.sqrt(nx * nx + ny * ny + nz * nz);
  }
}
