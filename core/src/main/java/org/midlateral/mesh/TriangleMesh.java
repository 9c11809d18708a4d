package org.midlateral.mesh;

import java.util.Arrays;
import org.apache.commons.geometry.euclidean.threed.Vector3D;

/**
 * An indexed triangle surface in mm; immutable once made. Triangles are counter-clockwise seen from
 * outside.
 */
public final class TriangleMesh {
  private final double[] xyz;
  private final int[] corners;

  /**
   * Takes over the arrays: the caller must not change them afterwards.
   *
   * @param xyz coordinates, n by 3, row-major (mm)
   * @param corners vertex numbers, m by 3, row-major
   */
  public TriangleMesh(double[] xyz, int[] corners) {
    if (xyz.length % 3 != 0 || corners.length % 3 != 0) {
      throw new IllegalArgumentException("coordinates and corners come in threes");
    }
    this.xyz = xyz;
    this.corners = corners;
  }

  public int vertexCount() {
    return xyz.length / 3;
  }

  public int triangleCount() {
    return corners.length / 3;
  }

  /** The x coordinate of a vertex (mm). */
  public double x(int vertex) {
    return xyz[3 * vertex];
  }

  /** The y coordinate of a vertex (mm). */
  public double y(int vertex) {
    return xyz[3 * vertex + 1];
  }

  /** The z coordinate of a vertex (mm). */
  public double z(int vertex) {
    return xyz[3 * vertex + 2];
  }

  /** A vertex as a vector (mm). */
  public Vector3D vertex(int vertex) {
    return Vector3D.of(x(vertex), y(vertex), z(vertex));
  }

  /**
   * The vertex at a corner of a triangle.
   *
   * @param triangle 0 to triangleCount - 1
   * @param corner 0, 1 or 2
   */
  public int corner(int triangle, int corner) {
    return corners[3 * triangle + corner];
  }

  /** Area of a triangle (mm²). */
  public double area(int triangle) {
    Vector3D a = vertex(corner(triangle, 0));
    Vector3D u = a.vectorTo(vertex(corner(triangle, 1)));
    return u.cross(a.vectorTo(vertex(corner(triangle, 2)))).norm() / 2;
  }

  /** A copy of the coordinates, n by 3, row-major (mm). */
  public double[] coordinates() {
    return xyz.clone();
  }

  /** A copy of the corners, m by 3, row-major. */
  public int[] triangles() {
    return corners.clone();
  }

  /**
   * The mesh as it will stand in a file, with its coordinates rounded to 32-bit floats.
   *
   * @throws IllegalArgumentException if a coordinate is not finite as a 32-bit float
   */
  public TriangleMesh filed() {
    double[] rounded = new double[xyz.length];
    for (int i = 0; i < xyz.length; i++) {
      rounded[i] = (float) xyz[i];
      if (!Double.isFinite(rounded[i])) {
        throw new IllegalArgumentException("vertex " + i / 3 + " is not at a finite place");
      }
    }
    return new TriangleMesh(rounded, corners);
  }

  /** The same mesh so many times as large about the origin. */
  public TriangleMesh scaled(double factor) {
    return factor == 1
        ? this
        : new TriangleMesh(
            Arrays.stream(coordinates()).map(c -> factor * c).toArray(), triangles());
  }

  /** The mirror image in the plane y = 0, still counter-clockwise seen from outside. */
  public TriangleMesh mirrored() {
    double[] flipped = xyz.clone();
    for (int i = 1; i < flipped.length; i += 3) {
      flipped[i] = -flipped[i];
    }
    int[] turned = corners.clone();
    for (int t = 0; t < turned.length; t += 3) {
      turned[t + 1] = corners[t + 2];
      turned[t + 2] = corners[t + 1];
    }
    return new TriangleMesh(flipped, turned);
  }
}
