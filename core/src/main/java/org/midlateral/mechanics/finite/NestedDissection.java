package org.midlateral.mechanics.finite;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * Orders the unknowns: halves the triangles by a plane, again and again; the nodes on a cut wait
 * until both halves are done (A. George, "Nested dissection of a regular finite element mesh", SIAM
 * J. Numer. Anal. 10 (1973) 345-363, with planes in place of a grid). Large patches are cut where
 * the fewest nodes lie, across any axis: a tube is no longer than it is round. Small ones are cut
 * across their longest extent, which is nearly always the same and found in a third of the time.
 */
final class NestedDissection {
  /** Triangles in a smallest patch: fewer make the tree deep, more make the small matrices fill. */
  private static final int SMALLEST = 24;

  /** Triangles in a large patch. */
  private static final int LARGE = 100;

  /** A cut may lie this share of the patch (one over) away from the middle. */
  private static final int SLACK = 5;

  private static final int[] AXES = {0, 1, 2};

  private final Connectivity connections;
  private final boolean[] prescribed;

  /** The triangles in the order of the patches, and each node's first and last place there. */
  private final int[] order;

  private final int[] first;
  private final int[] last;

  /** Place of a freedom in the patch at hand; scratch. */
  private final int[] place;

  private final double[] centroids;
  private final Range tree;

  /** A run of places in the order, and its two halves (null for a smallest patch). */
  private record Range(int from, int to, Range left, Range right) {}

  /**
   * A run of triangles cut in two.
   *
   * @param order the run's triangles
   * @param at place where the second half begins
   * @param shared number of nodes that lie on the cut
   */
  private record Cut(int[] order, int at, int shared) {}

  private NestedDissection(ShellModel model, Connectivity connections, boolean[] prescribed) {
    this.connections = connections;
    this.prescribed = prescribed;
    int count = model.triangleCount();
    order = new int[count];
    centroids = new double[3 * count];
    for (int t = 0; t < count; t++) {
      order[t] = t;
      for (int c = 0; c < 3; c++) {
        for (int k = 0; k < 3; k++) {
          centroids[3 * t + k] += model.coordinate(model.corner(t, c), k) / 3;
        }
      }
    }
    first = new int[model.nodeCount()];
    last = new int[model.nodeCount()];
    tree = halve(0, count);
    findFirstAndLast(0, count);
    place = new int[DegreeOfFreedom.COUNT * model.nodeCount()];
    Arrays.fill(place, -1);
  }

  /**
   * The whole shell as a tree of patches.
   *
   * @param connections which nodes each triangle touches
   * @param prescribed 6 a node: which freedoms are no unknowns
   */
  static Front of(ShellModel model, Connectivity connections, boolean[] prescribed) {
    NestedDissection whole = new NestedDissection(model, connections, prescribed);
    return whole.part(whole.tree);
  }

  private Range halve(int from, int to) {
    if (to - from <= SMALLEST) {
      return new Range(from, to, null, null);
    }
    int[] axes = to - from < LARGE ? new int[] {longestAxis(from, to)} : AXES;
    Cut cut = thinnestCut(from, to, axes[0]);
    for (int k = 1; k < axes.length; k++) {
      Cut other = thinnestCut(from, to, axes[k]);
      cut = other.shared < cut.shared ? other : cut;
    }
    System.arraycopy(cut.order, 0, order, from, to - from);
    return new Range(from, to, halve(from, cut.at), halve(cut.at, to));
  }

