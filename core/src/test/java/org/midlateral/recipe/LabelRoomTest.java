package org.midlateral.recipe;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.midlateral.cut.Lettering;
import org.midlateral.document.drawing.Typeface;
import org.midlateral.measurement.Finding;
import org.midlateral.measurement.file.Orders;
import org.midlateral.measurement.key.KeyTable;
import org.midlateral.recipe.product.Product;
import org.midlateral.recipe.product.ProductRecipe;

/** A reference that is too long for a piece never ends the order. */
class LabelRoomTest {
  private static final String LONG = "invented-0123456789-0123456789-012345678";

  private static Product product(String reference, String... more) {
    List<String> set = new ArrayList<>(List.of(more));
    set.addAll(List.of("reference=" + reference, "print.label=yes"));
    Orders.Result read = Orders.read(Path.of("..", "samples", "slim-little.yaml"), set);
    assertThat(read.errors()).isEmpty();
    return ProductRecipe.make(read.order(), List.of());
  }

  private static List<String> told(Product product) {
    return product.findings().stream()
        .filter(f -> f.code().equals("label-room"))
        .filter(f -> f.severity() == Finding.Severity.CAUTION)
        .map(Finding::text)
        .toList();
  }

  /** The signs that the key table allows in a reference: none goes without its letter. */
  @Test
  void everySignOfAReferenceCanBeRaised() {
    String pattern = KeyTable.standard().find("reference").orElseThrow().pattern();
    List<String> signs =
        IntStream.rangeClosed(0, Character.MAX_VALUE)
            .mapToObj(Character::toString)
            .filter(sign -> ("a" + sign).matches(pattern))
            .toList();

    assertThat(signs).hasSize(2 * 26 + 10 + 3);
    assertThat(signs)
        .allMatch(sign -> Lettering.outlines(List.of(sign), 4).getArea() > 0.5)
        .doesNotHaveDuplicates();
    assertThat(Typeface.BOLD.shown(String.join("", signs))).isEqualTo(String.join("", signs));
  }

  @Test
  void aShortOneIsRaisedWhole() {
    Product product = product("F7");
    assertThat(product.ok()).isTrue();
    assertThat(told(product)).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"hand=right", "hand=left"})
  void ofALongOneItsLastLettersAreRaised(String hand) {
    Product product = product(LONG, hand);
    assertThat(product.ok()).isTrue();
    // The last letters of the reference, as many as are told.
    assertThat(told(product))
        .isNotEmpty()
        .allSatisfy(
            text -> {
              assertThat(text).startsWith("The reference, 40 letters long, does not fit on the ");
              int room = Integer.parseInt(text.replaceAll(".*room for (\\d+):.*", "$1"));
              assertThat(room).isBetween(3, 39);
              assertThat(text).contains("the last of them, " + LONG.substring(40 - room) + ";");
            });
  }

  @Test
  void whereNoneHasRoomThePieceHasNone() throws Exception {
    Product product = product(LONG, "dorsal-shell.length=16");
    assertThat(product.ok()).isTrue();
    assertThat(told(product))
        .anyMatch(
            text -> text.contains("dorsal shell, which has room for fewer than 3: it has no"));
    Orthosis made = product.orthosis().orElseThrow();
    // The sign at its proximal end alone is raised.
    assertThat(made.dorsalShell().orElseThrow().piece().raised())
        .isEqualTo(made.plainShell().orElseThrow().raised());
  }
}
