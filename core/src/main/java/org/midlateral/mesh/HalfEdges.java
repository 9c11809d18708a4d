package org.midlateral.mesh;

/**
 * The three sides of every triangle, side 3t + i running from corner i to corner i + 1, and which
 * side of which other triangle each one lies against.
 */
public final class HalfEdges {
  /** The opposite side, or -1 where there is none or more than one. */
  public final int[] twin;

  int edges;
  int open;
  int tangled;

  public HalfEdges(int vertices, int[] corners) {
    twin = new int[corners.length];
    int[] start = new int[vertices + 1];
    for (int side = 0; side < corners.length; side++) {
      start[lower(corners, side) + 1]++;
    }
    for (int v = 0; v < vertices; v++) {
      start[v + 1] += start[v];
    }
    int[] sorted = new int[corners.length];
    int[] next = start.clone();
    for (int side = 0; side < corners.length; side++) {
      sorted[next[lower(corners, side)]++] = side;
    }
    for (int v = 0; v < vertices; v++) {
      match(corners, sorted, start[v], start[v + 1]);
    }
  }

  /** The side before one in its triangle. */
  public static int before(int side) {
    return side % 3 == 0 ? side + 2 : side - 1;
  }

  /** The side after one in its triangle. */
  public static int after(int side) {
    return side % 3 == 2 ? side - 2 : side + 1;
  }

  private static int lower(int[] corners, int side) {
    return Math.min(corners[side], corners[after(side)]);
  }

  private static int upper(int[] corners, int side) {
    return Math.max(corners[side], corners[after(side)]);
  }

  /** Groups the sides from one lower vertex by their upper vertex, a handful at most. */
  private void match(int[] corners, int[] sorted, int from, int to) {
    int i = from;
    while (i < to) {
      int far = upper(corners, sorted[i]);
      int end = i + 1;
      for (int k = end; k < to; k++) {
        if (upper(corners, sorted[k]) == far) {
          int moved = sorted[k];
          sorted[k] = sorted[end];
          sorted[end++] = moved;
        }
      }
      join(corners, sorted, i, end);
      i = end;
    }
  }

  private void join(int[] corners, int[] sorted, int from, int to) {
    edges++;
    int first = sorted[from];
    int last = sorted[to - 1];
    if (to - from == 2 && corners[first] != corners[last]) {
      twin[first] = last;
      twin[last] = first;
      return;
    }
    open += to - from == 1 ? 1 : 0;
    tangled += to - from == 1 ? 0 : 1;
    for (int k = from; k < to; k++) {
      twin[sorted[k]] = -1;
    }
  }
}
