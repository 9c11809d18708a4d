package org.midlateral.solid;

import java.util.Arrays;
import org.midlateral.digit.DigitSurface;
import org.midlateral.digit.Slice;

/** How far the flat triangles of a solid stand from the exact surfaces they were lifted to. */
final class ChordError {
  /** Up to here the distance from a triangle's plane, which is never too small, is good enough. */
  private static final double PLANE_IS_ENOUGH = 0.008;

  /** Places that promise this share of the most are looked at first. */
  private static final double FIRST = 0.9;

  /** A place is off by no more than this times what it promises, or it does not matter. */
  private static final double SAFE = 1.4;

  private final Solid solid;
  private final MeshTree inner;
  private final MeshTree outer;
  private final OffsetSurface surface;
  private final DigitSurface digit;
  private final double[] p = new double[6];

  /** Wall, and what is raised on it, at each vertex (mm). */
  private final double[] thickness;

  /** The largest distance so far. */
  private double worst;

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
    this.thickness = new double[solid.innerVertices()];
    Arrays.setAll(thickness, i -> thickness(solid, i));
  }

  /**
   * The largest distance (mm) over the middles of triangles and edges, and over the rim's round.
   *
   * <p>The exact surface is asked only where the turn of the normals promises enough: first at the
   * places that promise most, then at all that may still be worse than what was found there.
   */
  double largest() {
    double[] promise = promises();
    double most = 0;
    for (double p : promise) {
      most = Math.max(most, p);
    }
    worst = solid.rimError();
    for (int i = 0; i < promise.length; i++) {
      if (promise[i] > FIRST * most) {
        worst = Math.max(worst, at(i));
      }
    }
    for (int i = 0; i < promise.length; i++) {
      if (promise[i] <= FIRST * most && SAFE * promise[i] > worst) {
        worst = Math.max(worst, at(i));
      }
    }
    return worst;
  }

  /**
   * About how far the surfaces stand off at the middle of each triangle, place 4 t, and of each of
   * its edges, 4 t + 1 + c for the one across from corner c; see {@link Refinement}. An edge with a
   * triangle on either side counts with one of them.
   */
  private double[] promises() {
    TriangleMesh mesh = solid.mesh();
    double[] normal = normals();
    double[] promise = new double[4 * solid.innerTriangles()];
    for (int t = 0; t < solid.innerTriangles(); t++) {
      double inner = 0;
      double outer = 0;
      for (int c = 0; c < 3; c++) {
        int from = mesh.corner(t, (c + 1) % 3);
        int to = mesh.corner(t, (c + 2) % 3);
        double dx = normal[3 * to] - normal[3 * from];
        double dy = normal[3 * to + 1] - normal[3 * from + 1];
        double dz = normal[3 * to + 2] - normal[3 * from + 2];
        double in =
            (mesh.x(to) - mesh.x(from)) * dx
                + (mesh.y(to) - mesh.y(from)) * dy
                + (mesh.z(to) - mesh.z(from)) * dz;
        double wall = (thickness[from] + thickness[to]) / 2;
        double out = in + wall * (dx * dx + dy * dy + dz * dz);
        inner += in / 8;
        outer += out / 8;
        if (from < to || from < solid.edgeVertices()) {
          promise[4 * t + 1 + c] = Math.max(Math.abs(in), Math.abs(out)) / 8;
        }
      }
      promise[4 * t] = 4.0 / 9 * Math.max(Math.abs(inner), Math.abs(outer));
    }
    return promise;
  }

  /** Unit normals of the inner surface at its vertices, n by 3, row-major: toward the outer one. */
  private double[] normals() {
    TriangleMesh m = solid.mesh();
    int n = solid.innerVertices();
    double[] normal = new double[3 * n];
    for (int i = 0; i < n; i++) {
      normal[3 * i] = (m.x(n + i) - m.x(i)) / thickness[i];
      normal[3 * i + 1] = (m.y(n + i) - m.y(i)) / thickness[i];
      normal[3 * i + 2] = (m.z(n + i) - m.z(i)) / thickness[i];
    }
    return normal;
  }

  private double at(int place) {
    int t = place / 4;
    int c = place % 4 - 1;
    return c < 0
        ? at(t, 1.0 / 3, 1.0 / 3, 1.0 / 3)
        : at(t, c == 0 ? 0 : 0.5, c == 1 ? 0 : 0.5, c == 2 ? 0 : 0.5);
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
    double wall = wa * thickness[a] + wb * thickness[b] + wc * thickness[c];
    double in = fromPlane(t, p[0], p[1], p[2]);
    double out =
        fromPlane(
            solid.innerTriangles() + t, p[0] + wall * p[3], p[1] + wall * p[4], p[2] + wall * p[5]);
    if (in > PLANE_IS_ENOUGH) {
      in = distance(inner, p[0], p[1], p[2], t, wa, wb, wc);
    }
    if (out > PLANE_IS_ENOUGH) {
      double x = p[0] + wall * p[3];
      double y = p[1] + wall * p[4];
      double z = p[2] + wall * p[5];
      out = distance(outer, x, y, z, solid.innerTriangles() + t, wa, wb, wc);
    }
    return Math.max(in, out);
  }

  /**
   * Distance to a surface, which is no farther than the place with these weights on a triangle;
   * where that place shows it to be no larger than the worst so far, the distance to the place.
   */
  private double distance(
      MeshTree tree, double x, double y, double z, int t, double wa, double wb, double wc) {
    TriangleMesh m = solid.mesh();
    int a = m.corner(t, 0);
    int b = m.corner(t, 1);
    int c = m.corner(t, 2);
    double dx = x - wa * m.x(a) - wb * m.x(b) - wc * m.x(c);
    double dy = y - wa * m.y(a) - wb * m.y(b) - wc * m.y(c);
    double dz = z - wa * m.z(a) - wb * m.z(b) - wc * m.z(c);
    double bound = Math.sqrt(dx * dx + dy * dy + dz * dz);
    return bound <= worst ? bound : Math.min(bound, tree.distance(x, y, z, bound));
  }

  private static double thickness(Solid solid, int inner) {
    TriangleMesh m = solid.mesh();
    int outer = inner + solid.innerVertices();
    double dx = m.x(outer) - m.x(inner);
    double dy = m.y(outer) - m.y(inner);
    double dz = m.z(outer) - m.z(inner);
    return Math.sqrt(dx * dx + dy * dy + dz * dz);
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
