package org.midlateral.document.pattern;

import java.util.Arrays;
import org.midlateral.mesh.TriangleMesh;

/**
 * Flattens a surface so that every triangle stays as nearly rigid as the others allow. Starts from
 * the unrolled plane; alternates the best rotation of each triangle with the best place of all
 * vertices.
 */
final class Unrolling {
  /**
   * Vertices that move less than this in a round have come to rest (mm): on the samples within
   * 0.001 mm of where they lie after ten times as fine a search.
   */
  private static final double AT_REST = 2e-4;

  private static final int MOST_ROUNDS = 400;

  /** The corner after each. */
  static final int[] NEXT = {1, 2, 0};

  private final TriangleMesh mesh;
  private final int triangles;
  private final double[] flat;

  /** The sides of each triangle laid flat as it is, x and y: opposite its corners in turn. */
  private final double[] shape;

  private final double[] cotangent;
  private final Laplacian laplacian;

  private Unrolling(MidSurface surface) {
    mesh = surface.mesh();
    triangles = mesh.triangleCount();
    flat = new double[2 * mesh.vertexCount()];
    for (int v = 0; v < mesh.vertexCount(); v++) {
      flat[2 * v] = surface.girth().at(v);
      flat[2 * v + 1] = surface.station().at(v);
    }
    shape = new double[6 * triangles];
    cotangent = new double[3 * triangles];
    for (int t = 0; t < triangles; t++) {
      measure(t);
    }
    laplacian = new Laplacian(mesh, cotangent, surface.station());
  }

  /** Flat places of the vertices, x and y in turn (mm). */
  static double[] flatten(MidSurface surface) {
    Unrolling unrolling = new Unrolling(surface);
    double[] start = unrolling.flat.clone();
    unrolling.comeToRest();
    return aligned(unrolling.flat, start);
  }

  /**
   * Alternates the two steps with momentum (Nesterov; started anew whenever it points uphill:
   * O'Donoghue and Candès, Found. Comput. Math. 15 (2015) 715-732, from memory).
   */
  private void comeToRest() {
    double[] pull = new double[flat.length];
    double[] last = flat.clone();
    double[] place = new double[flat.length];
    double momentum = 1;
    for (int round = 0; round < MOST_ROUNDS; round++) {
      pullBy(pull);
      laplacian.solve(pull, place);
      shift(place, flat);
      double uphill = 0;
      double moved = 0;
      for (int i = 0; i < place.length; i++) {
        uphill += (flat[i] - place[i]) * (place[i] - last[i]);
        moved = Math.max(moved, Math.abs(place[i] - flat[i]));
      }
      double next = uphill > 0 ? 1 : (1 + Math.sqrt(1 + 4 * momentum * momentum)) / 2;
      double beta = uphill > 0 ? 0 : (momentum - 1) / next;
      for (int i = 0; i < place.length; i++) {
        flat[i] = place[i] + beta * (place[i] - last[i]);
        last[i] = place[i];
      }
      momentum = next;
      if (moved < AT_REST) {
        break;
      }
    }
    System.arraycopy(last, 0, flat, 0, flat.length);
  }

  /** Moves the places as a whole so that their middle is that of others. */
  private static void shift(double[] places, double[] onto) {
    double[] by = new double[2];
    for (int i = 0; i < places.length; i++) {
      by[i % 2] += 2 * (onto[i] - places[i]) / places.length;
    }
    for (int i = 0; i < places.length; i++) {
      places[i] += by[i % 2];
    }
  }

  /** Lays triangle t flat, as it is. */
  private void measure(int t) {
    double[] e1 = edge(t, 0, 1);
    double[] e2 = edge(t, 0, 2);
    double length = Math.sqrt(dot(e1, e1));
    double along = dot(e1, e2) / length;
    double across = Math.sqrt(Math.max(0, dot(e2, e2) - along * along));
    double twiceArea = length * across;
    double[] sides = {along - length, across, -along, -across, length, 0};
    System.arraycopy(sides, 0, shape, 6 * t, 6);
    double[] e12 = edge(t, 1, 2);
    cotangent[3 * t] = dot(e1, e2) / twiceArea;
    cotangent[3 * t + 1] = -dot(e1, e12) / twiceArea;
    cotangent[3 * t + 2] = dot(e2, e12) / twiceArea;
  }

  private double[] edge(int t, int from, int to) {
    int a = mesh.corner(t, from);
    int b = mesh.corner(t, to);
    return new double[] {mesh.x(b) - mesh.x(a), mesh.y(b) - mesh.y(a), mesh.z(b) - mesh.z(a)};
  }

  private static double dot(double[] a, double[] b) {
    return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
  }

  /** What each vertex is pulled by when every triangle keeps its shape and its best rotation. */
  private void pullBy(double[] pull) {
    Arrays.fill(pull, 0);
    for (int t = 0; t < triangles; t++) {
      double cos = 0;
      double sin = 0;
      for (int c = 0; c < 3; c++) {
        int i = mesh.corner(t, NEXT[c]);
        int j = mesh.corner(t, NEXT[NEXT[c]]);
        double w = cotangent[3 * t + c];
        double ux = flat[2 * j] - flat[2 * i];
        double uy = flat[2 * j + 1] - flat[2 * i + 1];
        double sx = shape[6 * t + 2 * c];
        double sy = shape[6 * t + 2 * c + 1];
        cos += w * (ux * sx + uy * sy);
        sin += w * (uy * sx - ux * sy);
      }
      double norm = Math.sqrt(cos * cos + sin * sin);
      cos /= norm;
      sin /= norm;
      for (int c = 0; c < 3; c++) {
        int i = mesh.corner(t, NEXT[c]);
        int j = mesh.corner(t, NEXT[NEXT[c]]);
        double w = cotangent[3 * t + c];
        double sx = shape[6 * t + 2 * c];
        double sy = shape[6 * t + 2 * c + 1];
        double x = w * (cos * sx - sin * sy);
        double y = w * (sin * sx + cos * sy);
        pull[2 * i] -= x;
        pull[2 * i + 1] -= y;
        pull[2 * j] += x;
        pull[2 * j + 1] += y;
      }
    }
  }

  /** Turned and moved as a whole onto the start as well as it goes. */
  private static double[] aligned(double[] flat, double[] start) {
    int n = flat.length / 2;
    double[] mean = new double[4];
    for (int i = 0; i < 2 * n; i++) {
      mean[i % 2] += flat[i] / n;
      mean[2 + i % 2] += start[i] / n;
    }
    double cos = 0;
    double sin = 0;
    for (int v = 0; v < n; v++) {
      double x = flat[2 * v] - mean[0];
      double y = flat[2 * v + 1] - mean[1];
      double u = start[2 * v] - mean[2];
      double w = start[2 * v + 1] - mean[3];
      cos += x * u + y * w;
      sin += x * w - y * u;
    }
    double norm = Math.hypot(cos, sin);
    double[] turned = new double[flat.length];
    for (int v = 0; v < n; v++) {
      double x = flat[2 * v] - mean[0];
      double y = flat[2 * v + 1] - mean[1];
      turned[2 * v] = mean[2] + (cos * x - sin * y) / norm;
      turned[2 * v + 1] = mean[3] + (sin * x + cos * y) / norm;
    }
    return turned;
  }
}
