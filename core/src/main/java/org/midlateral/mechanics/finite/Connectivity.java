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
    Follows[] motion = motion(triangle);
    double[][] half = new double[18][freedoms(triangle)];
    for (int i = 0, at = 0; i < 18; i++) {
      for (int j = 0; j <= i; j++, at++) {
        motion[j].addTo(half[i], own[at]);
        if (j < i) {
          motion[i].addTo(half[j], own[at]);
        }
      }
    }
    for (int k = 0; k < 18; k++) {
      for (int n = 0; n < motion[k].places.length; n++) {
        int i = motion[k].places[n];
        int row = offset(triangle) + i * (i + 1) / 2;
        for (int j = 0; j <= i; j++) {
          out[row + j] += motion[k].shares[n] * half[k][j];
        }
      }
    }
  }

  /**
   * How a corner's freedom follows.
   *
   * @param places of the freedoms that it follows, among those that the triangle touches
   * @param shares how far each moves it
   */
  private record Follows(int[] places, double[] shares) {
    void addTo(double[] row, double times) {
      for (int n = 0; n < places.length; n++) {
        row[places[n]] += times * shares[n];
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
  private Follows[] motion(int triangle) {
    Follows[] motion = new Follows[18];
    for (int c = 0; c < 3; c++) {
      int corner = model.corner(triangle, c);
      Tie tie = model.tie(corner);
      for (int k = 0; k < DegreeOfFreedom.COUNT; k++) {
        motion[6 * c + k] =
            tie == null
                ? new Follows(new int[] {first(triangle, corner) + k}, new double[] {1})
                : k < 3 ? shifted(triangle, tie, k) : turned(triangle, tie, k);
      }
    }
    return motion;
  }

  /** A tied corner's displacement: its leaders' and what their rotations do at their arms. */
  private Follows shifted(int triangle, Tie tie, int axis) {
    int next = (axis + 1) % 3;
    int last = (axis + 2) % 3;
    int[] places = new int[9];
    double[] shares = new double[9];
    for (int l = 0; l < 3; l++) {
      int at = first(triangle, tie.leaders()[l]);
      double[] arm = tie.arms().get(l).toArray();
      double weight = tie.weights()[l];
      places[3 * l] = at + axis;
      shares[3 * l] = weight;
      places[3 * l + 1] = at + 3 + next;
      shares[3 * l + 1] = weight * arm[last];
      places[3 * l + 2] = at + 3 + last;
      shares[3 * l + 2] = -weight * arm[next];
    }
    return new Follows(places, shares);
  }

  private Follows turned(int triangle, Tie tie, int freedom) {
    int[] places = new int[3];
    for (int l = 0; l < 3; l++) {
      places[l] = first(triangle, tie.leaders()[l]) + freedom;
    }
    return new Follows(places, tie.weights());
  }

  /** Place of a node's first freedom among those that a triangle touches. */
  private int first(int triangle, int node) {
    return DegreeOfFreedom.COUNT * place(triangle, node);
  }

  private int place(int triangle, int node) {
    for (int k = 0; ; k++) {
      if (node(triangle, k) == node) {
        return k;
      }
    }
  }
}
