package org.midlateral.mesh;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;

/** Solids with known measures, for tests. */
public final class Meshes {
  private Meshes() {}

  /** The tetrahedron of the three unit vectors times a size: volume size³/6. */
  public static TriangleMesh tetrahedron(double size) {
    return new TriangleMesh(
        new double[] {0, 0, 0, size, 0, 0, 0, size, 0, 0, 0, size},
        new int[] {0, 2, 1, 0, 1, 3, 1, 2, 3, 0, 3, 2});
  }

  /** A box with a corner at the origin, two triangles a face. */
  public static TriangleMesh box(double x, double y, double z) {
    double[] xyz = new double[24];
    for (int v = 0; v < 8; v++) {
      xyz[3 * v] = (v & 1) * x;
      xyz[3 * v + 1] = (v >> 1 & 1) * y;
      xyz[3 * v + 2] = (v >> 2 & 1) * z;
    }
    int[] corners = {
      0, 2, 1, 1, 2, 3, 4, 5, 6, 5, 7, 6, 0, 1, 4, 1, 5, 4, 2, 6, 3, 3, 6, 7, 0, 4, 2, 2, 4, 6, 1,
      3, 5, 3, 7, 5
    };
    return new TriangleMesh(xyz, corners);
  }

  /** A torus about z: m steps round the axis, n round the tube. */
  public static TriangleMesh torus(double radius, double tube, int m, int n) {
    double[] xyz = new double[3 * m * n];
    int[] corners = new int[6 * m * n];
    for (int i = 0; i < m; i++) {
      for (int j = 0; j < n; j++) {
        double u = 2 * Math.PI * i / m;
        double v = 2 * Math.PI * j / n;
        int at = 3 * (i * n + j);
        xyz[at] = (radius + tube * Math.cos(v)) * Math.cos(u);
        xyz[at + 1] = (radius + tube * Math.cos(v)) * Math.sin(u);
        xyz[at + 2] = tube * Math.sin(v);
        int a = i * n + j;
        int b = (i + 1) % m * n + j;
        int c = i * n + (j + 1) % n;
        int d = (i + 1) % m * n + (j + 1) % n;
        quad(corners, 6 * a, a, b, d, c);
      }
    }
    return new TriangleMesh(xyz, corners);
  }

  /**
   * An open half tube about x, its inside facing the axis if the turn is -1, away from it if 1.
   *
   * @param radius of the tube (mm)
   * @param m steps along the length
   * @param n steps round the half circle
   */
  public static TriangleMesh halfTube(double radius, double length, int m, int n, int turn) {
    double[] xyz = new double[3 * (m + 1) * (n + 1)];
    int[] corners = new int[6 * m * n];
    for (int i = 0; i <= m; i++) {
      for (int j = 0; j <= n; j++) {
        double v = Math.PI * (j + (i % 2) * 0.4) / (n + 0.4);
        int at = 3 * (i * (n + 1) + j);
        xyz[at] = length * i / m;
        xyz[at + 1] = radius * Math.cos(v);
        xyz[at + 2] = -radius * Math.sin(v);
        if (i < m && j < n) {
          int a = i * (n + 1) + j;
          int b = a + n + 1;
          int start = 6 * (i * n + j);
          if (turn > 0) {
            quad(corners, start, a, a + 1, b + 1, b);
          } else {
            quad(corners, start, a, b, b + 1, a + 1);
          }
        }
      }
    }
    return new TriangleMesh(xyz, corners);
  }

  private static void quad(int[] corners, int start, int a, int b, int c, int d) {
    int[] six = {a, b, c, a, c, d};
    System.arraycopy(six, 0, corners, start, 6);
  }

  /** Triangles strewn about in a cube, each on its own, of about the given size. */
  public static TriangleMesh confetti(long seed, int count, double cube, double size) {
    Random random = new Random(seed);
    double[] xyz = new double[9 * count];
    int[] corners = new int[3 * count];
    for (int t = 0; t < count; t++) {
      for (int axis = 0; axis < 3; axis++) {
        double centre = cube * random.nextDouble();
        for (int i = 0; i < 3; i++) {
          xyz[9 * t + 3 * i + axis] = (float) (centre + size * (random.nextDouble() - 0.5));
          corners[3 * t + i] = 3 * t + i;
        }
      }
    }
    return new TriangleMesh(xyz, corners);
  }

  /** A mesh moved by a vector. */
  public static TriangleMesh moved(TriangleMesh mesh, double x, double y, double z) {
    double[] xyz = mesh.coordinates();
    for (int i = 0; i < xyz.length; i += 3) {
      xyz[i] += x;
      xyz[i + 1] += y;
      xyz[i + 2] += z;
    }
    return new TriangleMesh(xyz, mesh.triangles());
  }

  /** Two meshes in one. */
  public static TriangleMesh both(TriangleMesh one, TriangleMesh two) {
    double[] a = one.coordinates();
    double[] b = two.coordinates();
    double[] xyz = Arrays.copyOf(a, a.length + b.length);
    System.arraycopy(b, 0, xyz, a.length, b.length);
    int[] s = one.triangles();
    int[] t = two.triangles();
    int[] corners = Arrays.copyOf(s, s.length + t.length);
    for (int i = 0; i < t.length; i++) {
      corners[s.length + i] = t[i] + one.vertexCount();
    }
    return new TriangleMesh(xyz, corners);
  }

  /** Triangles given by their coordinates, nine each, equal places made one vertex. */
  public static TriangleMesh soup(double... coordinates) {
    int places = coordinates.length / 3;
    int[] corners = new int[places];
    List<List<Double>> seen = new ArrayList<>();
    for (int i = 0; i < places; i++) {
      var place = List.of(coordinates[3 * i], coordinates[3 * i + 1], coordinates[3 * i + 2]);
      if (!seen.contains(place)) {
        seen.add(place);
      }
      corners[i] = seen.indexOf(place);
    }
    double[] xyz = seen.stream().flatMap(List::stream).mapToDouble(Double::doubleValue).toArray();
    return new TriangleMesh(xyz, corners);
  }
}
