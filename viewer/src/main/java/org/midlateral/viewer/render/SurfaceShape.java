package org.midlateral.viewer.render;

import org.midlateral.mesh.TriangleMesh;

/**
 * A surface to draw, with a smooth normal at each vertex. Compared by identity; its arrays are
 * never changed.
 */
public final class SurfaceShape {
  final float[] xyz;
  final float[] normals;
  final int[] corners;

  private SurfaceShape(float[] xyz, int[] corners) {
    this.xyz = xyz;
    this.corners = corners;
    this.normals = normals(xyz, corners);
  }

  /** The shape of a mesh. */
  public static SurfaceShape of(TriangleMesh mesh) {
    double[] from = mesh.coordinates();
    float[] xyz = new float[from.length];
    for (int i = 0; i < xyz.length; i++) {
      xyz[i] = (float) from[i];
    }
    return new SurfaceShape(xyz, mesh.triangles());
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
