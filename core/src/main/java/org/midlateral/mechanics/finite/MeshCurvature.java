package org.midlateral.mechanics.finite;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.midlateral.mechanics.element.Facet;

/**
 * The mid-surface's curvature at each triangle, from a parabola through the nodes of the triangle
 * and of those that touch it; exact for a parabola, and as good at an edge of the shell as inside.
 */
final class MeshCurvature {
  /** Pull of the parabola toward the plane, where there are too few nodes for it. */
  private static final double PULL = 1e-6;

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
    IntStream.range(0, model.triangleCount()).parallel().forEach(this::fit);
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

  private void fit(int triangle) {
    Facet facet = model.facet(triangle);
    int[] nodes = around(triangle);
    double scale = Math.sqrt(facet.area);
    DMatrixRMaj terms = new DMatrixRMaj(nodes.length + 3, 6);
    DMatrixRMaj heights = new DMatrixRMaj(nodes.length + 3, 1);
    for (int r = 0; r < nodes.length; r++) {
      double[] p = facet.local(model.arm(model.corner(triangle, 0), nodes[r]));
      double x = p[0] / scale;
      double y = p[1] / scale;
      double[] row = {1, x, y, x * x / 2, y * y / 2, x * y};
      System.arraycopy(row, 0, terms.data, 6 * r, 6);
      heights.data[r] = p[2] / scale;
    }
    for (int k = 0; k < 3; k++) {
      terms.set(nodes.length + k, 3 + k, PULL);
    }
    DMatrixRMaj parabola = new DMatrixRMaj(6, 1);
    if (!CommonOps_DDRM.solve(terms, heights, parabola)) {
      return;
    }
    double xx = -parabola.data[3] / scale;
    double yy = -parabola.data[4] / scale;
    double xy = -parabola.data[5] / scale;
    double sharp = Math.abs(xx + yy) / 2 + Math.hypot((xx - yy) / 2, xy);
    double most = 2 * SHARPEST / model.meanThickness(triangle);
    double share = sharp > most ? most / sharp : 1;
    bends[3 * triangle] = share * xx;
    bends[3 * triangle + 1] = share * yy;
    bends[3 * triangle + 2] = share * xy;
  }

  /** The nodes of a triangle and of all that share a node with it, each once. */
  private int[] around(int triangle) {
    int[] found = new int[3 * 64];
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
    return Arrays.copyOf(found, count);
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
