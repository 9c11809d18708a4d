package org.midlateral.solid;

import java.util.Arrays;
import org.apache.commons.geometry.euclidean.threed.Vector3D;

/**
 * One walk down two trees to the pair of triangles with the smallest gap.
 *
 * <p>Made for two surfaces that run side by side at nearly one distance, where boxes exclude
 * little: a sample of vertices gives a first bound, and a pair of triangles is measured only where
 * neither of their two planes, nor the line through their centres, separates them by the best gap
 * so far.
 */
final class GapSearch {
  private static final int SAMPLE = 64;

  /** Pairs nearer than the best by less than this share are not worth measuring. */
  private static final double SLACK = 1e-12;

  private final MeshTree a;
  private final MeshTree b;
  private final double[] planesA;
  private final double[] planesB;
  private final TriangleGap measure = new TriangleGap();
  private int[] waiting = new int[256];
  private int depth;

  /** Squared gap at which a pair of triangles, or of boxes, is of no more interest. */
  private double enough = Double.POSITIVE_INFINITY;

  private int triangle = -1;
  private int otherTriangle = -1;

  GapSearch(MeshTree a, MeshTree b) {
    if (a.order.length == 0 || b.order.length == 0) {
      throw new IllegalArgumentException("a gap needs two surfaces with triangles");
    }
    this.a = a;
    this.b = b;
    this.planesA = planes(a);
    this.planesB = planes(b);
  }

  Gap find() {
    seed(a, b, false);
    seed(b, a, true);
    visit(0, 0);
    while (depth > 0) {
      int n = waiting[--depth];
      int m = waiting[--depth];
      if (boxSquare(m, n) < enough) {
        descend(m, n);
      }
    }
    return new Gap(
        Math.sqrt(measure.square),
        triangle,
        otherTriangle,
        Vector3D.of(measure.point),
        Vector3D.of(measure.otherPoint));
  }

  /** Unit normal and height of each triangle's plane, n by 4; all zero for one without area. */
  private static double[] planes(MeshTree tree) {
    double[] p = tree.xyz;
    double[] planes = new double[4 * tree.order.length];
    for (int t = 0; t < tree.order.length; t++) {
      int i = 3 * tree.corners[3 * t];
      int j = 3 * tree.corners[3 * t + 1];
      int k = 3 * tree.corners[3 * t + 2];
      double ux = p[j] - p[i];
      double uy = p[j + 1] - p[i + 1];
      double uz = p[j + 2] - p[i + 2];
      double vx = p[k] - p[i];
      double vy = p[k + 1] - p[i + 1];
      double vz = p[k + 2] - p[i + 2];
      double nx = uy * vz - uz * vy;
      double ny = uz * vx - ux * vz;
      double nz = ux * vy - uy * vx;
      double length = Math.sqrt(nx * nx + ny * ny + nz * nz);
      double scale = length > 0 ? 1 / length : 0;
      planes[4 * t] = nx * scale;
      planes[4 * t + 1] = ny * scale;
      planes[4 * t + 2] = nz * scale;
      planes[4 * t + 3] = scale * (nx * p[i] + ny * p[i + 1] + nz * p[i + 2]);
    }
    return planes;
  }

  /** Bounds the gap by the first corners of a sample of one mesh's triangles. */
  private void seed(MeshTree from, MeshTree to, boolean swapped) {
    NearestPoint search = new NearestPoint(to);
    int step = Math.max(1, from.order.length / SAMPLE);
    for (int i = 0; i < from.order.length; i += step) {
      int t = from.order[i];
      int v = 3 * from.corners[3 * t];
      int found = search.find(from.xyz[v], from.xyz[v + 1], from.xyz[v + 2], enough);
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
    } else if (leafA) {
      visit(m, 2 * n + 1);
      visit(m, 2 * n + 2);
    } else if (leafB) {
      visit(2 * m + 1, n);
      visit(2 * m + 2, n);
    } else {
      visit(2 * m + 1, 2 * n + 1);
      visit(2 * m + 1, 2 * n + 2);
      visit(2 * m + 2, 2 * n + 1);
      visit(2 * m + 2, 2 * n + 2);
    }
  }

  private void visit(int m, int n) {
    if (boxSquare(m, n) >= enough) {
      return;
    }
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
    double apart = separation(planesA, s, b, t, 3);
    if (apart * apart >= enough) {
      return;
    }
    double apartToo = separation(planesB, t, a, s, 0);
    if (apartToo * apartToo >= enough) {
      return;
    }
    for (int i = 0; i < 3; i++) {
      measure.pair.set(i, a.xyz, a.corners[3 * s + i]);
      measure.pair.set(3 + i, b.xyz, b.corners[3 * t + i]);
    }
    if (measure.closer(apart == 0 && apartToo == 0, enough)) {
      enough = measure.square * (1 - SLACK);
      triangle = s;
      otherTriangle = t;
    }
  }

  /**
   * How far the plane of one triangle clears another triangle; 0 if it cuts it. The heights of the
   * other one's corners are left for the measuring, from the given place on.
   */
  private double separation(double[] planes, int plane, MeshTree tree, int t, int place) {
    double x = planes[4 * plane];
    double y = planes[4 * plane + 1];
    double z = planes[4 * plane + 2];
    double base = planes[4 * plane + 3];
    double[] p = tree.xyz;
    int i = 3 * tree.corners[3 * t];
    int j = 3 * tree.corners[3 * t + 1];
    int k = 3 * tree.corners[3 * t + 2];
    double h0 = x * p[i] + y * p[i + 1] + z * p[i + 2] - base;
    double h1 = x * p[j] + y * p[j + 1] + z * p[j + 2] - base;
    double h2 = x * p[k] + y * p[k + 1] + z * p[k + 2] - base;
    double[] height = measure.height;
    height[place] = h0;
    height[place + 1] = h1;
    height[place + 2] = h2;
    double low = Math.min(h0, Math.min(h1, h2));
    double high = Math.max(h0, Math.max(h1, h2));
    return Math.max(0, Math.max(low, -high));
  }
}
