package org.midlateral.recipe.product;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.midlateral.measurement.Finding;
import org.midlateral.measurement.file.Orders;
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
}
