package org.midlateral.mesh.query;

import org.midlateral.mesh.ExactOrientation;

/**
 * Two triangles side by side in one array, and whether they meet. Every verdict is exact for the
 * coordinates as they stand. Touching counts as meeting. A scratch object for one thread's loop.
 *
 * <p>Points 0, 1, 2 are the first triangle, 3, 4, 5 the second.
 */
final class TriangleIntersection {
  /** Far above the rounding of a dot product of differences, far below any angle of a mesh. */
  private static final double CLEAR = 1e-12;

  final double[] p = new double[18];

  /** Puts a vertex into one of the six places. */
  void set(int place, double[] xyz, int vertex) {
    System.arraycopy(xyz, 3 * vertex, p, 3 * place, 3);
  }

  /** Whether two triangles that share no corner meet. */
  boolean meet() {
    int d = ExactOrientation.space(p, 0, 1, 2, 3);
    int e = ExactOrientation.space(p, 0, 1, 2, 4);
    int f = ExactOrientation.space(p, 0, 1, 2, 5);
    if (d != 0 && d == e && d == f) {
      return false;
    }
    int a = ExactOrientation.space(p, 3, 4, 5, 0);
    int b = ExactOrientation.space(p, 3, 4, 5, 1);
    int c = ExactOrientation.space(p, 3, 4, 5, 2);
    if (a != 0 && a == b && a == c) {
      return false;
    }
    return edgeMeets(0, 1, a, b, 3, 4, 5)
        || edgeMeets(1, 2, b, c, 3, 4, 5)
        || edgeMeets(2, 0, c, a, 3, 4, 5)
        || edgeMeets(3, 4, d, e, 0, 1, 2)
        || edgeMeets(4, 5, e, f, 0, 1, 2)
        || edgeMeets(5, 3, f, d, 0, 1, 2);
  }

  /** Whether two triangles whose corners 0 and 3 are one and the same vertex meet elsewhere. */
  boolean meetBesideVertex() {
    if (clearlyApartAtVertex()) {
      return false;
    }
    int e = ExactOrientation.space(p, 0, 1, 2, 4);
    int f = ExactOrientation.space(p, 0, 1, 2, 5);
    if (e != 0 && e == f) {
      return false;
    }
    int b = ExactOrientation.space(p, 3, 4, 5, 1);
    int c = ExactOrientation.space(p, 3, 4, 5, 2);
    return edgeMeets(4, 5, e, f, 0, 1, 2) || edgeMeets(1, 2, b, c, 3, 4, 5);
  }

  /**
   * Whether two triangles that share the edge 0, 1 (also in places 3 and 4, in either order) lie on
   * each other. Corner 2 is the first one's third corner, 5 the second one's.
   */
  boolean meetBesideEdge() {
    if (clearlyApartAtEdge() || ExactOrientation.space(p, 0, 1, 2, 5) != 0) {
      return false;
    }
    int x = projection(0, 1, 2);
    if (x < 0) {
      return false; // a triangle that is a segment: a fault of its own, counted elsewhere
    }
    int y = (x + 1) % 3;
    return ExactOrientation.plane(p, 0, 1, 2, x, y) * ExactOrientation.plane(p, 0, 1, 5, x, y) > 0;
  }

  /** Whether a plane through the shared vertex has one triangle on each side of it. */
  private boolean clearlyApartAtVertex() {
    double wx = p[3] + p[6] - p[12] - p[15];
    double wy = p[4] + p[7] - p[13] - p[16];
    double wz = p[5] + p[8] - p[14] - p[17];
    double scale = CLEAR * (reach(1) + reach(2) + reach(4) + reach(5));
    return along(1, wx, wy, wz) > scale
        && along(2, wx, wy, wz) > scale
        && along(4, wx, wy, wz) < -scale
        && along(5, wx, wy, wz) < -scale;
  }

