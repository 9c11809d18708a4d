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
 * the triangles, halved again and again across the widest extent of their middles. In the tree of a
 * {@link Solid} inner surface, outer surface and rim have a branch each. Distances are computed in
 * doubles; whether triangles meet is decided exactly for the coordinates as they stand.
 */
public final class MeshTree {
  private static final int INNER = 3;
  private static final int OUTER = 4;

  /** Leaves of a group. */
  static final int GROUP = 8;

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

  /** Made when first asked for; made twice they are the same. */
  private Facets facets;

  private Clusters clusters;

  private MeshTree(double[] xyz, int[] corners, int[] order, double[] boxes, int root) {
    this.xyz = xyz;
    this.corners = corners;
    this.order = order;
    this.leaves = order.length;
    this.boxes = boxes;
    this.root = root;
  }

  /** The tree over a mesh. */
  public static MeshTree of(TriangleMesh mesh) {
    double[] xyz = mesh.coordinates();
    int[] corners = mesh.triangles();
    int[] order = new int[power(mesh.triangleCount())];
    Arrays.fill(order, -1);
    int[] halved = Halving.order(xyz, corners, 0, mesh.triangleCount(), order.length);
    System.arraycopy(halved, 0, order, 0, halved.length);
    return new MeshTree(xyz, corners, order, boxes(xyz, corners, order), 0);
  }

  /**
   * The tree over a solid's mesh as it will stand in a file, with 32-bit coordinates.
   *
   * @throws IllegalArgumentException if a coordinate is not finite
   */
  public static MeshTree of(Solid solid) {
    double[] xyz = solid.mesh().coordinates();
    MeshAudit.round(xyz);
    int[] corners = solid.mesh().triangles();
    int n = solid.innerTriangles();
    int rim = corners.length / 3 - 2 * n;
    int branch = power(Math.max(n, (rim + 1) / 2));
    int[] order = new int[4 * branch];
    Arrays.fill(order, -1);
    // A solid's triangles come in such an order that those of any stretch lie close together.
    for (int i = 0; i < n; i++) {
      order[i] = i;
      order[branch + i] = n + i;
    }
    for (int i = 0; i < rim; i++) {
      order[2 * branch + i] = 2 * n + i;
    }
    return new MeshTree(xyz, corners, order, boxes(xyz, corners, order), 0);
  }

  static int power(int least) {
    return least <= 1 ? 1 : Integer.highestOneBit(least - 1) << 1;
  }

  /** The branch of a solid's inner surface. */
  MeshTree inner() {
    return branch(INNER);
  }

  /** The branch of a solid's outer surface. */
  MeshTree outer() {
    return branch(OUTER);
  }

  private MeshTree branch(int node) {
    MeshTree branch = new MeshTree(xyz, corners, order, boxes, node);
    branch.facets = facets();
    branch.clusters = clusters();
    return branch;
  }

  Facets facets() {
    if (facets == null) {
      facets = new Facets(xyz, corners);
    }
    return facets;
  }

  Clusters clusters() {
    if (clusters == null) {
      clusters = new Clusters(this, facets());
    }
    return clusters;
  }

  /** Number of triangles of the whole mesh. */
  public int triangleCount() {
    return corners.length / 3;
  }

  /** The box around the mesh (mm). */
  public Bounds3D bounds() {
    return Bounds3D.from(
        Vector3D.of(boxes[6 * root], boxes[6 * root + 1], boxes[6 * root + 2]),
        Vector3D.of(boxes[6 * root + 3], boxes[6 * root + 4], boxes[6 * root + 5]));
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
    Sides sides = new Sides(xyz.length / 3, corners);
    boolean closed = MeshTopology.of(xyz.length / 3, corners, sides).closed();
    return meetings(most, closed ? sides.twin : new int[0]);
  }

  /**
   * Likewise.
   *
   * @param twin of each side where the mesh is known to be closed and oriented, which saves most of
   *     the work; else empty
   */
  int[] meetings(int most, int[] twin) {
    return Meetings.within(this, most, twin).pairs();
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
