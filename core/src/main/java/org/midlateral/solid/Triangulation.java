package org.midlateral.solid;

import java.util.Arrays;
import org.midlateral.mesh.HalfEdges;

/**
 * Triangles in the plane that know their neighbours. Half-edge 3t + i runs from corner i of
 * triangle t to the next one; edges are flipped until no circumcircle of two neighbours holds the
 * fourth point (C. L. Lawson, "Software for C1 surface interpolation", 1977).
 */
class Triangulation {
  double[] x;
  double[] y;

  /** Corners of the triangles, three each, counter-clockwise. */
  int[] corner;

  /** The half-edge on the other side of each half-edge, -1 on the edge of the whole. */
  int[] twin;

  /** Number of half-edges. */
  int used;

  private final int[] stack = new int[512];

  /** No triangles yet, and room for all that the points can have. */
  Triangulation(double[] x, double[] y) {
    this(x, y, new int[6 * x.length], new int[6 * x.length]);
  }

  private Triangulation(double[] x, double[] y, int[] corner, int[] twin) {
    this.x = x;
    this.y = y;
    this.corner = corner;
    this.twin = twin;
  }

  /** These triangles; a side with no other against it belongs to the edge of the whole. */
  static Triangulation of(double[] x, double[] y, int[] corners) {
    int[] twin = new HalfEdges(x.length, corners).twin;
    Triangulation made = new Triangulation(x, y, corners, twin);
    made.used = corners.length;
    return made;
  }

  /** Corners of the triangles, m by 3, counter-clockwise. */
  int[] corners() {
    return Arrays.copyOf(corner, used);
  }

  /**
   * Puts a point on an edge that has a triangle on either side, each of which becomes two.
   *
   * @param a half-edge
   * @param p number of the point, whose coordinates are there already
   */
  void split(int a, int p) {
    if (used + 6 > corner.length) {
      corner = Arrays.copyOf(corner, 2 * used);
      twin = Arrays.copyOf(twin, 2 * used);
    }
    int b = twin[a];
    int afterA = HalfEdges.after(a);
    int afterB = HalfEdges.after(b);
    int far = HalfEdges.before(a);
    int farB = HalfEdges.before(b);
    int c = triangle(p, corner[b], corner[far], -1, twin[afterA], -1);
    int d = triangle(p, corner[a], corner[farB], -1, twin[afterB], -1);
    corner[afterA] = p;
    corner[afterB] = p;
    link(a, d);
    link(b, c);
    link(c + 2, afterA);
    link(d + 2, afterB);
    legalize(far);
    legalize(c + 1);
    legalize(farB);
    legalize(d + 1);
  }

  /** Adds a triangle with the half-edges on the other side of its own; returns its first. */
  final int triangle(int a, int b, int c, int ab, int bc, int ca) {
    int t = used;
    corner[t] = a;
    corner[t + 1] = b;
    corner[t + 2] = c;
    link(t, ab);
    link(t + 1, bc);
    link(t + 2, ca);
    used += 3;
    return t;
  }

  private void link(int a, int b) {
    twin[a] = b;
    if (b >= 0) {
      twin[b] = a;
    }
  }

  /** Flips edges until all are Delaunay; returns the half-edge that took the place of a. */
  final int legalize(int a) {
    int depth = 0;
    int ar;
    while (true) {
      int b = twin[a];
      int a0 = a - a % 3;
      ar = a0 + (a + 2) % 3;
      if (b >= 0) {
        int b0 = b - b % 3;
        int al = a0 + (a + 1) % 3;
        int bl = b0 + (b + 2) % 3;
        if (inCircle(corner[ar], corner[a], corner[al], corner[bl])) {
          corner[a] = corner[bl];
          corner[b] = corner[ar];
          int outer = twin[bl];
          if (outer < 0) {
            onEdge(bl, a);
          }
          link(a, outer);
          link(b, twin[ar]);
          link(ar, bl);
          if (depth < stack.length) {
            stack[depth++] = b0 + (b + 1) % 3;
          }
          continue;
        }
      }
      if (depth == 0) {
        return ar;
      }
      a = stack[--depth];
    }
  }

  /** Told that an edge of the whole is another half-edge now. */
  void onEdge(int before, int now) {
    // Of interest to those who keep a hull.
  }

  private boolean inCircle(int a, int b, int c, int p) {
    double dx = x[a] - x[p];
    double dy = y[a] - y[p];
    double ex = x[b] - x[p];
    double ey = y[b] - y[p];
    double fx = x[c] - x[p];
    double fy = y[c] - y[p];
    double ap = dx * dx + dy * dy;
    double bp = ex * ex + ey * ey;
    double cp = fx * fx + fy * fy;
    return dx * (ey * cp - bp * fy) - dy * (ex * cp - bp * fx) + ap * (ex * fy - ey * fx) > 0;
  }
}
