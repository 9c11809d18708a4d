package org.midlateral.mesh.plane;

import java.util.Arrays;
import org.midlateral.mesh.HalfEdges;

/**
 * Triangles of plane points, of whatever outline, that are kept Delaunay while their edges are
 * split: an edge may stay where the circle through the triangle on one side of it does not hold the
 * far corner of the other, else it is exchanged for the other diagonal of the two (C. L. Lawson,
 * "Software for C1 surface interpolation", in J. R. Rice (ed.), Mathematical Software III, Academic
 * Press 1977, 161-194). As the sign of that is exact no edge comes back, and the exchanges end.
 *
 * <p>Sides are numbered as in {@link HalfEdges}: 3t + i runs from corner i of triangle t to the
 * next.
 */
public final class DelaunayMesh {
  private final PlanePoints points;
  private int[] corners;
  private int[] twin;
  private int sides;

  /** By triangle, whether it is another than when it was last asked for. */
  private boolean[] changed;

  /** Sides whose edge is still to be looked at. */
  private int[] queue = new int[64];

  private int queued;

  /** Round the two triangles beside an edge: their corners, and what lies outside each side. */
  private final int[] ring = new int[4];

  private final int[] outside = new int[4];

  /**
   * A mesh of these triangles, or of better ones over the same area.
   *
   * @param points the corners; the mesh keeps them, and adds those it is split at
   */
  public DelaunayMesh(PlanePoints points, PlaneTriangulation triangles) {
    this.points = points;
    this.corners = triangles.corners().clone();
    this.twin = triangles.twin().clone();
    this.sides = corners.length;
    this.changed = new boolean[sides / 3];
    Arrays.fill(changed, true);
    for (int side = 0; side < sides; side++) {
      if (twin[side] > side) {
        enqueue(side);
        restore();
      }
    }
  }

  /** Number of sides, three a triangle. */
  public int sides() {
    return sides;
  }

  /** The point a side starts from. */
  public int from(int side) {
    return corners[side];
  }

  /** The point a side runs to. */
  public int to(int side) {
    return corners[HalfEdges.after(side)];
  }

  /** Whether a side has no triangle on its other side. */
  public boolean isBoundary(int side) {
    return twin[side] < 0;
  }

  /** Whether a triangle is new, or another than when this was last asked about it. */
  public boolean takeChange(int triangle) {
    boolean was = changed[triangle];
    changed[triangle] = false;
    return was;
  }

  /** Corners of the triangles, m by 3, counter-clockwise. */
  public int[] corners() {
    return Arrays.copyOf(corners, sides);
  }

  /** Whether an edge meets the criterion; one of the boundary does. */
  public boolean isDelaunay(int side) {
    int other = twin[side];
    return other < 0
        || points.inCircle(
                corners[side],
                to(side),
                corners[HalfEdges.before(side)],
                corners[HalfEdges.before(other)])
            <= 0;
  }

  /**
   * Puts a new point on an edge: each of the two triangles beside it becomes two. A point that is
   * not within the two, so that one of the four would be turned over, is not taken.
   *
   * @param side of the edge, not of the boundary
   * @param x of the point
   * @param y of the point
   * @return whether it was taken; its number is the next after all others
   */
  public boolean split(int side, double x, double y) {
    surround(side);
    int point = points.add(x, y);
    for (int i = 0; i < 4; i++) {
      if (points.turn(point, ring[i], ring[(i + 1) % 4]) <= 0) {
        points.removeLast();
        return false;
      }
    }
    int other = twin[side];
    reserve(sides + 6);
    int[] fan = {side - side % 3, other - other % 3, sides, sides + 3};
    sides += 6;
    for (int i = 0; i < 4; i++) {
      place(fan[i], point, ring[i], ring[(i + 1) % 4]);
      pair(fan[i] + 1, outside[i]);
    }
    for (int i = 0; i < 4; i++) {
      pair(fan[i] + 2, fan[(i + 1) % 4]);
      enqueue(fan[i]);
      enqueue(fan[i] + 1);
    }
    restore();
    return true;
  }

  /** Looks at the edges in the queue; an exchange puts those round it there too. */
  private void restore() {
    while (queued > 0) {
      int side = queue[--queued];
      if (!isDelaunay(side)) {
        exchange(side);
      }
    }
  }

  /**
   * Puts the other diagonal in an edge's place. Where one of the two triangles is turned over the
   * criterion says nothing, and the edge stays.
   */
  private void exchange(int side) {
    surround(side);
    if (points.turn(ring[0], ring[1], ring[2]) <= 0
        || points.turn(ring[2], ring[3], ring[0]) <= 0) {
      return;
    }
    int other = twin[side];
    int t = side - side % 3;
    int u = other - other % 3;
    place(t, ring[1], ring[2], ring[3]);
    place(u, ring[3], ring[0], ring[1]);
    pair(t, outside[1]);
    pair(t + 1, outside[2]);
    pair(u, outside[3]);
    pair(u + 1, outside[0]);
    pair(t + 2, u + 2);
    enqueue(t);
    enqueue(t + 1);
    enqueue(u);
    enqueue(u + 1);
  }

  /** Goes round the two triangles beside an edge, counter-clockwise from its end. */
  private void surround(int side) {
    int other = twin[side];
    int[] round = {
      HalfEdges.after(side), HalfEdges.before(side), HalfEdges.after(other), HalfEdges.before(other)
    };
    for (int i = 0; i < 4; i++) {
      ring[i] = corners[round[i]];
      outside[i] = twin[round[i]];
    }
  }

  private void place(int t, int a, int b, int c) {
    corners[t] = a;
    corners[t + 1] = b;
    corners[t + 2] = c;
    changed[t / 3] = true;
  }

  private void pair(int side, int other) {
    twin[side] = other;
    if (other >= 0) {
      twin[other] = side;
    }
  }

  private void enqueue(int side) {
    if (queued == queue.length) {
      queue = Arrays.copyOf(queue, 2 * queued);
    }
    queue[queued++] = side;
  }

  private void reserve(int room) {
    if (room > corners.length) {
      corners = Arrays.copyOf(corners, room + room / 8);
      twin = Arrays.copyOf(twin, corners.length);
      changed = Arrays.copyOf(changed, corners.length / 3 + 1);
    }
  }
}
