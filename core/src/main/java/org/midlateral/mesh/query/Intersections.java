package org.midlateral.mesh.query;

import java.util.Arrays;

/**
 * One walk down two trees, or twice down one, to the pairs of triangles that meet. The walk ends at
 * nodes over eight leaves, whose boxes lie side by side in memory and are tried all against all.
 */
final class Intersections {
  private final BoxTree a;
  private final BoxTree b;
  private final int most;
  private final boolean within;
  private final boolean[] stars;

  /** By node, the sheet that all of its triangles lie in, or -1; empty between two meshes. */
  private final int[] sheets;

  private final TriangleIntersection pair = new TriangleIntersection();
  private final int[] reaching = new int[MedianSplit.GROUP];
  private int[] waiting = new int[256];
  private int depth;
  private int[] found = new int[16];
  private int count;

  private Intersections(BoxTree a, BoxTree b, int most, boolean[] stars, int[] sheets) {
    this.a = a;
    this.b = b;
    this.most = most;
    this.within = a == b;
    this.stars = stars;
    this.sheets = sheets;
  }

  /** Between two meshes. */
  static Intersections between(BoxTree a, BoxTree b, int most) {
    return new Intersections(a, b, most, new boolean[0], new int[0]);
  }

  /**
   * Within one mesh.
   *
   * @param twin of each side where the mesh is known to be closed and oriented, which saves most of
   *     the work; else empty
   */
  static Intersections within(BoxTree tree, int most, int[] twin) {
    int[] sheets = new int[tree.corners.length / 3];
    boolean[] stars = new boolean[tree.xyz.length / 3];
    if (twin.length > 0) {
      byte[] axes = VertexStars.axes(tree.xyz, tree.corners);
      sheets = HeightFieldPatches.of(tree.xyz, tree.corners, twin, axes);
      stars = VertexStars.of(tree.xyz, tree.corners, axes, sheets);
    } else {
      Arrays.fill(sheets, -1);
    }
    return new Intersections(tree, tree, most, stars, byNode(tree, sheets));
  }

  private static int[] byNode(BoxTree tree, int[] sheets) {
    int[] byNode = new int[2 * tree.leaves - 1];
    for (int node = byNode.length - 1; node >= 0; node--) {
      if (node >= tree.leaves - 1) {
        int t = tree.triangleAt(node);
        byNode[node] = t < 0 ? -1 : sheets[t];
      } else {
        int left = byNode[2 * node + 1];
        byNode[node] = left == byNode[2 * node + 2] ? left : -1;
      }
    }
    return byNode;
  }

  /** Whether two nodes, or a node with itself, lie in one sheet, which does not meet itself. */
  private boolean inOneSheet(int m, int n) {
    return within && sheets[m] >= 0 && sheets[m] == sheets[n];
  }

  /** Triangle numbers, k by 2, row-major. */
  int[] pairs() {
    push(a.root, b.root);
    while (depth > 0 && count < 2 * most) {
      int n = waiting[--depth];
      int m = waiting[--depth];
      if (inOneSheet(m, n)) {
        continue;
      }
      if (within && m == n) {
        descendWithin(m);
      } else if (overlap(m, n)) {
        descend(m, n);
      }
    }
    return Arrays.copyOf(found, count);
  }

  private void descendWithin(int m) {
    if (m >= a.firstGroup()) {
      compareWithin(m);
    } else {
      push(2 * m + 1, 2 * m + 1);
      push(2 * m + 2, 2 * m + 2);
      push(2 * m + 1, 2 * m + 2);
    }
  }

  private void descend(int m, int n) {
    boolean groupA = m >= a.firstGroup();
    boolean groupB = n >= b.firstGroup();
    if (groupA && groupB) {
      compare(m, n);
    } else if (groupA) {
      push(m, 2 * n + 1);
      push(m, 2 * n + 2);
    } else if (groupB) {
      push(2 * m + 1, n);
      push(2 * m + 2, n);
    } else {
      push(2 * m + 1, 2 * n + 1);
      push(2 * m + 1, 2 * n + 2);
      push(2 * m + 2, 2 * n + 1);
      push(2 * m + 2, 2 * n + 2);
    }
  }

