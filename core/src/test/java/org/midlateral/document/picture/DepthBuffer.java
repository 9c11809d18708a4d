package org.midlateral.document.picture;

import java.util.Arrays;
import org.midlateral.mesh.TriangleMesh;

/**
 * What the eye sees of some meshes: for every pixel the depth of the nearest surface, its direction
 * and whose it is. Triangles are filled by their edge functions; directions are blended over a
 * triangle, from corners that are smooth except where neighbours meet at a crease.
 */
final class DepthBuffer {
  /** Cosine of the angle up to which two triangles count as one smooth surface (40 degrees). */
  private static final double CREASE = Math.cos(Math.toRadians(40));

  final int width;
  final int height;

  /** Depth toward the eye (pixels); minus infinity where nothing is. */
  final float[] depth;

  /** Unit normals in the picture's own axes, three a pixel, turned toward the eye. */
  final float[] normals;

  /** Number of the figure seen, -1 for none. */
  final byte[] owner;

  DepthBuffer(int width, int height) {
    this.width = width;
    this.height = height;
    this.depth = new float[width * height];
    this.normals = new float[3 * width * height];
    this.owner = new byte[width * height];
    Arrays.fill(depth, Float.NEGATIVE_INFINITY);
    Arrays.fill(owner, (byte) -1);
  }

  /** Draws a mesh whose vertices have been brought to pixels: x right, y down, z to the eye. */
  void draw(TriangleMesh mesh, double[] pixels, int figure) {
    int[] corners = mesh.triangles();
    float[] smooth = cornerNormals(pixels, corners);
    for (int t = 0; t < corners.length; t += 3) {
      fill(pixels, 3 * corners[t], 3 * corners[t + 1], 3 * corners[t + 2], smooth, 3 * t, figure);
    }
  }

  private void fill(double[] p, int a, int b, int c, float[] smooth, int n, int figure) {
    double area = (p[b] - p[a]) * (p[c + 1] - p[a + 1]) - (p[b + 1] - p[a + 1]) * (p[c] - p[a]);
    if (area == 0) {
      return;
    }
    int x0 = (int) Math.max(0, Math.ceil(Math.min(p[a], Math.min(p[b], p[c])) - 0.5));
    int x1 = (int) Math.min(width - 1, Math.max(p[a], Math.max(p[b], p[c])) - 0.5);
    int y0 = (int) Math.max(0, Math.ceil(Math.min(p[a + 1], Math.min(p[b + 1], p[c + 1])) - 0.5));
    int y1 = (int) Math.min(height - 1, Math.max(p[a + 1], Math.max(p[b + 1], p[c + 1])) - 0.5);
    double inverse = 1 / area;
    for (int y = y0; y <= y1; y++) {
      for (int x = x0; x <= x1; x++) {
        double px = x + 0.5;
        double py = y + 0.5;
        double u =
            inverse * ((p[c] - p[b]) * (py - p[b + 1]) - (p[c + 1] - p[b + 1]) * (px - p[b]));
        double v =
            inverse * ((p[a] - p[c]) * (py - p[c + 1]) - (p[a + 1] - p[c + 1]) * (px - p[c]));
        double w = 1 - u - v;
        if (u >= 0 && v >= 0 && w >= 0) {
          float z = (float) (u * p[a + 2] + v * p[b + 2] + w * p[c + 2]);
          int pixel = y * width + x;
          if (z > depth[pixel]) {
            depth[pixel] = z;
            owner[pixel] = (byte) figure;
            blend(pixel, u, v, w, smooth, n);
          }
        }
      }
    }
  }

  private void blend(int pixel, double u, double v, double w, float[] smooth, int n) {
    double x = u * smooth[n] + v * smooth[n + 3] + w * smooth[n + 6];
    double y = u * smooth[n + 1] + v * smooth[n + 4] + w * smooth[n + 7];
    double z = u * smooth[n + 2] + v * smooth[n + 5] + w * smooth[n + 8];
    double length = Math.sqrt(x * x + y * y + z * z);
    double scale = length > 0 ? (z < 0 ? -1 / length : 1 / length) : 0;
    normals[3 * pixel] = (float) (x * scale);
    normals[3 * pixel + 1] = (float) (y * scale);
    normals[3 * pixel + 2] = (float) (z * scale);
  }

  /** A normal for each corner of each triangle, nine numbers a triangle. */
  private static float[] cornerNormals(double[] p, int[] corners) {
    int triangles = corners.length / 3;
    float[] flat = new float[3 * triangles];
    float[] vertex = new float[p.length];
    for (int t = 0; t < triangles; t++) {
      flatNormal(p, corners, t, flat);
      for (int i = 0; i < 3; i++) {
        for (int k = 0; k < 3; k++) {
          vertex[3 * corners[3 * t + i] + k] += flat[3 * t + k];
        }
      }
    }
    float[] out = new float[9 * triangles];
    for (int t = 0; t < triangles; t++) {
      for (int i = 0; i < 3; i++) {
        int v = 3 * corners[3 * t + i];
        boolean smooth = alike(vertex, v, flat, 3 * t);
        System.arraycopy(smooth ? vertex : flat, smooth ? v : 3 * t, out, 9 * t + 3 * i, 3);
        scaleToUnit(out, 9 * t + 3 * i);
      }
    }
    return out;
  }

  /** The cross product of two sides: its length, twice the area, weighs it among its neighbours. */
  private static void flatNormal(double[] p, int[] corners, int t, float[] flat) {
    int a = 3 * corners[3 * t];
    int b = 3 * corners[3 * t + 1];
    int c = 3 * corners[3 * t + 2];
    for (int k = 0; k < 3; k++) {
      int l = (k + 1) % 3;
      int m = (k + 2) % 3;
      flat[3 * t + k] =
          (float)
              ((p[b + l] - p[a + l]) * (p[c + m] - p[a + m])
                  - (p[b + m] - p[a + m]) * (p[c + l] - p[a + l]));
    }
  }

  private static boolean alike(float[] u, int i, float[] v, int j) {
    double dot = u[i] * v[j] + u[i + 1] * v[j + 1] + u[i + 2] * v[j + 2];
    double uu = u[i] * u[i] + u[i + 1] * u[i + 1] + u[i + 2] * u[i + 2];
    double vv = v[j] * v[j] + v[j + 1] * v[j + 1] + v[j + 2] * v[j + 2];
    return dot > CREASE * Math.sqrt(uu * vv);
  }

  private static void scaleToUnit(float[] n, int i) {
    double length = Math.sqrt(n[i] * n[i] + n[i + 1] * n[i + 1] + n[i + 2] * n[i + 2]);
    for (int k = i; k < i + 3; k++) {
      n[k] = length > 0 ? (float) (n[k] / length) : 0;
    }
  }
}
