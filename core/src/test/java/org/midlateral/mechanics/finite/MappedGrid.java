package org.midlateral.mechanics.finite;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.midlateral.mechanics.element.Isotropic;

/**
 * A grid of lines u by lines v laid on a surface, each cell cut into two triangles by alternate
 * diagonals. The front is where u cross v points.
 *
 * @param u places of the lines of the first kind, rising
 * @param v places of the lines of the second kind, rising
 * @param closed whether the last line v lies on the first, as round a tube
 * @param surface the point at (u, v); defined a little beyond the grid too
 */
record MappedGrid(
    double[] u, double[] v, boolean closed, BiFunction<Double, Double, Vector3D> surface) {

  static MappedGrid open(double[] u, double[] v, BiFunction<Double, Double, Vector3D> surface) {
    return new MappedGrid(u, v, false, surface);
  }

  /** Lines through some places, evenly set between them and no wider apart than a step. */
  static double[] lines(double step, double... through) {
    List<Double> lines = new ArrayList<>(List.of(through[0]));
    for (int i = 1; i < through.length; i++) {
      double gap = through[i] - through[i - 1];
      int parts = (int) Math.ceil(gap / step - 1e-9);
      for (int k = 1; k <= parts; k++) {
        lines.add(through[i - 1] + gap * k / parts);
      }
    }
    return lines.stream().mapToDouble(Double::doubleValue).toArray();
  }

  /** A number of even steps over a range. */
  static double[] even(int steps, double from, double to) {
    return lines((to - from) / steps, from, to);
  }

  /** Number of the line at a place. */
  static int line(double[] lines, double place) {
    for (int i = 0; i < lines.length; i++) {
      if (Math.abs(lines[i] - place) < 1e-9) {
        return i;
      }
    }
    throw new IllegalArgumentException("no line at " + place);
  }

  private int across() {
    return closed ? v.length - 1 : v.length;
  }

  int nodeCount() {
    return u.length * across();
  }

  /** The node where two lines cross, by number. */
  int node(int i, int j) {
    return i * across() + j % across();
  }

  /** The node where two lines cross, by place. */
  int nodeAt(double placeU, double placeV) {
    return node(line(u, placeU), line(v, placeV));
  }

  ShellModel shell(double thickness, Isotropic material) {
    double[] xyz = new double[3 * nodeCount()];
    for (int n = 0; n < nodeCount(); n++) {
      Vector3D p = surface.apply(u[n / across()], v[n % across()]);
      System.arraycopy(p.toArray(), 0, xyz, 3 * n, 3);
    }
    int[] corners = new int[6 * (u.length - 1) * (v.length - 1)];
    int at = 0;
    for (int i = 0; i + 1 < u.length; i++) {
      for (int j = 0; j + 1 < v.length; j++) {
        int[] c = {node(i, j), node(i + 1, j), node(i + 1, j + 1), node(i, j + 1)};
        for (int k : new int[] {0, 1, 2, 0, 2, 3}) {
          corners[at++] = c[(k + (i + j) % 2) % 4];
        }
      }
    }
    return UniformShell.of(xyz, corners, thickness, material);
  }

  /** The surface's unit normal at a node, toward the front. */
  Vector3D normal(int node) {
    double a = u[node / across()];
    double b = v[node % across()];
    double du = 1e-5 * (u[u.length - 1] - u[0]);
    double dv = 1e-5 * (v[v.length - 1] - v[0]);
    Vector3D alongU = surface.apply(a - du, b).vectorTo(surface.apply(a + du, b));
    Vector3D alongV = surface.apply(a, b - dv).vectorTo(surface.apply(a, b + dv));
    return alongU.cross(alongV).normalize();
  }

  /** The nodes of a line u, by place. */
  int[] lineU(double place) {
    int i = line(u, place);
    int[] nodes = new int[across()];
    for (int j = 0; j < nodes.length; j++) {
      nodes[j] = node(i, j);
    }
    return nodes;
  }

  /** The nodes of a line v, by place. */
  int[] lineV(double place) {
    int j = line(v, place);
    int[] nodes = new int[u.length];
    for (int i = 0; i < nodes.length; i++) {
      nodes[i] = node(i, j);
    }
    return nodes;
  }

  /** Triangles of the cells within a rectangle of the lines. */
  int[] triangles(double fromU, double toU, double fromV, double toV) {
    List<Integer> found = new ArrayList<>();
    for (int i = 0; i + 1 < u.length; i++) {
      for (int j = 0; j + 1 < v.length; j++) {
        double middleU = (u[i] + u[i + 1]) / 2;
        double middleV = (v[j] + v[j + 1]) / 2;
        if (middleU > fromU && middleU < toU && middleV > fromV && middleV < toV) {
          int cell = i * (v.length - 1) + j;
          found.add(2 * cell);
          found.add(2 * cell + 1);
        }
      }
    }
    return found.stream().mapToInt(Integer::intValue).toArray();
  }
}
