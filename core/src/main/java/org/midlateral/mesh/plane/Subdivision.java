package org.midlateral.mesh.plane;

import java.util.Arrays;

/**
 * Edges between numbered points of the plane, and their order round each point (L. Guibas and J.
 * Stolfi, "Primitives for the manipulation of general subdivisions and the computation of Voronoi
 * diagrams", ACM Trans. Graph. 4 (1985) 74-123). Of their edge algebra it keeps the primal half: an
 * edge is met in two directions, numbered e and e ^ 1, each with the next and the last edge from
 * the same origin.
 */
final class Subdivision {
  private static final int REMOVED = -1;

  /** In the place of a side's number and one: the edge has the outside on its left. */
  private static final int OUTSIDE = -1;

  /** Where each directed edge starts, or REMOVED. */
  private final int[] origin;

  /** The next edge counter-clockwise round its origin (Onext). */
  private final int[] ccw;

  /** The next edge clockwise round its origin (Oprev); of a removed edge, one removed before. */
  private final int[] cw;

  private int used;
  private int removed = -1;

  /** No edge yet, and room for all that so many points can have: 3n - 6, or one between two. */
  Subdivision(int points) {
    origin = new int[6 * points];
    ccw = new int[6 * points];
    cw = new int[6 * points];
  }

  int origin(int edge) {
    return origin[edge];
  }

  int destination(int edge) {
    return origin[edge ^ 1];
  }

  /** The next edge counter-clockwise round the origin (Onext). */
  int ccw(int edge) {
    return ccw[edge];
  }

  /** The next edge clockwise round the origin (Oprev). */
  int cw(int edge) {
    return cw[edge];
  }

  /** The next edge round the face on the left (Lnext). */
  int onward(int edge) {
    return cw[edge ^ 1];
  }

  /** A new edge, joined to no other (MakeEdge). */
  int add(int from, int to) {
    int edge = removed;
    if (edge >= 0) {
      removed = cw[edge];
    } else {
      edge = used;
      used += 2;
    }
    start(edge, from);
    start(edge ^ 1, to);
    return edge;
  }

  private void start(int edge, int from) {
    origin[edge] = from;
    ccw[edge] = edge;
    cw[edge] = edge;
  }

  /** Joins two rings of edges round a point, or parts one (Splice). */
  void splice(int a, int b) {
    int afterA = ccw[a];
    int afterB = ccw[b];
    ccw[a] = afterB;
    ccw[b] = afterA;
    cw[afterB] = a;
    cw[afterA] = b;
  }

  /** A new edge from the destination of a to the origin of b, on their left (Connect). */
  int connect(int a, int b) {
    int edge = add(destination(a), origin(b));
    splice(edge, onward(a));
    splice(edge ^ 1, b);
    return edge;
  }

  /** Takes an edge out (DeleteEdge). */
  void remove(int edge) {
    splice(edge, cw[edge]);
    splice(edge ^ 1, cw[edge ^ 1]);
    origin[edge] = REMOVED;
    origin[edge ^ 1] = REMOVED;
    cw[edge] = removed;
    removed = edge;
  }

  /**
   * The faces but one, all of which are triangles.
   *
   * @param outside an edge with the face that is left out on its left
   */
  PlaneTriangulation triangles(int outside) {
    int[] side = new int[used];
    int edge = outside;
    do {
      side[edge] = OUTSIDE;
      edge = onward(edge);
    } while (edge != outside);
    int[] corners = new int[used];
    int[] edges = new int[used];
    int n = 0;
    for (int a = 0; a < used; a++) {
      if (side[a] == 0 && origin[a] != REMOVED) {
        int next = a;
        for (int i = 0; i < 3; i++) {
          corners[n] = origin[next];
          edges[n] = next;
          side[next] = ++n;
          next = onward(next);
        }
      }
    }
    int[] twin = new int[n];
    for (int i = 0; i < n; i++) {
      twin[i] = Math.max(side[edges[i] ^ 1] - 1, -1);
    }
    return new PlaneTriangulation(Arrays.copyOf(corners, n), twin);
  }
}
