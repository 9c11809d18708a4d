package org.midlateral.mesh.query;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.midlateral.mesh.HalfEdges;
import org.midlateral.mesh.MeshTopology;
import org.midlateral.mesh.Meshes;
import org.midlateral.mesh.TriangleMesh;

class MeetingsTest {
  /** Two triangles; those that share a place share the vertex. */
  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "through each other, 0 0 0 4 0 0 0 4 0, 1 1 -1 1 1 1 5 5 0, true",
    "corner on a face, 0 0 0 4 0 0 0 4 0, 1 1 0 1 1 1 5 5 3, true",
    "corner just over a face, 0 0 0 4 0 0 0 4 0, 1 1 1e-30 1 1 1 5 5 3, false",
    "edge on an edge, 0 0 0 4 0 0 0 4 0, 2 0 -1 2 0 1 2 -3 0, true",
    "in one plane and apart, 0 0 0 4 0 0 0 4 0, 4 4 0 5 4 0 4 5 0, false",
    "in one plane and overlapping, 0 0 0 4 0 0 0 4 0, 1 1 0 5 1 0 1 5 0, true",
    "one inside the other, 0 0 0 9 0 0 0 9 0, 1 1 0 2 1 0 1 2 0, true",
    "in one plane and boxes overlapping, 0 0 0 4 0 0 0 4 0, 3 3 0 3 2 0 2 3 0, false",
    "in one plane and touching edges, 0 0 0 4 0 0 0 4 0, 1 0 0 3 0 0 2 -2 0, true",
    "shared vertex and nothing else, 0 0 0 4 0 0 0 4 0, 0 0 0 -1 0 1 -1 0 -1, false",
    "shared vertex and through, 0 0 0 4 0 0 0 4 0, 0 0 0 1 1 1 1 1 -1, true",
    "shared vertex and edge on edge, 0 0 0 4 0 0 0 4 0, 0 0 0 2 0 0 2 -1 3, true",
    "shared vertex in one plane apart, 0 0 0 4 0 0 0 4 0, 0 0 0 -4 0 0 0 -4 0, false",
    "shared vertex in one plane over, 0 0 0 4 0 0 0 4 0, 0 0 0 9 1 0 9 2 0, true",
    "shared vertex and its fan, 0 0 0 4 0 0 0 4 0, 0 0 0 9 -1 0 9 -2 0, false",
    "shared edge flat, 0 0 0 4 0 0 0 4 0, 4 0 0 0 0 0 0 -4 0, false",
    "shared edge folded on itself, 0 0 0 4 0 0 0 4 0, 4 0 0 0 0 0 1 1 0, true",
    "shared edge sharply folded, 0 0 0 4 0 0 0 4 0, 4 0 0 0 0 0 1 1 1e-20, false",
    "the same triangle turned, 0 0 0 4 0 0 0 4 0, 4 0 0 0 0 0 0 4 0, true",
  })
  void verdict(String name, String one, String two, boolean meet) {
    double[] p = new double[18];
    System.arraycopy(numbers(one), 0, p, 0, 9);
    System.arraycopy(numbers(two), 0, p, 9, 9);
    // All three starting corners of each, and both orders.
    for (int i = 0; i < 18; i++) {
      double[] turned = turned(p, i % 3, i / 3 % 3, i >= 9);
      assertThat(selfIntersections(Meshes.soup(turned), 9).length).isEqualTo(meet ? 2 : 0);
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6})
  void treeFindsThePairsThatTryingAllFinds(long seed) {
    TriangleMesh a = Meshes.confetti(seed, 150, 10, 3);
    TriangleMesh b = Meshes.confetti(seed + 100, 110, 10, 3);
    long[] expected = allPairs(a, b);
    assertThat(
            sorted(
                BoundingVolumeHierarchy.of(a)
                    .intersections(BoundingVolumeHierarchy.of(b), 100_000)))
        .isEqualTo(expected);
    assertThat(expected.length).isGreaterThan(20);
    TriangleMesh both = Meshes.both(a, b);
    int within = allPairs(both, both).length - both.triangleCount();
    assertThat(selfIntersections(both, 100_000).length / 2).isEqualTo(within / 2);
  }

  @Test
  void torusThroughAnotherMeetsItAndThatTorusAloneDoesNotMeetItself() {
    TriangleMesh torus = Meshes.torus(10, 3, 40, 20);
    BoundingVolumeHierarchy tree = BoundingVolumeHierarchy.of(torus);
    assertThat(selfIntersections(torus, 10)).isEmpty();
    assertThat(
            tree.intersections(BoundingVolumeHierarchy.of(Meshes.moved(torus, 10, 0, 0)), 10)
                .length)
        .isEqualTo(20);
    assertThat(tree.intersections(BoundingVolumeHierarchy.of(Meshes.moved(torus, 27, 0, 0)), 10))
        .isEmpty();
    assertThat(selfIntersections(Meshes.torus(2, 3, 40, 20), 10)).isNotEmpty();
  }

  /** As in the audit: of a closed mesh by way of its half-edges. */
  private static int[] selfIntersections(TriangleMesh mesh, int most) {
    int[] corners = mesh.triangles();
    HalfEdges edges = new HalfEdges(mesh.vertexCount(), corners);
    boolean closed = MeshTopology.of(mesh.vertexCount(), corners, edges).closed();
    return BoundingVolumeHierarchy.of(mesh)
        .selfIntersections(most, closed ? edges.twin : new int[0]);
  }

  /** Every pair tried by the predicate, the meshes having no vertex in common. */
  private static long[] allPairs(TriangleMesh a, TriangleMesh b) {
    TriangleIntersection pair = new TriangleIntersection();
    double[] p = a.coordinates();
    double[] q = b.coordinates();
    long[] found = new long[a.triangleCount() * b.triangleCount()];
    int count = 0;
    for (int s = 0; s < a.triangleCount(); s++) {
      for (int t = 0; t < b.triangleCount(); t++) {
        for (int i = 0; i < 3; i++) {
          pair.set(i, p, a.corner(s, i));
          pair.set(3 + i, q, b.corner(t, i));
        }
        if (pair.meet()) {
          found[count++] = (long) s << 32 | t;
        }
      }
    }
    return Arrays.copyOf(found, count);
  }

  private static long[] sorted(int[] pairs) {
    long[] out = new long[pairs.length / 2];
    for (int i = 0; i < out.length; i++) {
      out[i] = (long) pairs[2 * i] << 32 | pairs[2 * i + 1];
    }
    Arrays.sort(out);
    return out;
  }

  private static double[] numbers(String text) {
    return Arrays.stream(text.trim().split(" ")).mapToDouble(Double::parseDouble).toArray();
  }

  private static double[] turned(double[] p, int first, int second, boolean swap) {
    double[] out = new double[18];
    for (int i = 0; i < 3; i++) {
      System.arraycopy(p, 3 * ((i + first) % 3), out, (swap ? 9 : 0) + 3 * i, 3);
      System.arraycopy(p, 9 + 3 * ((i + second) % 3), out, (swap ? 0 : 9) + 3 * i, 3);
    }
    return out;
  }
}
