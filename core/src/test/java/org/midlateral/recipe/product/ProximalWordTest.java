package org.midlateral.recipe.product;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.midlateral.measurement.Finding;
import org.midlateral.measurement.file.Orders;
import org.midlateral.mesh.TriangleMesh;
import org.midlateral.piece.Piece;
import org.midlateral.recipe.Orthosis;
import org.midlateral.solid.Solid;

/** A shell that bears the word passes every check of its mesh. */
class ProximalWordTest {
  @ParameterizedTest
  @MethodSource("org.midlateral.measurement.file.SamplesTest#samples")
  void theSamplesPassWithTheWord(Path sample) {
    Orders.Result read =
        Orders.read(sample, List.of("print.proximal=word", "dorsal-shell.length=auto"));
    Product product = ProductRecipe.make(read.order(), read.cautions());
    assertThat(product.ok()).isTrue();
    // The shell of the slim finger is too short for it.
    boolean bears = !sample.toString().contains("slim-little");
    Solid shell = product.orthosis().orElseThrow().dorsalShell().orElseThrow();
    // The hook; the arrow and eight letters.
    assertThat(shell.piece().raised().orElseThrow().shape().getNumGeometries())
        .isEqualTo(bears ? 10 : 1);
    assertThat(product.findings())
        .extracting(Finding::code)
        .filteredOn("proximal-word"::equals)
        .hasSize(bears ? 0 : 1);
  }

  /** Nothing is raised on what is moulded. */
  @Test
  void aPieceMadeByHandBearsNoWord() {
    Product product = ring("making=hand");
    Solid shell = product.orthosis().orElseThrow().dorsalShell().orElseThrow();
    assertThat(shell.piece().raised().orElseThrow().shape().getNumGeometries()).isEqualTo(1);
    assertThat(product.findings()).extracting(Finding::code).doesNotContain("proximal-word");
  }

  /** On the slope of a relief letters would stand askew. */
  @Test
  void theWordKeepsOffAReliefOnTheDorsum() {
    Orthosis made =
        ring("relief.bubbles=[{station: 24, girth: 34.9, height: 1, length: 7, width: 6}]")
            .orthosis()
            .orElseThrow();
    Piece shell = made.dorsalShell().orElseThrow().piece();
    assertThat(made.relief().bubbles())
        .allSatisfy(
            bubble ->
                assertThat(shell.raised().orElseThrow().shape().getCoordinates())
                    .noneMatch(c -> bubble.isNear(shell.skinGirth(c.x, c.y), c.y, 0)));
  }

  /** In a drawing the wall is even, all else as it is. */
  @Test
  void aDrawingLeavesOutWhatIsRaised() {
    Solid shell = ring("making=print").orthosis().orElseThrow().dorsalShell().orElseThrow();
    Solid drawn = shell.withoutRaised();
    int inner = drawn.innerVertices();
    double wall = drawn.piece().wall();
    int lowered = 0;
    for (int i = 0; i < inner; i++) {
      TriangleMesh mesh = drawn.mesh();
      assertThat(mesh.vertex(i)).isEqualTo(shell.mesh().vertex(i));
      assertThat(mesh.vertex(i).distance(mesh.vertex(inner + i))).isCloseTo(wall, within(1e-9));
      lowered +=
          shell.mesh().vertex(i).distance(shell.mesh().vertex(inner + i)) > wall + 0.1 ? 1 : 0;
    }
    assertThat(lowered).isGreaterThan(100);
  }

  private static Product ring(String entry) {
    Orders.Result read = Orders.read(Path.of("..", "samples", "bulbous-ring.yaml"), List.of(entry));
    return ProductRecipe.make(read.order(), read.cautions());
  }
}
