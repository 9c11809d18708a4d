package org.midlateral.mesh.query;

import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.midlateral.mesh.TriangleMesh;

/**
 * A bounding volume hierarchy over the triangles of a mesh, for questions of nearness and
 * intersection. Immutable; any number of threads may ask it.
 *
 * <p>Distances are computed in doubles; whether triangles intersect is decided exactly for the
 * coordinates as they stand.
 */
public final class BoundingVolumeHierarchy {
  private final BoxTree tree;

  /** Made when first asked for; made twice they are the same. */
  private LeafClusters clusters;

  private BoundingVolumeHierarchy(BoxTree tree) {
    this.tree = tree;
  }

  /** The hierarchy over a mesh. */
  public static BoundingVolumeHierarchy of(TriangleMesh mesh) {
    return new BoundingVolumeHierarchy(BoxTree.of(mesh));
  }

  /**
   * The hierarchy over a wall, whose inner and outer surface have a branch each.
   *
   * @param surface number of triangles of either surface: the first so many of the mesh are the
   *     inner one, as many more the outer one, the rest closes them
   */
  public static BoundingVolumeHierarchy ofWall(TriangleMesh mesh, int surface) {
    return new BoundingVolumeHierarchy(BoxTree.ofWall(mesh, surface));
  }

  /** The branch of a wall's inner surface. */
  public BoundingVolumeHierarchy inner() {
    return branch(tree.inner());
  }

  /** The branch of a wall's outer surface. */
  public BoundingVolumeHierarchy outer() {
    return branch(tree.outer());
  }

  private BoundingVolumeHierarchy branch(BoxTree part) {
    BoundingVolumeHierarchy branch = new BoundingVolumeHierarchy(part);
    branch.clusters = clusters();
    return branch;
  }

  private LeafClusters clusters() {
    LeafClusters made = clusters;
    if (made == null) {
      made = new LeafClusters(tree);
      clusters = made;
    }
    return made;
  }

  /** The mesh as it stands here. */
  public TriangleMesh mesh() {
    return new TriangleMesh(tree.xyz, tree.corners);
  }

  /**
   * Distance from a point to the surface.
   *
   * @param x in mm, as y and z
   * @param bound the search gives up beyond this distance (mm)
   * @return the distance (mm), or infinity if it is not under the bound
   */
  public double distance(double x, double y, double z, double bound) {
    ClosestPointSearch search = new ClosestPointSearch(tree);
    return search.find(x, y, z, bound * bound) < 0
        ? Double.POSITIVE_INFINITY
        : Math.sqrt(search.square());
  }

  /**
   * Distance from a point to one triangle (mm).
   *
   * @param x in mm, as y and z
   * @param scratch of the calling thread
   */
  public double distance(
      double x, double y, double z, int triangle, PointTriangleDistance scratch) {
    int t = 3 * triangle;
    int[] corners = tree.corners;
    return Math.sqrt(
        scratch.square(x, y, z, tree.xyz, 3 * corners[t], 3 * corners[t + 1], 3 * corners[t + 2]));
  }

  /** The point of the surface closest to a point, and the triangle it lies on. */
  public ClosestPoint closest(Vector3D point) {
    ClosestPointSearch search = new ClosestPointSearch(tree);
    int triangle = search.find(point.getX(), point.getY(), point.getZ(), Double.POSITIVE_INFINITY);
    if (triangle < 0) {
      throw new IllegalStateException("an empty mesh is near nothing");
    }
    return new ClosestPoint(triangle, search.point(), Math.sqrt(search.square()));
  }

  /**
   * Triangles of this mesh that intersect each other beyond the corners and edges they share.
   *
   * @param most stop after so many pairs
   * @param twin of each half-edge where the mesh is known to be closed and oriented, which saves
   *     most of the work; else empty
   * @return triangle numbers, k by 2, row-major
   */
  public int[] selfIntersections(int most, int[] twin) {
    return Intersections.within(tree, most, twin).pairs();
  }

  /**
   * Triangles of this mesh that intersect triangles of another; touching counts.
   *
   * @param most stop after so many pairs
   * @return triangle numbers, first this mesh's then the other's, k by 2, row-major
   */
  public int[] intersections(BoundingVolumeHierarchy other, int most) {
    return Intersections.between(tree, other.tree, most).pairs();
  }

  /** The smallest gap between this surface and another, and where it is. */
  public Gap gap(BoundingVolumeHierarchy other) {
    return gap(other, Double.POSITIVE_INFINITY).orElseThrow();
  }

  /**
   * The smallest gap between this surface and another, if it is smaller than some bound; a bound
   * that holds makes the search much shorter.
   *
   * @param below the bound (mm)
   */
  public Optional<Gap> gap(BoundingVolumeHierarchy other, double below) {
    return new GapSearch(tree, clusters(), other.tree, other.clusters(), below).find();
  }
}
