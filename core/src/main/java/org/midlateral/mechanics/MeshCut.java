package org.midlateral.mechanics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.midlateral.mesh.TriangleMesh;

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
  /** Size of a cell (mm). */
  private static final double CELL = 2;

  /** More than rounding can move a vertex against a plane (mm). */
  private static final double ROUNDING = 1e-6;

  private final double[] xyz;

  /** Corners of the triangles, cell by cell. */
  private final int[] corners;

  /** Where in the corners each cell begins, and at last where they end. */
  private final int[] start;

  /**
   * The rectangle in x and z round each cell's triangles: middle and half sides, 4 numbers each.
   */
  private final double[] boxes;

  private MeshCut(double[] xyz, int[] corners) {
    this.xyz = xyz;
    Cells cells = new Cells(xyz, corners);
    this.corners = cells.sorted;
    this.start = cells.start;
    this.boxes = new double[4 * (start.length - 1)];
    for (int cell = 0; cell + 1 < start.length; cell++) {
      box(cell);
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

  /**
   * Triangles sorted by cells of a grid over x and z. Planes across the finger contain y, so that a
   * cell goes right through it.
   */
  private static final class Cells {
    private final int[] sorted;
    private final int[] start;

    Cells(double[] xyz, int[] corners) {
      double[] low = {Double.POSITIVE_INFINITY, 0, Double.POSITIVE_INFINITY};
      double[] high = {Double.NEGATIVE_INFINITY, 0, Double.NEGATIVE_INFINITY};
      for (int i = 0; i < xyz.length; i++) {
        low[i % 3] = Math.min(low[i % 3], xyz[i]);
        high[i % 3] = Math.max(high[i % 3], xyz[i]);
      }
      int across = (int) ((high[2] - low[2]) / CELL) + 1;
      int along = (int) ((high[0] - low[0]) / CELL) + 1;
      int[] cell = new int[corners.length / 3];
      start = new int[Math.max(1, along * across) + 1];
      for (int t = 0; t < cell.length; t++) {
        int corner = 3 * corners[3 * t];
        int column = (int) ((xyz[corner] - low[0]) / CELL);
        cell[t] = column * across + (int) ((xyz[corner + 2] - low[2]) / CELL);
        start[cell[t] + 1] += 3;
      }
      for (int k = 1; k < start.length; k++) {
        start[k] += start[k - 1];
      }
      sorted = new int[corners.length];
      int[] next = start.clone();
      for (int t = 0; t < cell.length; t++) {
        System.arraycopy(corners, 3 * t, sorted, next[cell[t]], 3);
        next[cell[t]] += 3;
      }
    }
  }

  private void box(int cell) {
    for (int k = 0; k < 2; k++) {
      double low = Double.POSITIVE_INFINITY;
      double high = Double.NEGATIVE_INFINITY;
      for (int c = start[cell]; c < start[cell + 1]; c++) {
        double at = xyz[3 * corners[c] + 2 * k];
        low = Math.min(low, at);
        high = Math.max(high, at);
      }
      boxes[4 * cell + k] = (low + high) / 2;
      boxes[4 * cell + 2 + k] = (high - low) / 2;
    }
  }

  /**
   * The loops in which a plane cuts the surface; empty where it misses.
   *
   * @param plane its normal without a y component
   */
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
      for (int cell = 0; cell + 1 < start.length; cell++) {
        if (start[cell] < start[cell + 1] && mayMeet(4 * cell)) {
          for (int t = start[cell]; t < start[cell + 1]; t += 3) {
            triangle(corners[t], corners[t + 1], corners[t + 2]);
          }
        }
      }
      return chain();
    }

    private boolean mayMeet(int box) {
      double height = normal[0] * boxes[box] + normal[2] * boxes[box + 1] - offset;
      double reach = Math.abs(normal[0]) * boxes[box + 2] + Math.abs(normal[2]) * boxes[box + 3];
      return Math.abs(height) <= reach + ROUNDING;
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
      // A number for each edge whose low bits differ, as the table of hashes needs them to.
      Integer known = byEdge.putIfAbsent(xyz.length / 3L * low + high, count);
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
