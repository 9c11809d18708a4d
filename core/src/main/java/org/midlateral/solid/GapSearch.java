package org.midlateral.solid;

import java.util.Arrays;
import org.apache.commons.geometry.euclidean.threed.Vector3D;

/**
 * One walk down two trees to the pair of triangles with the smallest gap.
 *
 * <p>Made for two surfaces that run side by side at nearly one distance, where boxes exclude
 * little: a sample of vertices gives a first bound, and a pair of triangles is measured only if
 * neither of their two planes already separates them by more than the best gap so far.
 */
final class GapSearch {
  /** Places of the edges' ends in a pair, first triangle then second. */
  private static final int[] EDGE_FROM = {0, 1, 2};

  private static final int[] EDGE_TO = {1, 2, 0};
  private static final int SAMPLE = 64;

  private final MeshTree a;
  private final MeshTree b;
  private final TrianglePair pair = new TrianglePair();
  private final TriangleDistance distance = new TriangleDistance();
  private int[] waiting = new int[256];
  private int depth;

  private double best = Double.POSITIVE_INFINITY;
  private final double[] point = new double[3];
  private final double[] otherPoint = new double[3];
  private int triangle = -1;
  private int otherTriangle = -1;

  GapSearch(MeshTree a, MeshTree b) {
    this.a = a;
    this.b = b;
  }

  Gap find() {
    if (a.order.length == 0 || b.order.length == 0) {
      throw new IllegalArgumentException("a gap needs two surfaces with triangles");
    }
    seed(a, b, false);
    seed(b, a, true);
    push(0, 0);
    while (depth > 0) {
      int n = waiting[--depth];
      int m = waiting[--depth];
      if (boxSquare(m, n) < best) {
        descend(m, n);
      }
    }
    return new Gap(
        Math.sqrt(best), triangle, otherTriangle, Vector3D.of(point), Vector3D.of(otherPoint));
  }

  /** Bounds the gap by the first corners of a sample of one mesh's triangles. */
  private void seed(MeshTree from, MeshTree to, boolean swapped) {
    NearestPoint search = new NearestPoint(to);
    int step = Math.max(1, from.order.length / SAMPLE);
    for (int i = 0; i < from.order.length; i += step) {
      int t = from.order[i];
      int v = 3 * from.corners[3 * t];
      double x = from.xyz[v];
      double y = from.xyz[v + 1];
      double z = from.xyz[v + 2];
      int found = search.find(x, y, z, best);
      if (found >= 0) {
        judge(swapped ? found : t, swapped ? t : found);
      }
    }
  }

  private void descend(int m, int n) {
    boolean leafA = m >= a.leaves - 1;
    boolean leafB = n >= b.leaves - 1;
    if (leafA && leafB) {
      judge(a.order[m - a.leaves + 1], b.order[n - b.leaves + 1]);
      return;
    }
    boolean splitA = leafB || !leafA && m <= n;
    int left = 2 * (splitA ? m : n) + 1;
    double toLeft = splitA ? boxSquare(left, n) : boxSquare(m, left);
    double toRight = splitA ? boxSquare(left + 1, n) : boxSquare(m, left + 1);
    int near = toLeft <= toRight ? left : left + 1;
    int far = left + left + 1 - near;
    push(splitA ? far : m, splitA ? n : far);
    push(splitA ? near : m, splitA ? n : near);
  }

  private void push(int m, int n) {
    if (depth + 2 > waiting.length) {
      waiting = Arrays.copyOf(waiting, 2 * waiting.length);
    }
    waiting[depth++] = m;
    waiting[depth++] = n;
  }

  private double boxSquare(int m, int n) {
    double[] p = a.boxes;
    double[] q = b.boxes;
    int i = 6 * m;
    int j = 6 * n;
    double dx = Math.max(0, Math.max(p[i] - q[j + 3], q[j] - p[i + 3]));
    double dy = Math.max(0, Math.max(p[i + 1] - q[j + 4], q[j + 1] - p[i + 4]));
    double dz = Math.max(0, Math.max(p[i + 2] - q[j + 5], q[j + 2] - p[i + 5]));
    return dx * dx + dy * dy + dz * dz;
  }