  private void sort(int from, int to, int axis) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (int i = from; i < to; i++) {
      low = Math.min(low, centroids[3 * order[i] + axis]);
      high = Math.max(high, centroids[3 * order[i] + axis]);
    }
    // Sorting numbers with the triangle in the low bits spares boxing; 31 bits of place suffice.
    double scale = high > low ? 0x7ffffff0 / (high - low) : 0;
    long[] keys = new long[to - from];
    for (int i = from; i < to; i++) {
      long key = Math.round(scale * (centroids[3 * order[i] + axis] - low));
      keys[i - from] = key << 32 | order[i];
    }
    Arrays.sort(keys);
    for (int i = from; i < to; i++) {
      order[i] = (int) keys[i - from];
    }
  }

  /**
   * The cut across an axis, near the middle, that the fewest nodes lie on: rows of a mesh are not
   * torn.
   */
  private Cut thinnestCut(int from, int to, int axis) {
    sort(from, to, axis);
    int[] change = new int[to - from + 1];
    findFirstAndLast(from, to);
    for (int i = from; i < to; i++) {
      for (int c = 0; c < connections.count(order[i]); c++) {
        int node = connections.node(order[i], c);
        if (first[node] == i && last[node] > i) {
          change[i - from + 1]++;
          change[last[node] - from + 1]--;
        }
      }
    }
    int slack = (to - from) / SLACK;
    int middle = (from + to) >>> 1;
    int best = middle;
    int fewest = Integer.MAX_VALUE;
    int shared = 0;
    for (int cut = from + 1; cut < to; cut++) {
      shared += change[cut - from];
      boolean nearer = Math.abs(cut - middle) < Math.abs(best - middle);
      if (Math.abs(cut - middle) <= slack && (shared < fewest || shared == fewest && nearer)) {
        fewest = shared;
        best = cut;
      }
    }
    return new Cut(Arrays.copyOfRange(order, from, to), best, fewest);
  }

  /** Each node's first and last place in a run. */
  private void findFirstAndLast(int from, int to) {
    for (int i = to - 1; i >= from; i--) {
      for (int c = 0; c < connections.count(order[i]); c++) {
        first[connections.node(order[i], c)] = i;
      }
    }
    for (int i = from; i < to; i++) {
      for (int c = 0; c < connections.count(order[i]); c++) {
        last[connections.node(order[i], c)] = i;
      }
    }
  }

  private int longestAxis(int from, int to) {
    int longest = 0;
    double extent = -1;
    for (int axis = 0; axis < 3; axis++) {
      double low = Double.POSITIVE_INFINITY;
      double high = Double.NEGATIVE_INFINITY;
      for (int i = from; i < to; i++) {
        low = Math.min(low, centroids[3 * order[i] + axis]);
        high = Math.max(high, centroids[3 * order[i] + axis]);
      }
      if (high - low > extent) {
        extent = high - low;
        longest = axis;
      }
    }
    return longest;
  }

  private Front part(Range range) {
    int from = range.from();
    int to = range.to();
    if (range.left() == null) {
      return smallest(from, to);
    }
    Front left = part(range.left());
    Front right = part(range.right());
    int[] shared =
        Arrays.copyOf(outer(left), left.size() - left.own() + right.size() - right.own());
    System.arraycopy(
        right.freedoms(),
        right.own(),
        shared,
        left.size() - left.own(),
        right.size() - right.own());
    int[] freedoms = ownFirst(shared, from, to);
    int own = ownCount(freedoms, from, to);
    int[] leftPlaces = places(outer(left));
    int[] rightPlaces = places(outer(right));
    unmark(freedoms);
    return new Front(left, right, leftPlaces, rightPlaces, new int[0], new int[0], freedoms, own);
  }

  private Front smallest(int from, int to) {
    int[] triangles = Arrays.copyOfRange(order, from, to);
    int[] touched =
        Arrays.stream(triangles)
            .flatMap(
                t ->
                    IntStream.range(0, connections.freedoms(t)).map(k -> connections.freedom(t, k)))
            .toArray();
    int[] freedoms = ownFirst(touched, from, to);
    int own = ownCount(freedoms, from, to);
    int[] places = places(touched);
    unmark(freedoms);
    return new Front(null, null, new int[0], new int[0], triangles, places, freedoms, own);
  }

  private static int[] outer(Front part) {
    return Arrays.copyOfRange(part.freedoms(), part.own(), part.size());
  }

  /** The unknowns among some freedoms, each once: a patch's own, then the others. */
  private int[] ownFirst(int[] some, int from, int to) {
    int[] result = new int[some.length];
    int count = 0;
    for (int pass = 0; pass < 2; pass++) {
      for (int freedom : some) {
        if (!prescribed[freedom] && place[freedom] < 0 && isOwn(freedom, from, to) == (pass == 0)) {
          place[freedom] = count;
          result[count++] = freedom;
        }
      }
    }
    return Arrays.copyOf(result, count);
  }

  private boolean isOwn(int freedom, int from, int to) {
    int node = freedom / DegreeOfFreedom.COUNT;
    return first[node] >= from && last[node] < to;
  }

  private int ownCount(int[] freedoms, int from, int to) {
    int own = 0;
    while (own < freedoms.length && isOwn(freedoms[own], from, to)) {
      own++;
    }
    return own;
  }

  private void unmark(int[] freedoms) {
    for (int freedom : freedoms) {
      place[freedom] = -1;
    }
  }

  private int[] places(int[] freedoms) {
    int[] places = new int[freedoms.length];
    for (int i = 0; i < places.length; i++) {
      places[i] = place[freedoms[i]];
    }
    return places;
  }
}
