package org.midlateral.mesh.query;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.midlateral.mesh.Meshes;
import org.midlateral.mesh.TriangleMesh;

class GapTest {
  @Test
  void knownGaps() {
    TriangleMesh box = Meshes.box(1, 1, 1);
    assertGap(box, Meshes.moved(box, 3, 0, 0), 2);
    assertGap(box, Meshes.moved(box, 3, 4, 1.5), Math.sqrt(4 + 9 + 0.25));
    assertGap(box, Meshes.moved(box, 0.5, 0.25, 0.125), 0);
    assertGap(box, Meshes.moved(box, 1, 0.3, 0.3), 0);
    // Two crossed edges, 0.5 apart.
    TriangleMesh ridge = Meshes.soup(-3, 0, 0, 3, 0, 0, 0, 0, -2);
    TriangleMesh keel = Meshes.soup(0, -3, 0.5, 0, 3, 0.5, 0, 0, 4);
    assertGap(ridge, keel, 0.5);
  }

  /** A facet's middle lies radius·(1 - cos(half step)) inside the circle its corners lie on. */
  @Test
  void halfTubesSideBySideAreTheWallLessTheSagApart() {
    int steps = 36;
    TriangleMesh inner = Meshes.halfTube(8, 75, 90, steps, -1);
    TriangleMesh outer = Meshes.halfTube(9.6, 75, 90, steps, 1);
    Gap gap = BoundingVolumeHierarchy.of(inner).gap(BoundingVolumeHierarchy.of(outer));
    double sag = 9.6 * (1 - Math.cos(Math.PI / 2 / (steps + 0.4)));
    assertThat(gap.distance()).isBetween(1.6 - 1.01 * sag, 1.6);
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void treeFindsTheGapThatSamplingCannotBeat(long seed) {
    TriangleMesh a = Meshes.confetti(seed, 60, 10, 2);
    TriangleMesh b = Meshes.moved(Meshes.confetti(seed + 50, 60, 10, 2), 12 + seed % 3, seed, 0);
    Gap gap = BoundingVolumeHierarchy.of(a).gap(BoundingVolumeHierarchy.of(b));
    assertThat(gap.point().distance(gap.otherPoint())).isCloseTo(gap.distance(), within(1e-12));
    assertThat(onTriangle(a, gap.triangle(), gap.point())).isLessThan(1e-12);
    assertThat(onTriangle(b, gap.otherTriangle(), gap.otherPoint())).isLessThan(1e-12);
    double least = allPairs(a, b);
    assertThat(gap.distance()).isCloseTo(least, within(1e-12 * least));
    assertThat(BoundingVolumeHierarchy.of(b).gap(BoundingVolumeHierarchy.of(a)).distance())
        .isCloseTo(least, within(1e-12 * least));
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4})
  void treeFindsTheNearestPointThatTryingAllFinds(long seed) {
    TriangleMesh mesh = Meshes.confetti(seed, 200, 10, 2);
    BoundingVolumeHierarchy tree = BoundingVolumeHierarchy.of(mesh);
    Random random = new Random(seed);
    for (int n = 0; n < 200; n++) {
      Vector3D from = Vector3D.of(random.nextDouble() * 14, random.nextDouble() * 14, n / 20.0);
      double least = Double.POSITIVE_INFINITY;
      for (int t = 0; t < mesh.triangleCount(); t++) {
        least = Math.min(least, onTriangle(mesh, t, from));
      }
      ClosestPoint nearest = tree.closest(from);
      assertThat(nearest.distance()).isCloseTo(least, within(1e-12));
      assertThat(nearest.point().distance(from)).isCloseTo(least, within(1e-12));
      assertThat(tree.distance(from.getX(), from.getY(), from.getZ(), least + 0.1))
          .isCloseTo(least, within(1e-12));
      assertThat(tree.distance(from.getX(), from.getY(), from.getZ(), least * 0.99)).isInfinite();
    }
  }

  /** Nearest points of a triangle, by walking over it on a grid: a check of the closed form. */
  @Test
  void nearestPointOfATriangleIsNoFartherThanAnyOther() {
    Random random = new Random(5);
    PointTriangleDistance distance = new PointTriangleDistance();
    for (int n = 0; n < 300; n++) {
      double[] t = random.doubles(9, -1, 1).toArray();
      double[] p = random.doubles(3, -2, 2).toArray();
      double found = Math.sqrt(distance.square(p[0], p[1], p[2], t, 0, 3, 6));
      double least = Double.POSITIVE_INFINITY;
      for (int i = 0; i <= 40; i++) {
        for (int j = 0; i + j <= 40; j++) {
          double sum = 0;
          for (int k = 0; k < 3; k++) {
            double x = (t[k] * (40 - i - j) + t[3 + k] * i + t[6 + k] * j) / 40 - p[k];
            sum += x * x;
          }
          least = Math.min(least, Math.sqrt(sum));
        }
      }
      assertThat(found).isLessThanOrEqualTo(least + 1e-12).isGreaterThan(least - 0.05);
    }
  }

