package org.midlateral.viewer.render;

import java.util.List;
import org.midlateral.mesh.TriangleMesh;

/**
 * A surface to draw, with a smooth normal at each vertex. Compared by identity; its arrays are
 * never changed.
 */
public final class SurfaceShape {
  final float[] xyz;
  final float[] normals;
  final int[] corners;

  private SurfaceShape(float[] xyz, float[] normals, int[] corners) {
    this.xyz = xyz;
    this.normals = normals;
    this.corners = corners;
  }

  /** The shape of a mesh. */
  public static SurfaceShape of(TriangleMesh mesh) {
    double[] from = mesh.coordinates();
    float[] xyz = new float[from.length];
    for (int i = 0; i < xyz.length; i++) {
      xyz[i] = (float) from[i];
    }
    int[] corners = mesh.triangles();
    return new SurfaceShape(xyz, normals(xyz, corners), corners);
  }

  /** Shapes drawn as one. */
  public static SurfaceShape joined(List<SurfaceShape> parts) {
    int vertices = parts.stream().mapToInt(SurfaceShape::vertexCount).sum();
    int triangles = parts.stream().mapToInt(SurfaceShape::triangleCount).sum();
    float[] xyz = new float[3 * vertices];
    float[] normals = new float[3 * vertices];
    int[] corners = new int[3 * triangles];
    int first = 0;
    int at = 0;
    for (SurfaceShape part : parts) {
      System.arraycopy(part.xyz, 0, xyz, 3 * first, part.xyz.length);
      System.arraycopy(part.normals, 0, normals, 3 * first, part.normals.length);
      for (int corner : part.corners) {
        corners[at++] = first + corner;
      }
      first += part.vertexCount();
    }
    return new SurfaceShape(xyz, normals, corners);
  }

  public int vertexCount() {
    return xyz.length / 3;
  }

  public int triangleCount() {
    return corners.length / 3;
  }

  /** A coordinate of a vertex (mm): axis 0, 1 or 2. */
  public double at(int vertex, int axis) {
    return xyz[3 * vertex + axis];
  }

  /** The vertex at a corner of a triangle. */
  public int corner(int triangle, int corner) {
    return corners[3 * triangle + corner];
  }

  /** Sums of the triangles' area vectors at each vertex, made unit. */
  private static float[] normals(float[] p, int[] corners) {
    float[] sums = new float[p.length];
    for (int t = 0; t < corners.length; t += 3) {
      int a = 3 * corners[t];
      int b = 3 * corners[t + 1];
      int c = 3 * corners[t + 2];
      float ux = p[b] - p[a];
      float uy = p[b + 1] - p[a + 1];
      float uz = p[b + 2] - p[a + 2];
      float vx = p[c] - p[a];
      float vy = p[c + 1] - p[a + 1];
      float vz = p[c + 2] - p[a + 2];
      for (int corner = t; corner < t + 3; corner++) {
        int v = 3 * corners[corner];
        sums[v] += uy * vz - uz * vy;
        sums[v + 1] += uz * vx - ux * vz;
        sums[v + 2] += ux * vy - uy * vx;
      }
    }
    for (int v = 0; v < sums.length; v += 3) {
      double length = Math.sqrt(sq(sums[v]) + sq(sums[v + 1]) + sq(sums[v + 2]));
      float scale = length > 0 ? (float) (1 / length) : 0;
      sums[v] *= scale;
      sums[v + 1] *= scale;
      sums[v + 2] *= scale;
    }
    return sums;
  }

  private static double sq(double x) {
    return x * x;
  }
}