  private void judge(int s, int t) {
    for (int i = 0; i < 3; i++) {
      pair.set(i, a.xyz, a.corners[3 * s + i]);
      pair.set(3 + i, b.xyz, b.corners[3 * t + i]);
    }
    double apart = Math.max(separation(0, 3), separation(3, 0));
    if (apart >= best) {
      return;
    }
    boolean meet = apart == 0 && pair.meet();
    double before = best;
    if (meet) {
      best = Double.POSITIVE_INFINITY;
      pierce(0, 3);
      pierce(3, 0);
    }
    corners(3, 0);
    corners(0, 3);
    edges();
    if (best < before) {
      triangle = s;
      otherTriangle = t;
    }
    if (meet) {
      best = 0;
      triangle = s;
      otherTriangle = t;
    }
  }

  /** Squared distance by which the plane of the triangle at one place clears the other triangle. */
  private double separation(int plane, int other) {
    double[] p = pair.p;
    int i = 3 * plane;
    double ux = p[i + 3] - p[i];
    double uy = p[i + 4] - p[i + 1];
    double uz = p[i + 5] - p[i + 2];
    double vx = p[i + 6] - p[i];
    double vy = p[i + 7] - p[i + 1];
    double vz = p[i + 8] - p[i + 2];
    double nx = uy * vz - uz * vy;
    double ny = uz * vx - ux * vz;
    double nz = ux * vy - uy * vx;
    double base = nx * p[i] + ny * p[i + 1] + nz * p[i + 2];
    int j = 3 * other;
    double h0 = nx * p[j] + ny * p[j + 1] + nz * p[j + 2] - base;
    double h1 = nx * p[j + 3] + ny * p[j + 4] + nz * p[j + 5] - base;
    double h2 = nx * p[j + 6] + ny * p[j + 7] + nz * p[j + 8] - base;
    double low = Math.min(h0, Math.min(h1, h2));
    double high = Math.max(h0, Math.max(h1, h2));
    double clear = Math.max(low, -high);
    return clear > 0 ? clear * clear / (nx * nx + ny * ny + nz * nz) : 0;
  }

  /** Corners of the triangle at one place against the face of the other. */
  private void corners(int from, int to) {
    for (int i = 3 * from; i < 3 * from + 9; i += 3) {
      double[] p = pair.p;
      double d = distance.square(p[i], p[i + 1], p[i + 2], p, 3 * to, 3 * to + 3, 3 * to + 6);
      if (d < best) {
        best = d;
        System.arraycopy(p, i, from == 0 ? point : otherPoint, 0, 3);
        System.arraycopy(distance.on, 0, from == 0 ? otherPoint : point, 0, 3);
      }
    }
  }

  private void edges() {
    for (int i = 0; i < 3; i++) {
      for (int j = 0; j < 3; j++) {
        double d =
            distance.square(
                pair.p, 3 * EDGE_FROM[i], 3 * EDGE_TO[i], 9 + 3 * EDGE_FROM[j], 9 + 3 * EDGE_TO[j]);
        if (d < best) {
          best = d;
          System.arraycopy(distance.on, 0, point, 0, 3);
          System.arraycopy(distance.other, 0, otherPoint, 0, 3);
        }
      }
    }
  }

  /** Where edges of the triangle at one place go through the plane of the other. */
  private void pierce(int from, int to) {
    double[] p = pair.p;
    for (int k = 0; k < 3; k++) {
      int m = 3 * (from + EDGE_FROM[k]);
      int n = 3 * (from + EDGE_TO[k]);
      double hm = height(m, 3 * to);
      double hn = height(n, 3 * to);
      if (hm * hn >= 0) {
        continue;
      }
      double r = hm / (hm - hn);
      double x = p[m] + r * (p[n] - p[m]);
      double y = p[m + 1] + r * (p[n + 1] - p[m + 1]);
      double z = p[m + 2] + r * (p[n + 2] - p[m + 2]);
      double d = distance.square(x, y, z, p, 3 * to, 3 * to + 3, 3 * to + 6);
      if (d < best) {
        best = d;
        System.arraycopy(distance.on, 0, point, 0, 3);
        System.arraycopy(distance.on, 0, otherPoint, 0, 3);
      }
    }
  }

  /** Height (times twice the area) of a point over the plane of a triangle, both by offset. */
  private double height(int m, int i) {
    double[] p = pair.p;
    Vector3D a0 = Vector3D.of(p[i], p[i + 1], p[i + 2]);
    Vector3D u = Vector3D.of(p[i + 3], p[i + 4], p[i + 5]).subtract(a0);
    Vector3D v = Vector3D.of(p[i + 6], p[i + 7], p[i + 8]).subtract(a0);
    return u.cross(v).dot(Vector3D.of(p[m], p[m + 1], p[m + 2]).subtract(a0));
  }
}
