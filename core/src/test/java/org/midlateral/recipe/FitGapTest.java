package org.midlateral.recipe;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.midlateral.document.format.SolidFormat;
import org.midlateral.measurement.file.Orders;
import org.midlateral.recipe.product.Product;
import org.midlateral.recipe.product.ProductRecipe;
import org.midlateral.recipe.product.ProductReport;

/** The gap over the overlap, where there is one. */
class FitGapTest {
  private static Product product(String... design) {
    Orders.Result read =
        Orders.read(Path.of("..", "samples", "left-deficit.yaml"), List.of(design));
    assertThat(read.errors()).isEmpty();
    return ProductRecipe.make(read.order(), List.of());
  }

  /** Both walls thick, or the overlap short: the mean is the gap asked for all the same. */
  @ParameterizedTest
  @ValueSource(strings = {"trough.wall=3.2 mm", "dorsal-shell.overlap=2.5 mm"})
  void theMeanIsOfPlacesOnTheOverlap(String design) {
    FitTogether fit = product(design).inspection().orElseThrow().together().orElseThrow();
    assertThat(fit.fitGap().mean()).isCloseTo(0.3, within(0.05));
    assertThat(fit.fitGap().max()).isGreaterThan(fit.fitGap().mean());
    assertThat(fit.fitGap().min()).isLessThan(fit.fitGap().mean());
  }

  @Test
  void whereTheRoundsOfTheRimsAloneOverlapThereIsNoMean() throws Exception {
    Product product = product("dorsal-shell.overlap=1 mm");
    JsonNode gap =
        new ObjectMapper()
            .readTree(ProductReport.of(product, SolidFormat.USUAL, Optional.empty()).json())
            .at("/clearance/fitGap");
    assertThat(gap.get("min").doubleValue()).isPositive();
    assertThat(gap.get("mean").isNull()).isTrue();
    assertThat(gap.get("max").isNull()).isTrue();
  }
}
