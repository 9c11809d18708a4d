package org.midlateral.recipe.product;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.midlateral.measurement.Finding;
import org.midlateral.measurement.file.Orders;

/** A shell that bears the word passes every check of its mesh. */
class ProximalWordTest {
  @ParameterizedTest
  @MethodSource("org.midlateral.measurement.file.SamplesTest#samples")
  void theSamplesPassWithTheWord(Path sample) {
    // Long enough for the word on each of them that has a shell.
    Orders.Result read =
        Orders.read(sample, List.of("print.proximal=word", "dorsal-shell.length=45 mm"));
    Product product = ProductRecipe.make(read.order(), read.cautions());
    assertThat(product.isMade()).isTrue();
    assertThat(product.orthosis().orElseThrow().dorsalShell().isPresent())
        .isEqualTo(product.orthosis().orElseThrow().missing().isEmpty() && isAsked(product));
    assertThat(product.findings())
        .filteredOn(f -> f.severity() == Finding.Severity.REFUSAL)
        .extracting(Finding::code)
        .allMatch(code -> code.startsWith("dorsal-shell-length"));
  }

  private static boolean isAsked(Product product) {
    return product.order().design().dorsalShell().make();
  }
}
