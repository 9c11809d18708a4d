package org.midlateral.recipe.product;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.midlateral.measurement.Order;
import org.midlateral.measurement.file.Orders;
import org.midlateral.recipe.PieceInspection;
import org.midlateral.solid.SlowChecks;

/** Invented fingers with a swollen PIP joint on which pieces were once refused for their mesh. */
class HardFingersTest {
  static Stream<Arguments> fingers() {
    return Stream.of(
        Arguments.of(
            "the rim's dense points left slivers beside them",
            finger(
                "circumference.proximal-phalanx=47.2", "circumference.pip=58.1",
                "circumference.middle-phalanx=50.5", "circumference.tip=37.9",
                "length.palmar-crease-to-web=20.4", "length.web-to-pip=20.7",
                "length.pip-to-dip=12.7", "length.dip-to-tip=24.8")),
        Arguments.of(
            "the flare ends over a crease of the skin",
            finger(
                "circumference.proximal-phalanx=50.5", "circumference.pip=62.0",
                "circumference.middle-phalanx=51.4", "circumference.tip=41.7",
                "length.palmar-crease-to-web=14.8", "length.web-to-pip=15.3",
                "length.pip-to-dip=17.5", "length.dip-to-tip=18.3")),
        Arguments.of(
            "the flare passes steeply over a crease of the skin",
            finger(
                "circumference.proximal-phalanx=52.7", "circumference.pip=62.6",
                "circumference.middle-phalanx=56.8", "circumference.tip=40.3",
                "length.palmar-crease-to-web=20.5", "length.web-to-pip=14.3",
                "length.pip-to-dip=13.6", "length.dip-to-tip=23.1")));
  }

  private static List<String> finger(String... measured) {
    return Stream.concat(
            Stream.of("reference=invented", "hand=left", "digit=little"), Stream.of(measured))
        .toList();
  }

  /** Made, and sound by the slow checks as well. */
  @ParameterizedTest(name = "{0}")
  @MethodSource("fingers")
  void bothPiecesAreMade(String once, List<String> entries) {
    Order order = Orders.row(entries, "invented", 1, List.of()).order();
    Product product = ProductRecipe.make(order, List.of());

    assertThat(product.ok()).as(product.findings().toString()).isTrue();
    assertThat(product.orthosis().orElseThrow().dorsalShell()).isPresent();
    for (PieceInspection piece : product.inspection().orElseThrow().pieces()) {
      assertThat(SlowChecks.faults(piece.solid(), piece.conformance())).isEmpty();
    }
  }
}
