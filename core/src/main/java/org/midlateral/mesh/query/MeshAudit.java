package org.midlateral.mesh.query;

import org.apache.commons.geometry.euclidean.threed.Bounds3D;
import org.midlateral.mesh.HalfEdges;
import org.midlateral.mesh.MeshShape;
import org.midlateral.mesh.MeshTopology;
import org.midlateral.mesh.TriangleMesh;
import org.midlateral.work.Interruption;

/**
 * The verdict on a solid as it will stand in a file, that is with its coordinates rounded to 32-bit
 * floats: G6 (closed, oriented, the number of holes), G7 (no two triangles intersect but in what
 * they share) and G8 (no degenerate triangle, no needle). G6, G7 and the degenerate triangles of G8
 * are decided exactly.
 *
 * @param topology how the triangles hang together
 * @param shape sizes of the solid and of its triangles
 * @param selfIntersections pairs of triangles that intersect beyond what they share, at most
 *     {@value #MOST}
 */
public record MeshAudit(MeshTopology topology, MeshShape shape, int selfIntersections) {
  /** Intersecting pairs are not counted beyond this number: one is already one too many. */
  public static final int MOST = 1000;

  /**
   * Audits a mesh.
   *
   * @throws IllegalArgumentException if it has no triangles, or a coordinate is not finite
   */
  public static MeshAudit of(TriangleMesh mesh) {
    if (mesh.triangleCount() == 0) {
      throw new IllegalArgumentException("a mesh without triangles cannot be audited");
    }
    return of(BoundingVolumeHierarchy.of(mesh.filed()));
  }

  /** Audits the mesh under a hierarchy, with its coordinates as they stand there. */
  public static MeshAudit of(BoundingVolumeHierarchy tree) {
    TriangleMesh mesh = tree.mesh();
    int[] corners = mesh.triangles();
    HalfEdges edges = new HalfEdges(mesh.vertexCount(), corners);
    Interruption.ifInterrupted();
    MeshTopology topology = MeshTopology.of(mesh.vertexCount(), corners, edges);
    Interruption.ifInterrupted();
    int[] pairs = tree.selfIntersections(MOST, topology.closed() ? edges.twin : new int[0]);
    return new MeshAudit(topology, MeshShape.of(mesh.coordinates(), corners), pairs.length / 2);
  }

  /** Number of triangles. */
  public int triangles() {
    return topology.triangles();
  }

  /** Number of vertices. */
  public int vertices() {
    return topology.vertices();
  }

  /** Number of connected pieces. */
  public int shells() {
    return topology.shells();
  }

  /** Number of holes through the solid. */
  public int holes() {
    return topology.holes();
  }

  /** Enclosed volume (mm³). */
  public double volume() {
    return shape.volume();
  }

  /** Surface area (mm²). */
  public double area() {
    return shape.area();
  }

  /** Smallest angle of any triangle (degrees). */
  public double minAngle() {
    return shape.smallestAngle();
  }

  /** The box around the solid (mm). */
  public Bounds3D bounds() {
    return shape.bounds();
  }

  /** Whether the surface is closed, faces outward, and no vertex is there twice or for nothing. */
  public boolean watertight() {
    return topology.closed()
        && topology.unusedVertices() == 0
        && shape.repeatedVertices() == 0
        && shape.volume() > 0;
  }

  /**
   * Whether this is one watertight shell that neither meets itself nor has degenerate triangles.
   */
  public boolean sound() {
    return watertight()
        && shells() == 1
        && selfIntersections == 0
        && shape.degenerateTriangles() == 0;
  }
}