  /** Tries only those leaves of either group that reach into the other's box. */
  private void compare(int m, int n) {
    int count = 0;
    int endB = b.leavesEnd(n);
    for (int j = b.leavesBegin(n); j < endB; j++) {
      if (overlap(m, j)) {
        reaching[count++] = j;
      }
    }
    int endA = a.leavesEnd(m);
    for (int i = a.leavesBegin(m); count > 0 && i < endA; i++) {
      if (overlap(i, n)) {
        for (int k = 0; k < count; k++) {
          if (!inOneSheet(i, reaching[k]) && overlap(i, reaching[k])) {
            judge(a.triangleAt(i), b.triangleAt(reaching[k]));
          }
        }
      }
    }
  }

  private void compareWithin(int m) {
    int end = a.leavesEnd(m);
    for (int i = a.leavesBegin(m); i < end; i++) {
      for (int j = i + 1; j < end; j++) {
        if (!inOneSheet(i, j) && overlap(i, j)) {
          judge(a.triangleAt(i), a.triangleAt(j));
        }
      }
    }
  }

  private void push(int m, int n) {
    if (depth + 2 > waiting.length) {
      waiting = Arrays.copyOf(waiting, 2 * waiting.length);
    }
    waiting[depth++] = m;
    waiting[depth++] = n;
  }

  private boolean overlap(int m, int n) {
    double[] p = a.boxes;
    double[] q = b.boxes;
    int i = 6 * m;
    int j = 6 * n;
    return p[i] <= q[j + 3]
        && q[j] <= p[i + 3]
        && p[i + 1] <= q[j + 4]
        && q[j + 1] <= p[i + 4]
        && p[i + 2] <= q[j + 5]
        && q[j + 2] <= p[i + 5];
  }

  private void judge(int s, int t) {
    if (count < 2 * most && (within ? meetWithin(s, t) : meet(s, 0, t, 0))) {
      if (count == found.length) {
        found = Arrays.copyOf(found, 2 * count);
      }
      found[count++] = s;
      found[count++] = t;
    }
  }

  /** Two triangles of one mesh, told apart by how many vertices they share. */
  private boolean meetWithin(int s, int t) {
    int shared = 0;
    int first = 0;
    int firstOther = 0;
    int sum = 0;
    int sumOther = 0;
    for (int i = 0; i < 3; i++) {
      for (int j = 0; j < 3; j++) {
        if (a.corners[3 * s + i] == a.corners[3 * t + j]) {
          if (stars[a.corners[3 * s + i]]) {
            return false;
          }
          shared++;
          first = i;
          firstOther = j;
          sum += i;
          sumOther += j;
        }
      }
    }
    return switch (shared) {
      case 0 -> meet(s, 0, t, 0);
      case 1 -> {
        load(s, first, t, firstOther);
        yield pair.meetBesideVertex();
      }
      case 2 -> {
        // The corner not shared goes last: the three numbers 0, 1, 2 add up to 3.
        load(s, 4 - sum, t, 4 - sumOther);
        yield pair.meetBesideEdge();
      }
      default -> true;
    };
  }

  private boolean meet(int s, int first, int t, int firstOther) {
    load(s, first, t, firstOther);
    return pair.meet();
  }

  /** Loads both triangles, each beginning with the named corner (taken modulo 3). */
  private void load(int s, int first, int t, int firstOther) {
    for (int i = 0; i < 3; i++) {
      pair.set(i, a.xyz, a.corners[3 * s + (first + i) % 3]);
      pair.set(3 + i, b.xyz, b.corners[3 * t + (firstOther + i) % 3]);
    }
  }
}
