package org.midlateral.solid;

import java.util.Arrays;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Bounds3D;
import org.apache.commons.geometry.euclidean.threed.Vector3D;

/**
 * A tree of boxes over the triangles of a mesh, for questions of nearness. Immutable; any number of
 * threads may ask it.
 *
 * <p>A complete binary tree in one array: node i has the children 2i + 1 and 2i + 2, the leaves are
 * the triangles in Morton order (their boxes' centres along a space-filling curve), so building it
 * is one sort and one sweep. Distances are computed in doubles; whether triangles meet is decided
 * exactly for the coordinates as they stand.
 */
public final class MeshTree {
  private static final int GRID = 1024;

  /** Leaves of a group. */
  static final int GROUP = 8;

  final double[] xyz;
  final int[] corners;

  /** Number of leaves, a power of two; those past the last triangle have an empty box. */
  final int leaves;

  /** Triangle in each leaf. */
  final int[] order;

  /** Boxes: six per node, lower corner and upper corner. */
  final double[] boxes;

  private MeshTree(double[] xyz, int[] corners) {
    this.xyz = xyz;
    this.corners = corners;
    int triangles = corners.length / 3;
    this.leaves = triangles <= 1 ? 1 : Integer.highestOneBit(triangles - 1) << 1;
    this.boxes = new double[6 * (2 * leaves - 1)];
    this.order = mortonOrder();
    fillBoxes();
  }

  /** The tree over a mesh. */
  public static MeshTree of(TriangleMesh mesh) {
    return new MeshTree(mesh.coordinates(), mesh.triangles());
  }

  /** Number of triangles. */
  public int triangleCount() {
    return order.length;
  }

  /** The box around the mesh (mm). */
  public Bounds3D bounds() {
    return Bounds3D.from(
        Vector3D.of(boxes[0], boxes[1], boxes[2]), Vector3D.of(boxes[3], boxes[4], boxes[5]));
  }

  /**
   * Distance from a point to the surface.
   *
   * @param x in mm, as y and z
   * @param bound the search gives up beyond this distance (mm)
   * @return the distance (mm), or infinity if it is not under the bound
   */
  public double distance(double x, double y, double z, double bound) {
    NearestPoint search = new NearestPoint(this);
    return search.find(x, y, z, bound * bound) < 0
        ? Double.POSITIVE_INFINITY
        : Math.sqrt(search.square());
  }

  /** The point of the surface nearest to a point, and the triangle it lies on. */
  public Nearest nearest(Vector3D point) {
    NearestPoint search = new NearestPoint(this);
    int triangle = search.find(point.getX(), point.getY(), point.getZ(), Double.POSITIVE_INFINITY);
    if (triangle < 0) {
      throw new IllegalStateException("an empty mesh is near nothing");
    }
    return new Nearest(triangle, search.point(), Math.sqrt(search.square()));
  }

  /**
   * Triangles of this mesh that meet each other beyond the corners and edges they share.
   *
   * @param most stop after so many pairs
   * @return triangle numbers, k by 2, row-major
   */
  public int[] meetings(int most) {
    return meetings(most, MeshTopology.of(xyz.length / 3, corners).closed());
  }

  /** Likewise, where it is known whether the mesh is closed and oriented. */
  int[] meetings(int most, boolean closed) {
    return Meetings.within(this, most, closed).pairs();
  }

  /**
   * Triangles of this mesh that meet triangles of another; touching counts.
   *
   * @param most stop after so many pairs
   * @return triangle numbers, first this mesh's then the other's, k by 2, row-major
   */
  public int[] meetings(MeshTree other, int most) {
    return Meetings.between(this, other, most).pairs();
  }

  /** The smallest gap between this surface and another, and where it is. */
  public Gap gap(MeshTree other) {
    return gap(other, Double.POSITIVE_INFINITY).orElseThrow();
  }

  /**
   * The smallest gap between this surface and another, if it is smaller than some bound; a bound
   * that holds makes the search much shorter.
   *
   * @param below the bound (mm)
   */
  public Optional<Gap> gap(MeshTree other, double below) {
    return new GapSearch(this, other, below).find();
  }

  /** The first of the nodes over eight leaves each; the root where there are fewer leaves. */
  int firstGroup() {
    return Math.max(1, leaves / GROUP) - 1;
  }

  /** The first leaf, as a node, under a node over eight leaves. */
  int leavesBegin(int group) {
    return leaves - 1 + (group - firstGroup()) * Math.min(GROUP, leaves);
  }

  /** The end of the leaves with a triangle, as nodes, under a node over eight leaves. */
  int leavesEnd(int group) {
    int end = leavesBegin(group) + Math.min(GROUP, leaves);
    return Math.min(end, leaves - 1 + order.length);
  }

  /** The triangle in a leaf, given as a node. */
  int triangleAt(int leaf) {
    return order[leaf - leaves + 1];
  }

  private int[] mortonOrder() {
    int triangles = corners.length / 3;
    double[] low = new double[3];
    double widest = 0;
    for (int axis = 0; axis < 3; axis++) {
      double min = Double.POSITIVE_INFINITY;
      double max = Double.NEGATIVE_INFINITY;
      for (int i = axis; i < xyz.length; i += 3) {
        min = lower(min, xyz[i]);
        max = upper(max, xyz[i]);
      }
      low[axis] = 3 * min;
      widest = upper(widest, max - min);
    }
    // One scale for all axes, so that the cells of the curve are cubes on a long piece too.
    double scale = widest > 0 ? (GRID - 1) / (3 * widest) : 0;
    long[] keys = new long[triangles];
    for (int t = 0; t < triangles; t++) {
      int a = 3 * corners[3 * t];
      int b = 3 * corners[3 * t + 1];
      int c = 3 * corners[3 * t + 2];
      long key = 0;
      for (int axis = 0; axis < 3; axis++) {
        double sum = xyz[a + axis] + xyz[b + axis] + xyz[c + axis];
        key |= (long) spread((int) ((sum - low[axis]) * scale)) << axis;
      }
      keys[t] = key << 32 | t;
    }
    Arrays.sort(keys);
    int[] out = new int[triangles];
    for (int i = 0; i < triangles; i++) {
      out[i] = (int) keys[i];
    }
    return out;
  }

  /** Sets two zeros between each two of the ten lowest bits. */
  private static int spread(int bits) {
    int b = bits & 0x3ff;
    b = (b | b << 16) & 0x30000ff;
    b = (b | b << 8) & 0x300f00f;
    b = (b | b << 4) & 0x30c30c3;
    return (b | b << 2) & 0x9249249;
  }

  private void fillBoxes() {
    for (int leaf = 0; leaf < leaves; leaf++) {
      int box = 6 * (leaves - 1 + leaf);
      for (int axis = 0; axis < 3; axis++) {
        double min = Double.POSITIVE_INFINITY;
        double max = Double.NEGATIVE_INFINITY;
        if (leaf < order.length) {
          int t = 3 * order[leaf];
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
  }

  /** Plain comparisons, which cost less than the library's min and max; no number here is NaN. */
  private static double lower(double a, double b) {
    return a < b ? a : b;
  }

  private static double upper(double a, double b) {
    return a > b ? a : b;
  }
}