  /** A triangle whose corners stand on one line is the longest of its sides. */
  @Test
  void nearestPointOfATriangleWithoutAreaIsThatOfItsLongestSide() {
    double[] t = {1, 1, 1, 4, 1, 1, 2, 1, 1};
    int[][] orders = {{0, 3, 6}, {3, 6, 0}, {6, 0, 3}, {3, 0, 6}, {0, 6, 3}, {6, 3, 0}};
    PointTriangleDistance distance = new PointTriangleDistance();
    for (int[] o : orders) {
      assertThat(distance.square(3, 3, 1, t, o[0], o[1], o[2])).isCloseTo(4, within(1e-12));
      assertThat(distance.square(0, 1, 0, t, o[0], o[1], o[2])).isCloseTo(2, within(1e-12));
      assertThat(distance.square(6, 1, 1, t, o[0], o[1], o[2])).isCloseTo(4, within(1e-12));
    }
    assertThat(distance.square(2, 1, 1, t, 0, 0, 0)).isCloseTo(1, within(1e-12));
  }

  /**
   * Points over corners, sides and face of a triangle with an obtuse and one with only acute
   * angles, each seen from all its corners: the place they were set up over is found again.
   */
  @Test
  void nearestPointIsFoundOverEveryCornerSideAndFace() {
    double[][] triangles = {{0, 0, 0, 4, 0, 0, -2, 1, 0}, {0, 0, 0, 4, 0, 0, 1, 3, 0}};
    // Place, and way from it that is square to the triangle there or leads away from its corner.
    double[][][] cases = {
      {{1, 0, 0}, {0, -2, 1}},
      {{0, 0, 0}, {-0.1, -0.5, 2}},
      {{4, 0, 0}, {3, 0.5, -1}},
      {{0.9, 0.4, 0}, {0, 0, 3}},
      {{-2, 1, 0}, {-3, 0, 1}},
      {{1, 0.5, 0}, {1, 6, -1}},
      {{-1, 0.5, 0}, {-1, -2, 0.5}},
    };
    assertPlaces(triangles[0], cases);
    assertPlaces(
        triangles[1],
        new double[][][] {
          {{2, 0, 0}, {0, -3, 1}},
          {{0, 0, 0}, {-2, -1, 1}},
          {{4, 0, 0}, {2, 1, 0}},
          {{1, 3, 0}, {0, 2, 1}},
          {{2.5, 1.5, 0}, {1, 1, 1}},
          {{0.5, 1.5, 0}, {-3, 1, 1}},
          {{1.5, 1, 0}, {0, 0, -2}},
        });
  }

  private static void assertPlaces(double[] t, double[][][] cases) {
    int[][] orders = {{0, 3, 6}, {3, 6, 0}, {6, 0, 3}, {3, 0, 6}, {0, 6, 3}, {6, 3, 0}};
    PointTriangleDistance distance = new PointTriangleDistance();
    for (double[][] c : cases) {
      double[] p = {c[0][0] + c[1][0], c[0][1] + c[1][1], c[0][2] + c[1][2]};
      double square = c[1][0] * c[1][0] + c[1][1] * c[1][1] + c[1][2] * c[1][2];
      for (int[] o : orders) {
        assertThat(distance.square(p[0], p[1], p[2], t, o[0], o[1], o[2]))
            .isCloseTo(square, within(1e-12));
        assertThat(distance.on).containsExactly(c[0], within(1e-12));
      }
    }
  }

  private static void assertGap(TriangleMesh a, TriangleMesh b, double expected) {
    Gap gap = BoundingVolumeHierarchy.of(a).gap(BoundingVolumeHierarchy.of(b));
    assertThat(gap.distance()).isCloseTo(expected, within(1e-12));
    assertThat(gap.point().distance(gap.otherPoint())).isCloseTo(expected, within(1e-12));
    assertThat(onTriangle(a, gap.triangle(), gap.point())).isLessThan(1e-12);
    assertThat(onTriangle(b, gap.otherTriangle(), gap.otherPoint())).isLessThan(1e-12);
  }

  private static double onTriangle(TriangleMesh mesh, int t, Vector3D point) {
    return Math.sqrt(
        new PointTriangleDistance()
            .square(
                point.getX(),
                point.getY(),
                point.getZ(),
                mesh.coordinates(),
                3 * mesh.corner(t, 0),
                3 * mesh.corner(t, 1),
                3 * mesh.corner(t, 2)));
  }

  /** Corner to face and edge to edge of every pair; the meshes do not meet. */
  private static double allPairs(TriangleMesh a, TriangleMesh b) {
    PointTriangleDistance distance = new PointTriangleDistance();
    CommonPerpendicular perpendicular = new CommonPerpendicular();
    double[] p = Meshes.both(a, b).coordinates();
    int[] corners = Meshes.both(a, b).triangles();
    double least = Double.POSITIVE_INFINITY;
    for (int s = 0; s < 3 * a.triangleCount(); s += 3) {
      for (int t = 3 * a.triangleCount(); t < corners.length; t += 3) {
        for (int i = 0; i < 3; i++) {
          least = Math.min(least, corner(distance, p, corners, s + i, t));
          least = Math.min(least, corner(distance, p, corners, t + i, s));
          for (int j = 0; j < 3; j++) {
            least =
                Math.min(
                    least,
                    perpendicular.square(
                        p,
                        3 * corners[s + i],
                        3 * corners[s + (i + 1) % 3],
                        3 * corners[t + j],
                        3 * corners[t + (j + 1) % 3]));
          }
        }
      }
    }
    return Math.sqrt(least);
  }

  private static double corner(PointTriangleDistance d, double[] p, int[] corners, int v, int t) {
    int i = 3 * corners[v];
    return d.square(
        p[i], p[i + 1], p[i + 2], p, 3 * corners[t], 3 * corners[t + 1], 3 * corners[t + 2]);
  }
}
