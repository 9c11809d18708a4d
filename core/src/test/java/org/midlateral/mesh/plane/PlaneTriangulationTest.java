package org.midlateral.mesh.plane;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.midlateral.mesh.HalfEdges;

/** What lies against what, as the triangulation hands it on, against a search among the corners. */
class PlaneTriangulationTest {
  static LongStream seeds() {
    return LongStream.range(0, 30);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void sidesLieAgainstTheirOpposites(long seed) {
    PlaneTriangulation made = triangulated(seed);

    assertThat(made.corners()).isNotEmpty();
    assertThat(made.twin()).isEqualTo(searched(made));
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void triangleLeftOutLeavesAnOutline(long seed) {
    PlaneTriangulation made = triangulated(seed);
    Random random = new Random(seed);
    boolean[] kept = new boolean[made.corners().length];
    int expected = 0;
    for (int side = 0; side < kept.length; side += 3) {
      kept[side] = random.nextInt(4) > 0;
      expected += kept[side] ? 3 : 0;
    }
    PlaneTriangulation left = made.only(side -> kept[side]);

    assertThat(left.corners()).hasSize(expected);
    assertThat(left.twin()).isEqualTo(searched(left));
  }

  private static PlaneTriangulation triangulated(long seed) {
    List<double[]> points = PointSets.random(seed);
    double[] x = points.stream().mapToDouble(p -> p[0]).toArray();
    double[] y = points.stream().mapToDouble(p -> p[1]).toArray();
    return DelaunayTriangulation.of(x, y);
  }

  private static int[] searched(PlaneTriangulation triangles) {
    int[] corners = triangles.corners();
    int[] twin = new int[corners.length];
    for (int side = 0; side < corners.length; side++) {
      twin[side] = -1;
      for (int other = 0; other < corners.length; other++) {
        if (corners[other] == corners[HalfEdges.after(side)]
            && corners[HalfEdges.after(other)] == corners[side]) {
          twin[side] = other;
        }
      }
    }
    return twin;
  }
}
