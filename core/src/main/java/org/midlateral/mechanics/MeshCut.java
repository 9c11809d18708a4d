package org.midlateral.mechanics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.midlateral.solid.TriangleMesh;

/**
 * Cuts a closed triangle mesh with planes into closed loops.
 *
 * <p>A vertex on the plane counts as lying just distal of it, everywhere alike, as if the plane
 * were moved by less than any number. So every edge either crosses or does not, each crossed edge
 * belongs to two crossed triangles, and the loops close whatever the vertices do; a loop may have
 * points that coincide. Each crossing is computed once per edge, from its lower-numbered end.
 *
 * <p>Immutable; any number of threads may ask it.
 */
public final class MeshCut {
  /** Triangles of one block; neighbours in the mesh's order are near in space. */
  private static final int BLOCK = 64;

  private final double[] xyz;
  private final int[] corners;

  /** A ball round each block of triangles: centre and radius, 4 numbers each. */
  private final double[] balls;

  private MeshCut(double[] xyz, int[] corners) {
    this.xyz = xyz;
    this.corners = corners;
    int blocks = (corners.length / 3 + BLOCK - 1) / BLOCK;
    this.balls = new double[4 * blocks];
    for (int b = 0; b < blocks; b++) {
      ball(b);
    }
  }

  /**
   * Prepares a mesh for cutting.
   *
   * @param mesh closed and oriented
   */
  public static MeshCut of(TriangleMesh mesh) {
    return new MeshCut(mesh.coordinates(), mesh.triangles());
  }

  private void ball(int block) {
    int from = 3 * BLOCK * block;
    int to = Math.min(corners.length, from + 3 * BLOCK);
    double[] low = new double[3];
    double[] high = new double[3];
    Arrays.fill(low, Double.POSITIVE_INFINITY);
    Arrays.fill(high, Double.NEGATIVE_INFINITY);
    for (int c = from; c < to; c++) {
      for (int k = 0; k < 3; k++) {
        double x = xyz[3 * corners[c] + k];
        low[k] = Math.min(low[k], x);
        high[k] = Math.max(high[k], x);
      }
    }
    double square = 0;
    for (int k = 0; k < 3; k++) {
      balls[4 * block + k] = (low[k] + high[k]) / 2;
      square += (high[k] - low[k]) * (high[k] - low[k]) / 4;
    }
    balls[4 * block + 3] = Math.sqrt(square) * (1 + 1e-12);
  }

  /** The loops in which a plane cuts the surface; empty where it misses. */
  public List<Loop> at(SectionPlane plane) {
    return new Cut(plane).loops();
  }

  /** One cut: the crossings by edge, and for each the crossing that follows on the loop. */
  private final class Cut {
    private final double[] normal;
    private final double[] up;
    private final double offset;
    private final double rise;
    private final Map<Long, Integer> byEdge = new HashMap<>();
    private double[] points = new double[256];
    private int[] next = new int[128];
    private int count;

    Cut(SectionPlane plane) {
      Vector3D dorsal = plane.dorsal();
      this.normal = plane.distal().toArray();
      this.up = dorsal.toArray();
      this.offset = plane.origin().dot(plane.distal());
      this.rise = plane.origin().dot(dorsal);
    }

    List<Loop> loops() {
      for (int b = 0; 4 * b < balls.length; b++) {
        double height = dot(normal, balls, 4 * b) - offset;
        if (Math.abs(height) <= balls[4 * b + 3]) {
          int to = Math.min(corners.length, 3 * BLOCK * (b + 1));
          for (int t = 3 * BLOCK * b; t < to; t += 3) {
            triangle(corners[t], corners[t + 1], corners[t + 2]);
          }
        }
      }
      return chain();
    }

    private boolean distal(int vertex) {
      return dot(normal, xyz, 3 * vertex) >= offset;
    }

    /**
     * A crossed triangle has one edge that goes from distal to proximal, where the loop enters, and
     * one that comes back, where it leaves: material is then on the left.
     */
    private void triangle(int a, int b, int c) {
      boolean da = distal(a);
      boolean db = distal(b);
      boolean dc = distal(c);
      if (da == db && db == dc) {
        return;
      }
      int enter = da && !db ? crossing(a, b) : db && !dc ? crossing(b, c) : crossing(c, a);
      int leave = !da && db ? crossing(a, b) : !db && dc ? crossing(b, c) : crossing(c, a);
      next[enter] = leave;
    }

    private int crossing(int a, int b) {
      int low = Math.min(a, b);
      int high = Math.max(a, b);
      Integer known = byEdge.putIfAbsent(((long) low << 32) | high, count);
      if (known != null) {
        return known;
      }
      if (count == next.length) {
        next = Arrays.copyOf(next, 2 * count);
        points = Arrays.copyOf(points, 4 * count);
      }
      double from = dot(normal, xyz, 3 * low) - offset;
      double share = from / (from - (dot(normal, xyz, 3 * high) - offset));
      double y0 = xyz[3 * low + 1];
      double n0 = dot(up, xyz, 3 * low) - rise;
      points[2 * count] = y0 + share * (xyz[3 * high + 1] - y0);
      points[2 * count + 1] = n0 + share * (dot(up, xyz, 3 * high) - rise - n0);
      next[count] = -1;
      return count++;
    }

    private List<Loop> chain() {
      List<Loop> loops = new ArrayList<>();
      double[] path = new double[2 * count];
      for (int start = 0; start < count; start++) {
        int used = 0;
        for (int at = start; next[at] >= 0; ) {
          path[used++] = points[2 * at];
          path[used++] = points[2 * at + 1];
          int to = next[at];
          next[at] = -1;
          at = to;
        }
        if (used > 4) {
          loops.add(new Loop(Arrays.copyOf(path, used)));
        }
      }
      return loops;
    }
  }

  private static double dot(double[] v, double[] xyz, int at) {
    return v[0] * xyz[at] + v[1] * xyz[at + 1] + v[2] * xyz[at + 2];
  }
}
