package org.midlateral.mesh.query;

import java.util.Arrays;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;

/**
 * One walk down two trees to the pair of triangles with the smallest gap.
 *
 * <p>Made for two surfaces that run side by side at nearly one distance, where boxes exclude
 * little: a sample of vertices gives a first bound where none is given, and a pair of triangles is
 * measured only where it is not shown to be farther apart by the balls around the two, by the plane
 * of either with the room beside it, or by the line through their centres.
 */
final class GapSearch {
  private static final int SAMPLE = 64;

  /** Pairs nearer than the best by less than this share are not worth measuring. */
  private static final double SLACK = 1e-12;

  private final BoxTree a;
  private final BoxTree b;
  private final Facets facetsA;
  private final Facets facetsB;
  private final LeafClusters clustersA;
  private final LeafClusters clustersB;
  private final TriangleTriangleDistance measure = new TriangleTriangleDistance();
  private int[] waiting = new int[256];
  private int depth;

  /** Squared gap at which a pair of triangles, or of boxes, is of no more interest. */
  private double enough;

  /** Its root. */
  private double reach;

  private int triangle = -1;
  private int otherTriangle = -1;

  /**
   * A search.
   *
   * @param below only a gap smaller than this is of interest (mm)
   */
  GapSearch(BoxTree a, LeafClusters clustersA, BoxTree b, LeafClusters clustersB, double below) {
    if (a.triangleCount() == 0 || b.triangleCount() == 0) {
      throw new IllegalArgumentException("a gap needs two surfaces with triangles");
    }
    this.a = a;
    this.b = b;
    this.reach = below;
    this.enough = below * below;
    this.measure.square = enough;
    this.facetsA = clustersA.facets();
    this.facetsB = clustersB.facets();
    this.clustersA = clustersA;
    this.clustersB = clustersB;
  }

  /** The smallest gap, where there is one of interest. */
  Optional<Gap> find() {
    if (enough == Double.POSITIVE_INFINITY) {
      seed(a, b, false);
      seed(b, a, true);
    }
    visit(a.root, b.root);
    while (depth > 0) {
      int n = waiting[--depth];
      int m = waiting[--depth];
      if (boxSquare(m, n) < enough) {
        descend(m, n);
      }
    }
    if (triangle < 0) {
      return Optional.empty();
    }
    return Optional.of(
        new Gap(
            Math.sqrt(measure.square),
            triangle,
            otherTriangle,
            Vector3D.of(measure.point),
            Vector3D.of(measure.otherPoint)));
  }

  /** Bounds the gap by the first corners of a sample of one mesh's triangles. */
  private void seed(BoxTree from, BoxTree to, boolean swapped) {
    ClosestPointSearch search = new ClosestPointSearch(to);
    int end = from.endOfLeaves();
    int step = Math.max(1, (end - from.firstLeaf()) / SAMPLE);
    for (int i = from.firstLeaf(); i < end; i += step) {
      int t = from.triangleAt(i);
      if (t < 0) {
        continue;
      }
      int v = 3 * from.corners[3 * t];
      int found = search.find(from.xyz[v], from.xyz[v + 1], from.xyz[v + 2], enough);
      if (found >= 0) {
        judge(swapped ? found : t, swapped ? t : found);
      }
    }
  }

  private void descend(int m, int n) {
    boolean groupA = m >= a.firstGroup();
    boolean groupB = n >= b.firstGroup();
    if (groupA && groupB) {
      compare(m, n);
    } else if (groupA) {
      visit(m, 2 * n + 1);
      visit(m, 2 * n + 2);
    } else if (groupB) {
      visit(2 * m + 1, n);
      visit(2 * m + 2, n);
    } else {
      visit(2 * m + 1, 2 * n + 1);
      visit(2 * m + 1, 2 * n + 2);
      visit(2 * m + 2, 2 * n + 1);
      visit(2 * m + 2, 2 * n + 2);
    }
  }

  private void compare(int m, int n) {
    if (!clustersA.mayReach(m, clustersB, n, reach)) {
      return;
    }
    int endB = b.leavesEnd(n);
    for (int j = b.leavesBegin(n); j < endB; j++) {
      int t = b.triangleAt(j);
      if (clustersA.mayReach(m, facetsB, t, reach)) {
        judgeAll(m, t);
      }
    }
  }

  private void judgeAll(int m, int t) {
    int endA = a.leavesEnd(m);
    for (int i = a.leavesBegin(m); i < endA; i++) {
      int s = a.triangleAt(i);
      if (facetsA.mayReach(s, facetsB, t, reach)) {
        judge(s, t);
      }
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
    double dx = apart(p[i], p[i + 3], q[j], q[j + 3]);
    double dy = apart(p[i + 1], p[i + 4], q[j + 1], q[j + 4]);
    double dz = apart(p[i + 2], p[i + 5], q[j + 2], q[j + 5]);
    return dx * dx + dy * dy + dz * dz;
  }

  /** Gap between two intervals; plain comparisons, which cost less than the library's max. */
  private static double apart(double low, double high, double otherLow, double otherHigh) {
    if (low > otherHigh) {
      return low - otherHigh;
    }
    return otherLow > high ? otherLow - high : 0;
  }

  private void judge(int s, int t) {
    double apart = facetsB.clear(t, facetsA, s, measure.height, 0);
    if (apart >= enough) {
      return;
    }
    double apartToo = facetsA.clear(s, facetsB, t, measure.height, 3);
    if (apartToo >= enough) {
      return;
    }
    for (int i = 0; i < 3; i++) {
      measure.pair.set(i, a.xyz, a.corners[3 * s + i]);
      measure.pair.set(3 + i, b.xyz, b.corners[3 * t + i]);
    }
    if (measure.closer(apart == 0 && apartToo == 0, enough)) {
      enough = measure.square * (1 - SLACK);
      reach = Math.sqrt(enough);
      triangle = s;
      otherTriangle = t;
    }
  }
}
