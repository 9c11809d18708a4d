package org.midlateral.document.pattern;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.midlateral.mesh.TriangleMesh;

/**
 * The cotangent Laplacian on flat meshes, where its solutions are known. On a square lattice halved
 * into right triangles it is twice the five-point stencil, half of that along the edges.
 */
class LaplacianTest {
  private static final int ACROSS = 14;
  private static final int ALONG = 22;

  /** A lattice of squares, each halved, its inner points moved at random by a share of a side. */
  private static TriangleMesh lattice(double shake) {
    SplittableRandom random = new SplittableRandom(5);
    double[] xyz = new double[3 * (ACROSS + 1) * (ALONG + 1)];
    int[] corners = new int[6 * ACROSS * ALONG];
    int n = 0;
    for (int j = 0; j <= ALONG; j++) {
      for (int i = 0; i <= ACROSS; i++) {
        int v = vertex(i, j);
        boolean inside = i > 0 && i < ACROSS && j > 0 && j < ALONG;
        xyz[3 * v] = i + (inside ? shake * (random.nextDouble() - 0.5) : 0);
        xyz[3 * v + 1] = j + (inside ? shake * (random.nextDouble() - 0.5) : 0);
        if (i < ACROSS && j < ALONG) {
          int[] square = {v, vertex(i + 1, j), vertex(i + 1, j + 1), vertex(i, j + 1)};
          for (int c : new int[] {0, 1, 2, 0, 2, 3}) {
            corners[n++] = square[c];
          }
        }
      }
    }
    return new TriangleMesh(xyz, corners);
  }

  private static int vertex(int i, int j) {
    return j * (ACROSS + 1) + i;
  }

  private static double[] cotangents(TriangleMesh mesh) {
    double[] cotangent = new double[3 * mesh.triangleCount()];
    for (int k = 0; k < cotangent.length; k++) {
      int t = k / 3;
      var at = mesh.vertex(mesh.corner(t, k % 3));
      var p = at.vectorTo(mesh.vertex(mesh.corner(t, (k + 1) % 3)));
      var q = at.vectorTo(mesh.vertex(mesh.corner(t, (k + 2) % 3)));
      cotangent[k] = p.dot(q) / p.cross(q).norm();
    }
    return cotangent;
  }

  private static Laplacian of(TriangleMesh mesh) {
    return new Laplacian(mesh, cotangents(mesh), mesh::y);
  }

  private static double[] solve(TriangleMesh mesh, double[] pull) {
    double[] place = new double[2 * mesh.vertexCount()];
    of(mesh).solve(pull, place);
    return place;
  }

  /**
   * Waves along a lattice with free edges, cos(pi k i / m) cos(pi l j / n), are multiplied by 4 - 2
   * cos(pi k / m) - 2 cos(pi l / n): the eigenvalues of the path graph (a known result of linear
   * algebra, from memory).
   */
  @ParameterizedTest
  @CsvSource({"1, 0", "0, 1", "1, 1", "2, 3", "7, 11", "14, 22"})
  void wavesComeBackDividedByTheirEigenvalue(int k, int l) {
    TriangleMesh mesh = lattice(0);
    double eigenvalue = 4 - 2 * Math.cos(Math.PI * k / ACROSS) - 2 * Math.cos(Math.PI * l / ALONG);
    double[] wave = new double[mesh.vertexCount()];
    double[] pull = new double[2 * wave.length];
    for (int j = 0; j <= ALONG; j++) {
      for (int i = 0; i <= ACROSS; i++) {
        int v = vertex(i, j);
        wave[v] = Math.cos(Math.PI * k * i / ACROSS) * Math.cos(Math.PI * l * j / ALONG);
        double share = (i % ACROSS == 0 ? 0.5 : 1) * (j % ALONG == 0 ? 0.5 : 1);
        pull[2 * v] = 2 * share * eigenvalue * wave[v];
        pull[2 * v + 1] = -pull[2 * v];
      }
    }
    double[] place = solve(mesh, pull);
    for (int v = 0; v < wave.length; v++) {
      // Up to a shift: one vertex stays at the origin.
      assertThat(place[2 * v] - place[0]).isCloseTo(wave[v] - wave[0], within(1e-10));
      assertThat(place[2 * v + 1]).isCloseTo(-place[2 * v], within(1e-12));
    }
  }

