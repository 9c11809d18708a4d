package org.midlateral.mechanics.finite;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.midlateral.mechanics.element.Facet;
import org.midlateral.mechanics.element.NearestParabola;

/**
 * The mid-surface's curvature at each triangle, from a parabola through the nodes of the triangle
 * and of those that touch it; exact for a parabola, and as good at an edge of the shell as inside.
 */
final class MeshCurvature {
  /** Triangles that are fitted one after the other. */
  private static final int BATCH = 100;

  /** Of nodes about a triangle no more are looked at. */
  private static final int MOST_NODES = 3 * 64;

  /** A curvature times half the wall stays below this; a sharper fold is no curved wall. */
  private static final double SHARPEST = 0.5;

  private final ShellModel model;

  /** The triangles at each node: those of node i from firstAt[i] to firstAt[i + 1]. */
  private final int[] firstAt;

  private final int[] trianglesAt;

  /** Three a triangle: xx, yy, xy, the turning of the normal per length. */
  private final double[] bends;

  MeshCurvature(ShellModel model) {
    this.model = model;
    firstAt = new int[model.nodeCount() + 1];
    trianglesAt = new int[3 * model.triangleCount()];
    listTriangles();
    bends = new double[3 * model.triangleCount()];
    int batches = (model.triangleCount() + BATCH - 1) / BATCH;
    IntStream.range(0, batches).parallel().forEach(this::fitBatch);
  }

  /** xx, yy and xy in the facet's axes (1/mm), positive where the front is the longer face. */
  double[] at(int triangle) {
    return Arrays.copyOfRange(bends, 3 * triangle, 3 * triangle + 3);
  }

  /** The triangles at a node and those that share a node with one of these, each once. */
  int[] trianglesAround(int node) {
    return IntStream.range(firstAt[node], firstAt[node + 1])
        .map(k -> trianglesAt[k])
        .flatMap(t -> IntStream.range(0, 3).map(c -> model.corner(t, c)))
        .distinct()
        .flatMap(i -> IntStream.range(firstAt[i], firstAt[i + 1]).map(k -> trianglesAt[k]))
        .distinct()
        .toArray();
  }

  private void listTriangles() {
    int corners = trianglesAt.length;
    for (int c = 0; c < corners; c++) {
      firstAt[model.corner(c / 3, c % 3) + 1]++;
    }
    for (int i = 0; i < model.nodeCount(); i++) {
      firstAt[i + 1] += firstAt[i];
    }
    int[] next = firstAt.clone();
    for (int c = 0; c < corners; c++) {
      trianglesAt[next[model.corner(c / 3, c % 3)]++] = c / 3;
    }
  }

  /** Fits those of one batch, which share what they are reckoned in. */
  private void fitBatch(int batch) {
    NearestParabola parabola = new NearestParabola();
    int[] nodes = new int[MOST_NODES];
    int end = Math.min(model.triangleCount(), BATCH * (batch + 1));
    for (int t = BATCH * batch; t < end; t++) {
      fit(t, parabola, nodes);
    }
  }

  private void fit(int triangle, NearestParabola parabola, int[] nodes) {
    Facet facet = model.facet(triangle);
    double[] e = facet.axes;
    int first = model.corner(triangle, 0);
    double scale = Math.sqrt(facet.area);
    int count = around(triangle, nodes);
    parabola.clear();
    for (int r = 0; r < count; r++) {
      double x = (model.coordinate(nodes[r], 0) - model.coordinate(first, 0)) / scale;
      double y = (model.coordinate(nodes[r], 1) - model.coordinate(first, 1)) / scale;
      double z = (model.coordinate(nodes[r], 2) - model.coordinate(first, 2)) / scale;
      parabola.add(
          x * e[0] + y * e[1] + z * e[2],
          x * e[3] + y * e[4] + z * e[5],
          x * e[6] + y * e[7] + z * e[8]);
    }
    if (!parabola.solve()) {
      return;
    }
    double xx = -parabola.xx() / scale;
    double yy = -parabola.yy() / scale;
    double xy = -parabola.xy() / scale;
    double sharp = Math.abs(xx + yy) / 2 + Math.hypot((xx - yy) / 2, xy);
    double most = 2 * SHARPEST / model.meanThickness(triangle);
    double share = sharp > most ? most / sharp : 1;
    bends[3 * triangle] = share * xx;
    bends[3 * triangle + 1] = share * yy;
    bends[3 * triangle + 2] = share * xy;
  }

  /**
   * The nodes of a triangle and of all that share a node with it, each once.
   *
   * @param found takes them up
   * @return their number
   */
  private int around(int triangle, int[] found) {
    int count = 0;
    for (int c = 0; c < 3; c++) {
      int node = model.corner(triangle, c);
      for (int k = firstAt[node]; k < firstAt[node + 1]; k++) {
        for (int d = 0; d < 3; d++) {
          int candidate = model.corner(trianglesAt[k], d);
          if (count < found.length && !contains(found, count, candidate)) {
            found[count++] = candidate;
          }
        }
      }
    }
    return count;
  }

  private static boolean contains(int[] some, int count, int value) {
    for (int i = 0; i < count; i++) {
      if (some[i] == value) {
        return true;
      }
    }
    return false;
  }
}
