package org.midlateral.recipe.product;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.midlateral.Drawn;
import org.midlateral.LongRun;
import org.midlateral.RandomFile;
import org.midlateral.Seeded;
import org.midlateral.measurement.Finding;
import org.midlateral.measurement.file.Orders;

/** A check says all that making it says: the same findings, in the same order. */
class CheckTellsAllTest {
  private static void assertSame(Orders.Result read) {
    Product made = ProductRecipe.make(read.order(), read.cautions());
    List<Finding> checked = ProductRecipe.checked(made).findings();

    assertThat(checked).isEqualTo(ProductRecipe.withDocuments(made).findings());
    assertThat(checked.subList(0, made.findings().size())).isEqualTo(made.findings());
  }

  @ParameterizedTest
  @MethodSource("org.midlateral.measurement.file.SamplesTest#samples")
  void ofEverySample(Path sample) {
    assertSame(Orders.read(sample, List.of()));
    assertSame(Orders.read(sample, List.of("closure.kind=strap", "material.name=tpu-95a")));
  }

  @Tag(LongRun.TAG)
  @Seeded(value = 2, full = 6)
  void ofRandomOrders(long seed) {
    List<String> entries = RandomFile.entries(new Drawn(seed).even(RandomFile.DRAWS), 1.6);
    Orders.Result read = Orders.parse("unit: mm", "random", entries);
    if (read.ok()) {
      assertSame(read);
    }
  }

  /** There is something to tell that making the pieces alone does not find. */
  @ParameterizedTest
  @MethodSource("org.midlateral.measurement.file.SamplesTest#samples")
  void itIsMoreThanOfThePartsAlone(Path sample) {
    Product made =
        ProductRecipe.make(
            Orders.read(sample, List.of("closure.kind=strap", "relief.sore=yes")).order(),
            List.of());
    Set<Finding> more = new HashSet<>(ProductRecipe.checked(made).findings());
    more.removeAll(new HashSet<>(made.findings()));
    assertThat(more).extracting(Finding::code).contains("strap-over-sore-joint");
  }
}
