package org.midlateral.solid;

import java.util.Arrays;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;

/**
 * Delaunay triangulation of points in the plane: points are added by growing distance from a first
 * triangle, each tied to the part of the hull it sees, and edges are flipped until no circumcircle
 * holds a fourth point. D. A. Sinclair, "S-hull: a fast radial sweep-hull routine for Delaunay
 * triangulation" (2010). The library's own triangulator takes some ten times as long.
 */
final class Delaunay extends Triangulation {
  private final int n;
  private final int[] hullNext;
  private final int[] hullPrevious;
  private final int[] hullEdge;
  private final int[] hash;
  private int hullStart;
  private int searchStart;
  private double centreX;
  private double centreY;

  private Delaunay(double[] x, double[] y) {
    super(x, y);
    this.n = x.length;
    this.hullNext = new int[n];
    this.hullPrevious = new int[n];
    this.hullEdge = new int[n];
    this.hash = new int[(int) Math.ceil(Math.sqrt(n)) + 1];
  }

  /**
   * Triangulates.
   *
   * @param x coordinates, all points distinct and not all on a line
   * @param y coordinates
   * @return corners of the triangles, m by 3, counter-clockwise
   */
  static int[] triangulate(double[] x, double[] y) {
    Delaunay delaunay = new Delaunay(x, y);
    delaunay.run();
    return delaunay.corners();
  }

  private void run() {
    int[] seed = seed();
    int[] order = byDistance();
    Arrays.fill(hash, -1);
    start(seed);
    for (int i : order) {
      if (i != seed[0] && i != seed[1] && i != seed[2]) {
        add(i);
      }
    }
  }

