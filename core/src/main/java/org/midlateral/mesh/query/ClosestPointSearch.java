package org.midlateral.mesh.query;

import org.apache.commons.geometry.euclidean.threed.Vector3D;

/** One thread's searches of a tree for the place nearest to a point. */
final class ClosestPointSearch {
  private final BoxTree tree;
  private final PointTriangleDistance distance = new PointTriangleDistance();

  /** Depth-first: never more than one waiting node a level, and one besides. */
  private final int[] waiting = new int[34];

  private final double[] found = new double[3];
  private double square;

  ClosestPointSearch(BoxTree tree) {
    this.tree = tree;
  }

  /**
   * Looks for the nearest place.
   *
   * @param bound squared distance at which the search gives up (mm²)
   * @return the triangle it lies on, or -1 if nothing lies nearer than the bound
   */
  int find(double x, double y, double z, double bound) {
    square = bound;
    int triangle = -1;
    int depth = 0;
    waiting[depth++] = tree.root;
    while (depth > 0) {
      int node = waiting[--depth];
      if (boxSquare(node, x, y, z) >= square) {
        continue;
      }
      if (node >= tree.leaves - 1) {
        int t = tree.order[node - tree.leaves + 1];
        if (closer(t, x, y, z)) {
          triangle = t;
        }
        continue;
      }
      int left = 2 * node + 1;
      boolean leftFirst = boxSquare(left, x, y, z) <= boxSquare(left + 1, x, y, z);
      waiting[depth++] = leftFirst ? left + 1 : left;
      waiting[depth++] = leftFirst ? left : left + 1;
    }
    return triangle;
  }

  /** Squared distance of the last place found (mm²). */
  double square() {
    return square;
  }

  /** The last place found (mm). */
  Vector3D point() {
    return Vector3D.of(found);
  }

  private boolean closer(int triangle, double x, double y, double z) {
    int[] corners = tree.corners;
    int t = 3 * triangle;
    double d =
        distance.square(x, y, z, tree.xyz, 3 * corners[t], 3 * corners[t + 1], 3 * corners[t + 2]);
    if (!(d < square)) {
      return false;
    }
    square = d;
    System.arraycopy(distance.on, 0, found, 0, 3);
    return true;
  }

  private double boxSquare(int node, double x, double y, double z) {
    double[] boxes = tree.boxes;
    int b = 6 * node;
    double dx = outside(x, boxes[b], boxes[b + 3]);
    double dy = outside(y, boxes[b + 1], boxes[b + 4]);
    double dz = outside(z, boxes[b + 2], boxes[b + 5]);
    return dx * dx + dy * dy + dz * dz;
  }

  private static double outside(double at, double low, double high) {
    if (at < low) {
      return low - at;
    }
    return at > high ? at - high : 0;
  }
}