  /**
   * On any flat mesh a linear function is harmonic: nothing pulls inside, and at the edge each side
   * pulls with its length times the slope across it, half at either end (Green's first identity;
   * the weights are twice the usual ones).
   */
  @Test
  void linearFunctionsAreHarmonicOnAnyFlatMesh() {
    TriangleMesh mesh = lattice(0.6);
    double[] pull = new double[2 * mesh.vertexCount()];
    double a = 0.7;
    double b = -1.3;
    for (int i = 0; i < ACROSS; i++) {
      pullSide(pull, vertex(i, 0), vertex(i + 1, 0), -b, 1);
      pullSide(pull, vertex(i, ALONG), vertex(i + 1, ALONG), b, -1);
    }
    for (int j = 0; j < ALONG; j++) {
      pullSide(pull, vertex(0, j), vertex(0, j + 1), -a, 0);
      pullSide(pull, vertex(ACROSS, j), vertex(ACROSS, j + 1), a, 0);
    }
    double[] place = solve(mesh, pull);
    for (int v = 0; v < mesh.vertexCount(); v++) {
      assertThat(place[2 * v] - place[0]).isCloseTo(a * mesh.x(v) + b * mesh.y(v), within(1e-10));
      assertThat(place[2 * v + 1] - place[1]).isCloseTo(-mesh.y(v), within(1e-10));
    }
  }

  /** A side of unit length, twice its half at either end. */
  private static void pullSide(double[] pull, int p, int q, double x, double y) {
    for (int v : new int[] {p, q}) {
      pull[2 * v] += x;
      pull[2 * v + 1] += y;
    }
  }

  /** Symmetric: what one pull does where another acts, the other does where the one acts. */
  @Test
  void itIsSymmetric() {
    TriangleMesh mesh = lattice(0.6);
    double[] pull = new double[2 * mesh.vertexCount()];
    balanced(pull, 0, 1);
    balanced(pull, 1, 2);
    double[] place = solve(mesh, pull);
    double there = 0;
    double back = 0;
    for (int v = 0; v < mesh.vertexCount(); v++) {
      there += pull[2 * v] * place[2 * v + 1];
      back += pull[2 * v + 1] * place[2 * v];
    }
    assertThat(there).isCloseTo(back, within(1e-9));
    assertThat(Math.abs(there)).isGreaterThan(0.01);
  }

  private static void balanced(double[] pull, int axis, long seed) {
    int n = pull.length / 2;
    double[] draws = new SplittableRandom(seed).doubles(n, -1, 1).toArray();
    double mean = Arrays.stream(draws).average().orElseThrow();
    for (int v = 0; v < n; v++) {
      pull[2 * v + axis] = draws[v] - mean;
    }
  }

  /**
   * Rows and columns sum to nothing: a balanced pull leaves the held vertex, the first along the
   * finger, at the origin, and of an unbalanced one all that is left over comes to hang on it.
   */
  @Test
  void rowsSumToZero() {
    TriangleMesh mesh = lattice(0.6);
    double[] pull = new double[2 * mesh.vertexCount()];
    balanced(pull, 0, 3);
    balanced(pull, 1, 3);
    for (int v = 0; v < mesh.vertexCount(); v++) {
      pull[2 * v + 1] += 0.01;
    }
    double[] place = solve(mesh, pull);

    assertThat(place[0]).isCloseTo(0, within(1e-9));
    assertThat(place[1]).isCloseTo(0.01 * mesh.vertexCount(), within(1e-9));
  }

  /** Triangles that are folded over have no such matrix: it would not be positive. */
  @Test
  void foldedTrianglesAreRefused() {
    TriangleMesh mesh = lattice(0);
    double[] cotangent = cotangents(mesh);
    for (int k = 0; k < 3; k++) {
      cotangent[150 + k] = -10;
    }
    assertThatThrownBy(() -> new Laplacian(mesh, cotangent, mesh::y))
        .isInstanceOf(IllegalStateException.class)
        .hasMessageContaining("sliver");
  }
}
