package org.midlateral.mesh.query;

import java.util.Arrays;
import org.midlateral.mesh.TriangleMesh;

/**
 * The boxes of a bounding volume hierarchy over the triangles of a mesh, or one branch of it.
 *
 * <p>A complete binary tree in one array: node i has the children 2i + 1 and 2i + 2, the leaves are
 * the triangles, split at the median again and again across the widest extent of their centroids.
 */
final class BoxTree {
  private static final int INNER = 3;
  private static final int OUTER = 4;

  final double[] xyz;
  final int[] corners;

  /** Number of leaves, a power of two. */
  final int leaves;

  /** Triangle in each leaf; -1 in leaves without one, whose box is empty. */
  final int[] order;

  /** Boxes: six per node, lower corner and upper corner. */
  final double[] boxes;

  /** The node that this tree, or this branch of one, begins at. */
  final int root;

  private BoxTree(double[] xyz, int[] corners, int[] order, double[] boxes, int root) {
    this.xyz = xyz;
    this.corners = corners;
    this.order = order;
    this.leaves = order.length;
    this.boxes = boxes;
    this.root = root;
  }

  /** The tree over a mesh. */
  static BoxTree of(TriangleMesh mesh) {
    double[] xyz = mesh.coordinates();
    int[] corners = mesh.triangles();
    int[] order = new int[MedianSplit.leaves(mesh.triangleCount())];
    Arrays.fill(order, -1);
    int[] split = MedianSplit.order(xyz, corners);
    System.arraycopy(split, 0, order, 0, split.length);
    return new BoxTree(xyz, corners, order, boxes(xyz, corners, order), 0);
  }

  /**
   * The tree over a wall: two surfaces over each other and what closes them, a branch each.
   *
   * @param surface number of triangles of either surface: the first so many are the inner one, as
   *     many more the outer one. Triangles of any stretch lie close together.
   */
  static BoxTree ofWall(TriangleMesh mesh, int surface) {
    double[] xyz = mesh.coordinates();
    int[] corners = mesh.triangles();
    int rim = corners.length / 3 - 2 * surface;
    int branch = MedianSplit.leaves(Math.max(surface, (rim + 1) / 2));
    int[] order = new int[4 * branch];
    Arrays.fill(order, -1);
    for (int i = 0; i < surface; i++) {
      order[i] = i;
      order[branch + i] = surface + i;
    }
    for (int i = 0; i < rim; i++) {
      order[2 * branch + i] = 2 * surface + i;
    }
    return new BoxTree(xyz, corners, order, boxes(xyz, corners, order), 0);
  }

  /** The branch of a wall's inner surface. */
  BoxTree inner() {
    return new BoxTree(xyz, corners, order, boxes, INNER);
  }

  /** The branch of a wall's outer surface. */
  BoxTree outer() {
    return new BoxTree(xyz, corners, order, boxes, OUTER);
  }

  /** Number of triangles of the whole mesh. */
  int triangleCount() {
    return corners.length / 3;
  }

  /** The first of the nodes over eight leaves each; the root where there are fewer leaves. */
  int firstGroup() {
    return Math.max(1, leaves / MedianSplit.GROUP) - 1;
  }

  /** The first leaf, as a node, under a node over eight leaves. */
  int leavesBegin(int group) {
    return leaves - 1 + (group - firstGroup()) * Math.min(MedianSplit.GROUP, leaves);
  }

  /** The end of the leaves with a triangle, as nodes, under a node over eight leaves. */
  int leavesEnd(int group) {
    int end = leavesBegin(group) + Math.min(MedianSplit.GROUP, leaves);
    while (end > leavesBegin(group) && triangleAt(end - 1) < 0) {
      end--;
    }
    return end;
  }

  /** The triangle in a leaf, given as a node. */
  int triangleAt(int leaf) {
    return order[leaf - leaves + 1];
  }

  /** The first leaf of this tree or branch, as a node. */
  int firstLeaf() {
    int node = root;
    while (node < leaves - 1) {
      node = 2 * node + 1;
    }
    return node;
  }

  /** The end of the leaves with a triangle of this tree or branch, as nodes. */
  int endOfLeaves() {
    int node = root;
    while (node < leaves - 1) {
      node = 2 * node + 2;
    }
    while (node >= leaves - 1 && triangleAt(node) < 0) {
      node--;
    }
    return node + 1;
  }

  private static double[] boxes(double[] xyz, int[] corners, int[] order) {
    int leaves = order.length;
    double[] boxes = new double[6 * (2 * leaves - 1)];
    for (int leaf = 0; leaf < leaves; leaf++) {
      int box = 6 * (leaves - 1 + leaf);
      int t = 3 * order[leaf];
      for (int axis = 0; axis < 3; axis++) {
        double min = Double.POSITIVE_INFINITY;
        double max = Double.NEGATIVE_INFINITY;
        if (t >= 0) {
          double a = xyz[3 * corners[t] + axis];
          double b = xyz[3 * corners[t + 1] + axis];
          double c = xyz[3 * corners[t + 2] + axis];
          min = lower(a, lower(b, c));
          max = upper(a, upper(b, c));
        }
        boxes[box + axis] = min;
        boxes[box + 3 + axis] = max;
      }
    }
    for (int node = leaves - 2; node >= 0; node--) {
      int left = 6 * (2 * node + 1);
      for (int axis = 0; axis < 3; axis++) {
        boxes[6 * node + axis] = lower(boxes[left + axis], boxes[left + 6 + axis]);
        boxes[6 * node + 3 + axis] = upper(boxes[left + 3 + axis], boxes[left + 9 + axis]);
      }
    }
    return boxes;
  }

  /** Plain comparisons, which cost less than the library's min and max; no number here is NaN. */
  private static double lower(double a, double b) {
    return a < b ? a : b;
  }

  private static double upper(double a, double b) {
    return a > b ? a : b;
  }
}
