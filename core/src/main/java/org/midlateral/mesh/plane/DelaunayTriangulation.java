package org.midlateral.mesh.plane;

import java.util.Arrays;
import java.util.Comparator;

/**
 * Delaunay triangulation of points of the plane by divide and conquer: the points, sorted, are
 * halved until two or three are left; two halves are joined from the lower common tangent of their
 * hulls upward, edges that the criterion forbids giving way (L. Guibas and J. Stolfi, "Primitives
 * for the manipulation of general subdivisions and the computation of Voronoi diagrams", ACM Trans.
 * Graph. 4 (1985) 74-123; the names of their procedures stand in brackets).
 *
 * <p>What the paper sorts by x and then y is sorted here by y and then falling x, its picture
 * turned by a quarter: points that come in rows are divided between rows, and few edges cross from
 * half to half. "Left" and "right" below are the paper's.
 */
public final class DelaunayTriangulation {
  private static final int NONE = -1;

  private final PlanePoints points;
  private final Subdivision net;

  private DelaunayTriangulation(PlanePoints points) {
    this.points = points;
    this.net = new Subdivision(points.size());
  }

  /**
   * Triangulates.
   *
   * @param x coordinates; of points at one place only the first is joined to others
   * @param y coordinates
   * @return the triangles; none where all points lie on one line
   */
  public static PlaneTriangulation of(double[] x, double[] y) {
    int[] order = sorted(x, y);
    if (order.length < 3) {
      return new PlaneTriangulation(new int[0], new int[0]);
    }
    double[] inX = new double[order.length];
    double[] inY = new double[order.length];
    for (int i = 0; i < order.length; i++) {
      inX[i] = x[order[i]];
      inY[i] = y[order[i]];
    }
    DelaunayTriangulation made = new DelaunayTriangulation(new PlanePoints(inX, inY));
    Hull hull = made.divide(0, order.length);
    return made.net.triangles(hull.first ^ 1).renumbered(order);
  }

  /** Numbers of the points from left to right, each place once. */
  private static int[] sorted(double[] x, double[] y) {
    Integer[] order = new Integer[x.length];
    Arrays.setAll(order, i -> i);
    Comparator<Integer> byRow =
        (a, b) -> y[a] != y[b] ? Double.compare(y[a], y[b]) : Double.compare(x[b], x[a]);
    Arrays.sort(order, byRow);
    int[] places = new int[order.length];
    int n = 0;
    for (int i : order) {
      if (n == 0 || x[i] != x[places[n - 1]] || y[i] != y[places[n - 1]]) {
        places[n++] = i;
      }
    }
    return Arrays.copyOf(places, n);
  }

  /**
   * Two edges of a hull: from its leftmost point counter-clockwise, from its rightmost clockwise.
   */
  private record Hull(int first, int last) {}

  /** Triangulates a range of points (Delaunay). */
  private Hull divide(int from, int to) {
    if (to - from == 2) {
      int edge = net.add(from, from + 1);
      return new Hull(edge, edge ^ 1);
    }
    if (to - from == 3) {
      return three(from);
    }
    int middle = (from + to) >>> 1;
    return merge(divide(from, middle), divide(middle, to));
  }

  private Hull three(int from) {
    int a = net.add(from, from + 1);
    int b = net.add(from + 1, from + 2);
    net.splice(a ^ 1, b);
    int turn = points.turn(from, from + 1, from + 2);
    if (turn == 0) {
      return new Hull(a, b ^ 1);
    }
    int c = net.connect(b, a);
    return turn > 0 ? new Hull(a, b ^ 1) : new Hull(c ^ 1, c);
  }

  private Hull merge(Hull left, Hull right) {
    int l = left.last;
    int r = right.first;
    boolean tangent = false;
    while (!tangent) {
      if (points.turn(net.origin(r), net.origin(l), net.destination(l)) > 0) {
        l = net.onward(l);
      } else if (points.turn(net.origin(l), net.destination(r), net.origin(r)) > 0) {
        r = net.ccw(r ^ 1);
      } else {
        tangent = true;
      }
    }
    int base = net.connect(r ^ 1, l);
    Hull hull =
        new Hull(
            net.origin(l) == net.origin(left.first) ? base ^ 1 : left.first,
            net.origin(r) == net.origin(right.last) ? base : right.last);
    while (base != NONE) {
      base = rise(base);
    }
    return hull;
  }

  /**
   * Joins the halves by the triangle on top of an edge between them, which runs from right to left.
   *
   * @return the triangle's other edge between them, or NONE at the top
   */
  private int rise(int base) {
    int left = leftCandidate(base);
    int right = rightCandidate(base);
    if (left == NONE && right == NONE) {
      return NONE;
    }
    boolean rightIsNext =
        left == NONE
            || right != NONE
                && points.inCircle(
                        net.destination(left),
                        net.origin(left),
                        net.origin(right),
                        net.destination(right))
                    > 0;
    return rightIsNext ? net.connect(right, base ^ 1) : net.connect(base ^ 1, left ^ 1);
  }

  /**
   * The edge of the left half to go up by, or NONE where the half ends; edges go whose circle
   * through the base holds the end of the next one.
   */
  private int leftCandidate(int base) {
    int edge = net.ccw(base ^ 1);
    while (isAbove(edge, base)) {
      int next = net.ccw(edge);
      if (!forbids(base, edge, next)) {
        return edge;
      }
      net.remove(edge);
      edge = next;
    }
    return NONE;
  }

  private int rightCandidate(int base) {
    int edge = net.cw(base);
    while (isAbove(edge, base)) {
      int next = net.cw(edge);
      if (!forbids(base, edge, next)) {
        return edge;
      }
      net.remove(edge);
      edge = next;
    }
    return NONE;
  }

  /** Whether the circle through the base and the end of an edge holds the end of the next. */
  private boolean forbids(int base, int edge, int next) {
    return points.inCircle(
            net.destination(base), net.origin(base), net.destination(edge), net.destination(next))
        > 0;
  }

  /** Whether an edge leads up from the base, which has it on its right (Valid). */
  private boolean isAbove(int edge, int base) {
    return points.turn(net.destination(edge), net.destination(base), net.origin(base)) > 0;
  }
}
