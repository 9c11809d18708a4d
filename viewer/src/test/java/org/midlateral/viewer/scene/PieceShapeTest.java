package org.midlateral.viewer.scene;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.midlateral.measurement.file.Orders;
import org.midlateral.recipe.Orthosis;
import org.midlateral.solid.Solid;

class PieceShapeTest {
  /** The rim takes what is next to it: a mean of values never leaves their span. */
  @Test
  void innerValuesAreSpreadToAll() throws Exception {
    List<String> coarse = List.of("print.edge-length=1.2 mm", "trough.vents.diameter=2 mm");
    Path file = Path.of("../samples/slim-little.yaml");
    Solid solid = Orthosis.make(Orders.read(file, coarse).order()).trough();
    double[] inner = new double[solid.innerVertices()];
    Arrays.setAll(inner, i -> 1 + solid.station(i) - solid.piece().outline().proximal());

    double[] all = PieceShape.of(solid).spread(inner);

    double least = Arrays.stream(inner).min().orElseThrow();
    double most = Arrays.stream(inner).max().orElseThrow();
    assertThat(least).isPositive();
    assertThat(all).hasSizeGreaterThan(2 * inner.length);
    for (int i = 0; i < all.length; i++) {
      if (i < 2 * inner.length) {
        assertThat(all[i]).isEqualTo(inner[i % inner.length]);
      } else {
        assertThat(all[i]).isBetween(least, most);
      }
    }
  }
}
