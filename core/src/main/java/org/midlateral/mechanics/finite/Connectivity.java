package org.midlateral.mechanics.finite;

import java.util.Arrays;

/**
 * Which nodes' freedoms each triangle's stiffness touches: its corners, and in place of a corner
 * that is tied, the three that lead it.
 */
final class Connectivity {
  private final ShellModel model;

  /** The nodes of triangle t stand from first[t] to first[t + 1]. */
  private final int[] first;

  private final int[] nodes;

  /** The stiffness of triangle t is packed from packed[t] on. */
  private final int[] packed;

  Connectivity(ShellModel model) {
    this.model = model;
    int count = model.triangleCount();
    first = new int[count + 1];
    packed = new int[count + 1];
    int[] all = new int[9 * count];
    for (int t = 0; t < count; t++) {
      int end = first[t];
      for (int c = 0; c < 3; c++) {
        int corner = model.corner(t, c);
        Tie tie = model.tie(corner);
        for (int k = 0; k < (tie == null ? 1 : 3); k++) {
          int node = tie == null ? corner : tie.leaders()[k];
          if (!contains(all, first[t], end, node)) {
            all[end++] = node;
          }
        }
      }
      first[t + 1] = end;
      int size = DegreeOfFreedom.COUNT * (end - first[t]);
      packed[t + 1] = packed[t] + size * (size + 1) / 2;
    }
    nodes = Arrays.copyOf(all, first[count]);
  }

  private static boolean contains(int[] all, int from, int to, int node) {
    for (int i = from; i < to; i++) {
      if (all[i] == node) {
        return true;
      }
    }
    return false;
  }

  /** Number of nodes that a triangle touches. */
  int count(int triangle) {
    return first[triangle + 1] - first[triangle];
  }

  /** The k-th node that a triangle touches. */
  int node(int triangle, int k) {
    return nodes[first[triangle] + k];
  }

  /** Number of freedoms that a triangle touches. */
  int freedoms(int triangle) {
    return DegreeOfFreedom.COUNT * count(triangle);
  }

  /** The k-th freedom that a triangle touches. */
  int freedom(int triangle, int k) {
    return DegreeOfFreedom.COUNT * node(triangle, k / DegreeOfFreedom.COUNT)
        + k % DegreeOfFreedom.COUNT;
  }

  /** Where a triangle's packed stiffness begins. */
  int offset(int triangle) {
    return packed[triangle];
  }

  /** Numbers in the packed stiffness of all triangles. */
  int size() {
    return packed[packed.length - 1];
  }

  /** Writes a triangle's stiffness in the freedoms that it touches. */
  void stiffness(MeshCurvature bends, int triangle, double[] out) {
    ShellTriangle element = new ShellTriangle(model, bends, triangle);
    if (!tied(triangle)) {
      element.stiffness(out, offset(triangle));
      return;
    }
    double[] own = new double[ShellTriangle.PACKED];
    element.stiffness(own, 0);
    double[][] motion = motion(triangle);
    int size = freedoms(triangle);
    double[][] half = new double[18][size];
    for (int i = 0, at = 0; i < 18; i++) {
      for (int j = 0; j <= i; j++, at++) {
        for (int k = 0; k < size; k++) {
          half[i][k] += own[at] * motion[j][k];
          half[j][k] += i == j ? 0 : own[at] * motion[i][k];
        }
      }
    }
    int at = offset(triangle);
    for (int i = 0; i < size; i++) {
      for (int j = 0; j <= i; j++, at++) {
        for (int k = 0; k < 18; k++) {
          out[at] += motion[k][i] * half[k][j];
        }
      }
    }
  }

  private boolean tied(int triangle) {
    for (int c = 0; c < 3; c++) {
      if (model.tie(model.corner(triangle, c)) != null) {
        return true;
      }
    }
    return false;
  }

  /** How the 18 freedoms of the corners follow from those that the triangle touches. */
  private double[][] motion(int triangle) {
    double[][] motion = new double[18][freedoms(triangle)];
    for (int c = 0; c < 3; c++) {
      int corner = model.corner(triangle, c);
      Tie tie = model.tie(corner);
      if (tie == null) {
        for (int k = 0; k < DegreeOfFreedom.COUNT; k++) {
          motion[6 * c + k][DegreeOfFreedom.COUNT * place(triangle, corner) + k] = 1;
        }
        continue;
      }
      for (int l = 0; l < 3; l++) {
        int column = DegreeOfFreedom.COUNT * place(triangle, tie.leaders()[l]);
        double w = tie.weights()[l];
        double[] a = tie.arms().get(l).toArray();
        for (int k = 0; k < 3; k++) {
          motion[6 * c + k][column + k] += w;
          motion[6 * c + 3 + k][column + 3 + k] += w;
          motion[6 * c + k][column + 3 + (k + 1) % 3] += w * a[(k + 2) % 3];
          motion[6 * c + k][column + 3 + (k + 2) % 3] -= w * a[(k + 1) % 3];
        }
      }
    }
    return motion;
  }

  private int place(int triangle, int node) {
    for (int k = 0; ; k++) {
      if (node(triangle, k) == node) {
        return k;
      }
    }
  }
}
