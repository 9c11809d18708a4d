package org.midlateral.solid;

import org.midlateral.mesh.TriangleMesh;
import org.midlateral.mesh.query.BoundingVolumeHierarchy;
import org.midlateral.piece.Piece;

/**
 * One piece as a closed surface, with the marks that its makers and checkers need. Vertex i of the
 * inner surface, 0 to innerVertices - 1, lies under vertex innerVertices + i of the outer one; the
 * rim's own vertices follow. Triangle k of the inner surface, 0 to innerTriangles - 1, lies under
 * triangle innerTriangles + k; the rim's follow. Triangles of any stretch of either kind lie close
 * together.
 */
public final class Solid {
  private final Piece piece;
  private final TriangleMesh mesh;
  private final double[] angle;
  private final double[] station;
  private final int innerTriangles;
  private final int edgeVertices;
  private final int firstLoop;
  private final double edgeLength;

  Solid(
      Piece piece,
      TriangleMesh mesh,
      double[] angle,
      double[] station,
      int innerTriangles,
      int edgeVertices,
      int firstLoop,
      double edgeLength) {
    this.piece = piece;
    this.mesh = mesh;
    this.angle = angle;
    this.station = station;
    this.innerTriangles = innerTriangles;
    this.edgeVertices = edgeVertices;
    this.firstLoop = firstLoop;
    this.edgeLength = edgeLength;
  }

  /** What the solid was made from. */
  public Piece piece() {
    return piece;
  }

  /** The closed surface (mm). */
  public TriangleMesh mesh() {
    return mesh;
  }

  /** Number of vertices of the inner surface, and of the outer one. */
  public int innerVertices() {
    return angle.length;
  }

  /** Number of triangles of the inner surface, and of the outer one. */
  public int innerTriangles() {
    return innerTriangles;
  }

  /** The first so many vertices of the inner surface lie on its edge. */
  public int edgeVertices() {
    return edgeVertices;
  }

  /** Angle of inner vertex i off the piece's own midline (rad). */
  public double angle(int i) {
    return angle[i];
  }

  /** The skin's angle under inner vertex i (rad). */
  public double skinAngle(int i) {
    return piece.midline().skinAngle(angle[i]);
  }

  /** Station of inner vertex i (mm). */
  public double station(int i) {
    return station[i];
  }

  /** Number of strips round the rim, from the inner to the outer edge. */
  public int rimStrips() {
    return (mesh.vertexCount() - 2 * innerVertices()) / edgeVertices + 1;
  }

  /** The first vertex of the rim's crest on the first edge: one for each of its edge vertices. */
  public int crest() {
    return 2 * innerVertices() + (rimStrips() / 2 - 1) * firstLoop;
  }

  /** Number of edge vertices on the outer edge; those of vents follow. */
  public int firstLoop() {
    return firstLoop;
  }

  /** How far the rim's strips stand off its round (mm). */
  public double rimError() {
    return new RimArc(rimStrips()).error(piece.wall() / 2);
  }

  /** The edge length it was meshed with (mm). */
  public double edgeLength() {
    return edgeLength;
  }

  /** The inner surface alone, its normals toward the skin. */
  public TriangleMesh inner() {
    return patch(0);
  }

  /** The outer surface alone. */
  public TriangleMesh outer() {
    return patch(1);
  }

  /**
   * A bounding volume hierarchy over the mesh as it will stand in a file, its inner and its outer
   * surface a branch each.
   *
   * @throws IllegalArgumentException if a coordinate is not finite as a 32-bit float
   */
  public BoundingVolumeHierarchy hierarchy() {
    return BoundingVolumeHierarchy.ofWall(mesh.filed(), innerTriangles);
  }

  /** The same without marks and letters on its outside. */
  public Solid withoutRaised() {
    if (piece.raised().isEmpty()) {
      return this;
    }
    double[] xyz = mesh.coordinates();
    int n = 3 * innerVertices();
    for (int i = 0; i < n; i += 3) {
      double dx = xyz[n + i] - xyz[i];
      double dy = xyz[n + i + 1] - xyz[i + 1];
      double dz = xyz[n + i + 2] - xyz[i + 2];
      double down = piece.wall() / Math.sqrt(dx * dx + dy * dy + dz * dz);
      xyz[n + i] = xyz[i] + down * dx;
      xyz[n + i + 1] = xyz[i + 1] + down * dy;
      xyz[n + i + 2] = xyz[i + 2] + down * dz;
    }
    return new Solid(
        piece,
        new TriangleMesh(xyz, mesh.triangles()),
        angle,
        station,
        innerTriangles,
        edgeVertices,
        firstLoop,
        edgeLength);
  }

  /** The mirror image in the plane y = 0: the other hand's. */
  public Solid mirrored() {
    double[] turned = new double[angle.length];
    for (int i = 0; i < turned.length; i++) {
      turned[i] = -angle[i];
    }
    return new Solid(
        piece.mirrored(),
        mesh.mirrored(),
        turned,
        station,
        innerTriangles,
        edgeVertices,
        firstLoop,
        edgeLength);
  }

  private TriangleMesh patch(int side) {
    int n = innerVertices();
    double[] xyz = new double[3 * n];
    System.arraycopy(mesh.coordinates(), side * 3 * n, xyz, 0, 3 * n);
    int[] corners = new int[3 * innerTriangles];
    for (int t = 0; t < innerTriangles; t++) {
      for (int c = 0; c < 3; c++) {
        corners[3 * t + c] = mesh.corner(side * innerTriangles + t, c) - side * n;
      }
    }
    return new TriangleMesh(xyz, corners);
  }
}
