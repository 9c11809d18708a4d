package org.midlateral.recipe.product;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.midlateral.document.format.SolidFormat;
import org.midlateral.measurement.Finding;
import org.midlateral.measurement.file.Orders;

/** What is told of an order that is moulded by hand: nothing of printing. */
class ByHandTest {
  private static final Path SAMPLE = Path.of("..", "samples", "middle-inches.yaml");

  @Test
  void whatConcernsThePrinterIsOutOfSight() {
    Product printed = product("making=print");
    Product moulded = product("making=hand", "material.name=low-temperature-sheet");
    assertThat(codes(printed)).anyMatch(code -> code.startsWith("print-"));
    assertThat(codes(moulded)).noneMatch(code -> code.startsWith("print-"));
    assertThat(report(printed)).contains("\"print\" :");
    assertThat(report(moulded)).doesNotContain("\"print\" :", "filament");
    assertThat(moulded.ok()).isTrue();
  }

  private static Product product(String... overrides) {
    Orders.Result read = Orders.read(SAMPLE, List.of(overrides));
    return ProductRecipe.make(read.order(), read.cautions());
  }

  private static List<String> codes(Product product) {
    return product.findings().stream().map(Finding::code).toList();
  }

  private static String report(Product product) {
    return ProductReport.of(product, SolidFormat.USUAL, Optional.empty()).json();
  }
}
