package org.midlateral.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.midlateral.measurement.Orders;
import org.midlateral.recipe.PieceInspection;
import org.midlateral.recipe.Product;

/** What saves time in the inspection of a solid finds the same as the long way. */
class ShortCutsTest {
  @ParameterizedTest
  @ValueSource(strings = {"bulbous-ring", "left-deficit", "slim-little"})
  void samplesPassTheLongWayToo(String sample) {
    Path file = Path.of("../samples", sample + ".yaml");
    Product product = Product.make(Orders.read(file, List.of()).order(), List.of());
    for (PieceInspection piece : product.inspection().orElseThrow().pieces()) {
      assertThat(SlowChecks.faults(piece.solid(), piece.conformance().minWall())).isEmpty();
    }
  }

  /** Closed meshes shaken until they fold into themselves: the very same pairs. */
  @Test
  void shakenMeshesMeetInTheSamePlaces() {
    Random random = new Random(3);
    int folded = 0;
    for (int i = 0; i < 60; i++) {
      double[] xyz = Meshes.torus(10, 3, 24, 16).coordinates();
      double size = 0.06 * i;
      for (int k = 0; k < xyz.length; k++) {
        xyz[k] += size * (random.nextDouble() - 0.5);
      }
      TriangleMesh mesh = new TriangleMesh(xyz, Meshes.torus(10, 3, 24, 16).triangles());
      MeshTree tree = MeshTree.of(mesh);
      TreeSet<Long> fast = pairs(tree.meetings(100_000, true));
      assertThat(fast).isEqualTo(pairs(tree.meetings(100_000, false)));
      folded += fast.isEmpty() ? 0 : 1;
    }
    assertThat(folded).isBetween(20, 59);
  }

  @Test
  void aBoundedGapIsTheSmallestOrNothing() {
    MeshTree inner = MeshTree.of(Meshes.halfTube(8, 40, 30, 24, -1));
    MeshTree outer = MeshTree.of(Meshes.halfTube(9.6, 40, 30, 24, 1));
    double gap = inner.gap(outer).distance();
    assertThat(inner.gap(outer, gap * 0.999)).isEmpty();
    assertThat(inner.gap(outer, gap * 1.001).orElseThrow().distance())
        .isCloseTo(gap, within(1e-12));
  }

  private static TreeSet<Long> pairs(int[] found) {
    TreeSet<Long> pairs = new TreeSet<>();
    for (int i = 0; i < found.length; i += 2) {
      long low = Math.min(found[i], found[i + 1]);
      pairs.add(low << 32 | Math.max(found[i], found[i + 1]));
    }
    return pairs;
  }
}
