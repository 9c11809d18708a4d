package org.midlateral.solid;

import org.apache.commons.geometry.euclidean.threed.Bounds3D;

/**
 * The verdict on a solid as it will stand in a file, that is with its coordinates rounded to 32-bit
 * floats: G6 (closed, oriented, the number of holes), G7 (no two triangles meet but in what they
 * share) and G8 (no degenerate triangle, no needle). G6, G7 and the degenerate triangles of G8 are
 * decided exactly.
 *
 * @param topology how the triangles hang together
 * @param shape sizes of the solid and of its triangles
 * @param meetings pairs of triangles that meet beyond what they share, at most {@value #MOST}
 */
public record MeshAudit(MeshTopology topology, MeshShape shape, int meetings) {
  /** Meeting pairs are not counted beyond this number: one is already one too many. */
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
    return of(MeshTree.of(filed(mesh)));
  }

  /** Audits the mesh under a tree, with its coordinates as they stand there. */
  public static MeshAudit of(MeshTree tree) {
    Sides sides = new Sides(tree.xyz.length / 3, tree.corners);
    MeshTopology topology = MeshTopology.of(tree.xyz.length / 3, tree.corners, sides);
    int[] meetings = tree.meetings(MOST, topology.closed() ? sides.twin : new int[0]);
    return new MeshAudit(topology, MeshShape.of(tree.xyz, tree.corners), meetings.length / 2);
  }

  /**
   * The mesh as it will stand in a file.
   *
   * @throws IllegalArgumentException if a coordinate is not finite as a 32-bit float
   */
  public static TriangleMesh filed(TriangleMesh mesh) {
    double[] xyz = mesh.coordinates();
    round(xyz);
    return new TriangleMesh(xyz, mesh.triangles());
  }

  /** Rounds coordinates to 32-bit floats. */
  static void round(double[] xyz) {
    for (int i = 0; i < xyz.length; i++) {
      xyz[i] = (float) xyz[i];
      if (!Double.isFinite(xyz[i])) {
        throw new IllegalArgumentException("vertex " + i / 3 + " is not at a finite place");
      }
    }
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
    return watertight() && shells() == 1 && meetings == 0 && shape.degenerateTriangles() == 0;
  }
}