  /** Whether, seen along the shared edge, the two third corners point away from each other. */
  private boolean clearlyApartAtEdge() {
    double ex = p[3] - p[0];
    double ey = p[4] - p[1];
    double ez = p[5] - p[2];
    double square = ex * ex + ey * ey + ez * ez;
    double c = along(2, ex, ey, ez);
    double d = along(5, ex, ey, ez);
    double cx = p[6] - p[0];
    double cy = p[7] - p[1];
    double cz = p[8] - p[2];
    double across = along(5, cx, cy, cz) * square - c * d;
    return across < -CLEAR * square * (reach(2) + reach(5));
  }

  /** Squared distance of a point from corner 0. */
  private double reach(int point) {
    int i = 3 * point;
    double x = p[i] - p[0];
    double y = p[i + 1] - p[1];
    double z = p[i + 2] - p[2];
    return x * x + y * y + z * z;
  }

  private double along(int point, double wx, double wy, double wz) {
    int i = 3 * point;
    return (p[i] - p[0]) * wx + (p[i + 1] - p[1]) * wy + (p[i + 2] - p[2]) * wz;
  }

  /** Whether the segment m, n, on the sides sm and sn of the triangle's plane, meets it. */
  private boolean edgeMeets(int m, int n, int sm, int sn, int a, int b, int c) {
    if (sm * sn > 0) {
      return false;
    }
    if (sm == 0 && sn == 0) {
      return edgeMeetsInPlane(m, n, a, b, c);
    }
    int ab = ExactOrientation.space(p, m, n, a, b);
    int bc = ExactOrientation.space(p, m, n, b, c);
    if (ab * bc < 0) {
      return false;
    }
    int ca = ExactOrientation.space(p, m, n, c, a);
    return bc * ca >= 0 && ca * ab >= 0;
  }

  private boolean edgeMeetsInPlane(int m, int n, int a, int b, int c) {
    int x = projection(a, b, c);
    if (x < 0) {
      return false; // a triangle that is a segment: its own edges are tried against the other
    }
    int y = (x + 1) % 3;
    return inside(m, a, b, c, x, y)
        || inside(n, a, b, c, x, y)
        || cross(m, n, a, b, x, y)
        || cross(m, n, b, c, x, y)
        || cross(m, n, c, a, x, y);
  }

  private boolean inside(int m, int a, int b, int c, int x, int y) {
    int ab = ExactOrientation.plane(p, a, b, m, x, y);
    int bc = ExactOrientation.plane(p, b, c, m, x, y);
    int ca = ExactOrientation.plane(p, c, a, m, x, y);
    return ab * bc >= 0 && bc * ca >= 0 && ca * ab >= 0;
  }

  private boolean cross(int m, int n, int a, int b, int x, int y) {
    int sa = ExactOrientation.plane(p, m, n, a, x, y);
    int sb = ExactOrientation.plane(p, m, n, b, x, y);
    if (sa * sb > 0 || sa == 0 && sb == 0) {
      return false; // on one line: then an end lies inside, or another edge is crossed
    }
    return ExactOrientation.plane(p, a, b, m, x, y) * ExactOrientation.plane(p, a, b, n, x, y) <= 0;
  }

  /**
   * The first of the two coordinates, x and x + 1, in which the triangle keeps the most area; -1 if
   * it has none.
   */
  private int projection(int a, int b, int c) {
    int best = -1;
    double most = -1;
    for (int x = 0; x < 3; x++) {
      int y = (x + 1) % 3;
      double area =
          Math.abs(
              (p[3 * b + x] - p[3 * a + x]) * (p[3 * c + y] - p[3 * a + y])
                  - (p[3 * b + y] - p[3 * a + y]) * (p[3 * c + x] - p[3 * a + x]));
      if (area > most && ExactOrientation.plane(p, a, b, c, x, y) != 0) {
        most = area;
        best = x;
      }
    }
    return best;
  }
}