  /** A first triangle of small circumcircle near the middle, counter-clockwise. */
  private int[] seed() {
    double midX = 0;
    double midY = 0;
    for (int i = 0; i < n; i++) {
      midX += x[i] / n;
      midY += y[i] / n;
    }
    int a = nearest(midX, midY, -1);
    int b = nearest(x[a], y[a], a);
    int c = -1;
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < n; i++) {
      if (i != a && i != b) {
        double r = circumradius(a, b, i);
        if (r < least) {
          least = r;
          c = i;
        }
      }
    }
    if (c < 0 || least == Double.POSITIVE_INFINITY) {
      throw new IllegalArgumentException("all points lie on one line");
    }
    if (orient(a, b, c) < 0) {
      int swap = b;
      b = c;
      c = swap;
    }
    circumcentre(a, b, c);
    return new int[] {a, b, c};
  }

  private int nearest(double px, double py, int except) {
    int best = -1;
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < n; i++) {
      double d = (x[i] - px) * (x[i] - px) + (y[i] - py) * (y[i] - py);
      if (i != except && d < least) {
        least = d;
        best = i;
      }
    }
    return best;
  }

  private double circumradius(int a, int b, int c) {
    double dx = x[b] - x[a];
    double dy = y[b] - y[a];
    double ex = x[c] - x[a];
    double ey = y[c] - y[a];
    double twice = 2 * (dx * ey - dy * ex);
    if (twice == 0) {
      return Double.POSITIVE_INFINITY;
    }
    double bl = dx * dx + dy * dy;
    double cl = ex * ex + ey * ey;
    return Math.hypot((ey * bl - dy * cl) / twice, (dx * cl - ex * bl) / twice);
  }

  private void circumcentre(int a, int b, int c) {
    double dx = x[b] - x[a];
    double dy = y[b] - y[a];
    double ex = x[c] - x[a];
    double ey = y[c] - y[a];
    double twice = 2 * (dx * ey - dy * ex);
    double bl = dx * dx + dy * dy;
    double cl = ex * ex + ey * ey;
    centreX = x[a] + (ey * bl - dy * cl) / twice;
    centreY = y[a] + (dx * cl - ex * bl) / twice;
  }

  private int[] byDistance() {
    // Sorted as one long each: the distance's float bits above, the index below.
    long[] key = new long[n];
    for (int i = 0; i < n; i++) {
      double dx = x[i] - centreX;
      double dy = y[i] - centreY;
      key[i] = (long) Float.floatToIntBits((float) (dx * dx + dy * dy)) << 32 | i;
    }
    Arrays.sort(key);
    int[] order = new int[n];
    for (int i = 0; i < n; i++) {
      order[i] = (int) key[i];
    }
    return order;
  }

  private void start(int[] seed) {
    hullStart = seed[0];
    for (int k = 0; k < 3; k++) {
      int next = seed[(k + 1) % 3];
      hullNext[seed[k]] = next;
      hullPrevious[next] = seed[k];
      hullEdge[seed[k]] = k;
      hash[key(seed[k])] = seed[k];
    }
    triangle(seed[0], seed[1], seed[2], -1, -1, -1);
  }

  private int key(int i) {
    double dx = x[i] - centreX;
    double dy = y[i] - centreY;
    double p = dx / (Math.abs(dx) + Math.abs(dy));
    // A monotone stand-in for the angle, 0 to 1.
    double turn = (dy > 0 ? 3 - p : 1 + p) / 4;
    int k = (int) (turn * hash.length);
    return k >= 0 && k < hash.length ? k : 0;
  }

  private void add(int i) {
    int from = visible(i);
    if (from < 0) {
      return;
    }
    // First triangle on the visible edge, then forward and backward while edges stay visible.
    int t = triangle(from, i, hullNext[from], -1, -1, hullEdge[from]);
    hullEdge[i] = legalize(t + 2);
    hullEdge[from] = t;
    int next = hullNext[from];
    for (int q = hullNext[next]; orient(i, next, q) < 0; q = hullNext[next]) {
      t = triangle(next, i, q, hullEdge[i], -1, hullEdge[next]);
      hullEdge[i] = legalize(t + 2);
      hullNext[next] = next;
      next = q;
    }
    int previous = from;
    if (from == searchStart) {
      for (int q = hullPrevious[previous]; orient(i, q, previous) < 0; ) {
        t = triangle(q, i, previous, -1, hullEdge[previous], hullEdge[q]);
        legalize(t + 2);
        hullEdge[q] = t;
        hullNext[previous] = previous;
        previous = q;
        q = hullPrevious[previous];
      }
    }
    hullStart = previous;
    hullPrevious[i] = previous;
    hullNext[previous] = i;
    hullPrevious[next] = i;
    hullNext[i] = next;
    hash[key(i)] = i;
    hash[key(previous)] = previous;
  }

  /** A hull vertex whose edge to the next one is seen from point i, or -1 for a double point. */
  private int visible(int i) {
    int k = key(i);
    int start = -1;
    for (int j = 0; j < hash.length; j++) {
      start = hash[(k - j + hash.length) % hash.length];
      if (start >= 0 && start != hullNext[start]) {
        break;
      }
    }
    start = hullPrevious[start];
    searchStart = start;
    int e = start;
    for (int q = hullNext[e]; orient(i, e, q) >= 0; q = hullNext[e]) {
      e = q;
      if (e == start) {
        return -1;
      }
    }
    return e;
  }

  @Override
  void onEdge(int from, int to) {
    int e = hullStart;
    do {
      if (hullEdge[e] == from) {
        hullEdge[e] = to;
        return;
      }
      e = hullPrevious[e];
    } while (e != hullStart);
  }

  /** Sign of the turn a, b, c: exact, by a filter and the library's robust predicate. */
  private int orient(int a, int b, int c) {
    double left = (x[a] - x[c]) * (y[b] - y[c]);
    double right = (y[a] - y[c]) * (x[b] - x[c]);
    double det = left - right;
    if (Math.abs(det) > 4e-16 * (Math.abs(left) + Math.abs(right))) {
      return det > 0 ? 1 : -1;
    }
    return Orientation.index(
        new Coordinate(x[a], y[a]), new Coordinate(x[b], y[b]), new Coordinate(x[c], y[c]));
  }
}
