package org.midlateral.recipe.product;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ConcurrentSkipListMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.midlateral.Drawn;
import org.midlateral.RandomFile;
import org.midlateral.TwoPieceFile;
import org.midlateral.measurement.Finding;
import org.midlateral.measurement.Remedy;
import org.midlateral.measurement.file.Orders;

/** Every change that a refusal names was tried: the order with it is made, whole. */
class AdviceTest {
  /** Refused designs that are looked at; 300, by the property, take a quarter of an hour. */
  private static final int REFUSED = Integer.getInteger("midlateral.refused", 4);

  /** Designs drawn at once; one in five or six of them is refused. */
  private static final int AT_ONCE = 8;

  private static final double EDGE = 2;

  /** Share of the refused to which something is advised. */
  private static final double ADVISED = 0.75;

  private final Map<String, Integer> codes = new ConcurrentSkipListMap<>();
  private final AtomicInteger refused = new AtomicInteger();
  private final AtomicInteger advised = new AtomicInteger();
  private final AtomicInteger changes = new AtomicInteger();

  @Test
  void everyChangeThatIsAdvisedPasses() {
    for (int seed = 0; refused.get() < REFUSED; seed += AT_ONCE) {
      IntStream.range(seed, seed + AT_ONCE).parallel().forEach(this::make);
    }
    System.out.printf(
        Locale.ROOT,
        "%d refused designs, %s: %d advised, %d changes%n",
        refused.get(),
        codes,
        advised.get(),
        changes.get());
    assertThat(advised.get()).isGreaterThanOrEqualTo((int) (ADVISED * refused.get()));
  }

  /** Two of three with the choices of a pair, one of a trough with every key drawn. */
  private static List<String> entries(int seed) {
    if (seed % 3 < 2) {
      return TwoPieceFile.entries(seed, EDGE);
    }
    double[] draws = new Drawn(seed).even(RandomFile.DRAWS);
    return with(RandomFile.entries(draws, EDGE), List.of("dorsal-shell.make=no"));
  }

  /** Entries with others in the place of those of the same keys. */
  private static List<String> with(List<String> entries, List<String> others) {
    List<String> keys = others.stream().map(AdviceTest::key).toList();
    return Stream.concat(
            entries.stream().filter(entry -> !keys.contains(key(entry))), others.stream())
        .toList();
  }

  private static String key(String entry) {
    return entry.substring(0, entry.indexOf('='));
  }

  private static Orders.Result read(List<String> entries) {
    return Orders.parse("unit: mm", "random", entries);
  }

  private void make(int seed) {
    List<String> entries = entries(seed);
    Orders.Result read = read(entries);
    if (!read.ok()) {
      return;
    }
    Product product = ProductRecipe.make(read.order(), List.of());
    List<Finding> refusals =
        product.findings().stream().filter(f -> f.severity() == Finding.Severity.REFUSAL).toList();
    if (refusals.isEmpty()) {
      return;
    }
    refused.incrementAndGet();
    Finding first = refusals.get(0);
    codes.merge(first.code(), 1, Integer::sum);
    assertThat(first.remedies()).hasSizeLessThanOrEqualTo(Advice.MOST);
    assertThat(refusals).allMatch(f -> f.remedies().equals(first.remedies()));
    if (product.isMade()) {
      assertThat(product.findings().get(0)).isSameAs(first);
      assertThat(product.orthosis().orElseThrow().dorsalShell()).isEmpty();
      assertThat(first.remedies()).contains(new Remedy("dorsal-shell.make", "no", false));
    }
    advised.addAndGet(first.remedies().isEmpty() ? 0 : 1);
    for (Remedy remedy : first.remedies()) {
      assertThat(first.text())
          .contains("Tried, and works: ", String.join(" with ", remedy.entries()));
      List<String> changed = with(entries, remedy.entries());
      assertThat(ProductRecipe.make(read(changed).order(), List.of()).findings())
          .as("seed %d with %s", seed, remedy.entries())
          .noneMatch(f -> f.severity() == Finding.Severity.REFUSAL);
      changes.incrementAndGet();
    }
  }
}
