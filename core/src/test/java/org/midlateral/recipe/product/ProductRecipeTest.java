package org.midlateral.recipe.product;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.midlateral.measurement.DesignRefused;
import org.midlateral.measurement.Finding;
import org.midlateral.measurement.Order;
import org.midlateral.measurement.file.Orders;
import org.midlateral.recipe.Inspection;
import org.midlateral.recipe.Orthosis;
import org.midlateral.recipe.rigidity.BendOfPieces;
import org.midlateral.recipe.rigidity.Rigidity;
import org.midlateral.recipe.rigidity.RigidityRecipe;

/** What is made once is inspected as it is, and made again only where its mesh misses a bound. */
class ProductRecipeTest {
  private final Orders.Result read =
      Orders.read(
          Path.of("..", "samples", "slim-little.yaml"), List.of("print.edge-length=1.2 mm"));

  private static String report(Product product) {
    return ProductReport.of(product, List.of(), Optional.empty()).json();
  }

  @Test
  void anOrthosisMadeBeforeIsToldAsOneMadeNow() throws Exception {
    Orthosis made = Orthosis.make(read.order());
    Product product = ProductRecipe.inspect(made, read.cautions());

    assertThat(product.orthosis()).containsSame(made);
    assertThat(report(product)).isEqualTo(report(ProductRecipe.make(read.order(), List.of())));
  }

  /** What is computed meanwhile comes out as what is computed afterwards. */
  @Test
  void aProductIsTheSameHoweverItsDocumentsAreBegun() {
    Product together = ProductRecipe.makeWithDocuments(read.order(), read.cautions());
    Product after = ProductRecipe.withDocuments(ProductRecipe.make(read.order(), read.cautions()));

    assertThat(together.documents()).isPresent();
    assertThat(report(together)).isEqualTo(report(after));
    assertThat(together.findings()).isEqualTo(after.findings());
  }

  /** A trough without room: nothing is waited for that was begun for it. */
  @Test
  void aRefusedOrderHasNoDocuments() {
    Order without =
        Orders.read(
                Path.of("..", "samples", "slim-little.yaml"),
                List.of("length.palmar-crease-to-web=12 mm", "trough.proximal-margin=12 mm"))
            .order();
    Product refused = ProductRecipe.makeWithDocuments(without, List.of());

    assertThat(refused.isMade()).isFalse();
    assertThat(refused.documents()).isEmpty();
    assertThatThrownBy(() -> RigidityRecipe.of(without, Rigidity.USUAL_WRAPS, BendOfPieces.BEAMS))
        .isInstanceOf(DesignRefused.class);
  }

  /** With the shell of another order, that lies nearer to the trough than this one asks for. */
  private Orthosis withNearShell(Orthosis own) throws Exception {
    Orthosis near =
        Orthosis.make(
            Orders.read(
                    Path.of("..", "samples", "slim-little.yaml"),
                    List.of("print.edge-length=1.2 mm", "dorsal-shell.fit-gap=0.15"))
                .order());
    return new Orthosis(
        read.order(),
        own.digit(),
        own.relief(),
        own.bare(),
        own.plainTrough(),
        near.plainShell(),
        own.trough(),
        near.dorsalShell(),
        Optional.empty());
  }

  /** The trough's own mesh misses a bound too, which a finer one mends: that is not the reason. */
  @Test
  void theReasonToldIsTheShells() throws Exception {
    Product product =
        ProductRecipe.inspect(withNearShell(Orthosis.make(read.order(), 1.5)), List.of());

    assertThat(product.isMade()).isTrue();
    assertThat(product.findings().get(0).code()).isEqualTo("fit-gap");
    assertThat(product.findings().stream().skip(1))
        .noneMatch(f -> f.severity() == Finding.Severity.REFUSAL);
  }

  @Test
  void aShellThatFailsItsInspectionTakesNothingWithIt() throws Exception {
    Orthosis mixed = withNearShell(Orthosis.make(read.order()));

    Product product = ProductRecipe.inspect(mixed, read.cautions());

    assertThat(product.isMade()).isTrue();
    assertThat(product.ok()).isFalse();
    assertThat(product.findings().get(0).code()).isEqualTo("fit-gap");
    assertThat(product.findings().get(0).text()).startsWith("The dorsal shell is missing");
    Orthosis alone = product.orthosis().orElseThrow();
    assertThat(alone.solids()).containsExactly(mixed.trough());
    assertThat(alone.plainShell()).isEmpty();
    assertThat(ProductRecipe.withDocuments(product).documents()).isPresent();
    assertThat(report(product)).contains("\"trough\"").doesNotContain("\"dorsal-shell\" : {");
  }

  @Test
  void aMeshTooCoarseIsMadeAgain() throws Exception {
    Orthosis coarse = Orthosis.make(read.order(), 1.5);
    assertThat(Inspection.of(coarse).mendable()).isTrue();

    Product product = ProductRecipe.inspect(coarse, List.of());

    assertThat(product.ok()).isTrue();
    assertThat(product.orthosis().orElseThrow().trough().mesh().triangleCount())
        .isGreaterThan(coarse.trough().mesh().triangleCount());
  }
}
