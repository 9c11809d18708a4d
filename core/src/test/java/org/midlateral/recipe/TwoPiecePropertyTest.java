package org.midlateral.recipe;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ConcurrentSkipListMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.midlateral.LongRun;
import org.midlateral.TwoPieceFile;
import org.midlateral.accuracy.ErrorBudget;
import org.midlateral.measurement.Finding;
import org.midlateral.measurement.file.Orders;
import org.midlateral.measurement.key.KeyTable;
import org.midlateral.mesh.query.BoundingVolumeHierarchy;
import org.midlateral.mesh.query.Gap;
import org.midlateral.recipe.product.Product;
import org.midlateral.recipe.product.ProductRecipe;

/**
 * Random orders of both pieces, made and inspected as the program does it. On each that is accepted
 * the two surfaces are held against each other by exact predicates, and the gap between them
 * against the fit gap, G5. What is refused names a key of the file.
 */
public class TwoPiecePropertyTest {
  private static final int WANTED = LongRun.count(30, 1000);

  /** Some four of five are accepted. */
  private static final int DRAWN = LongRun.count(40, 1320);

  private static final double EDGE = 2;

  private final Map<String, Integer> refusals = new ConcurrentSkipListMap<>();
  private final AtomicInteger accepted = new AtomicInteger();

  @Test
  @Tag(LongRun.TAG)
  void thePiecesNeverMeetAndKeepTheirGap() {
    IntStream.range(0, DRAWN).parallel().forEach(this::make);
    System.out.printf(
        Locale.ROOT, "%d orders: %d accepted; refused %s%n", DRAWN, accepted.get(), refusals);
    assertThat(accepted.get()).isGreaterThanOrEqualTo(WANTED);
  }

  private static boolean apart(Orthosis made) {
    BoundingVolumeHierarchy trough = BoundingVolumeHierarchy.of(made.trough().mesh());
    BoundingVolumeHierarchy shell =
        BoundingVolumeHierarchy.of(made.dorsalShell().orElseThrow().mesh());
    Gap gap = trough.gap(shell);
    double least = made.order().design().dorsalShell().fitGap() - ErrorBudget.FIT_GAP;
    return trough.intersections(shell, 1).length == 0 && gap.distance() >= least;
  }

  /** An accepted product is sound and its pieces are apart, whatever its report says. */
  private void make(int seed) {
    Orders.Result read = Orders.parse("unit: mm", "random", TwoPieceFile.entries(seed, EDGE));
    assertThat(read.errors()).as("seed %d", seed).isEmpty();
    Product product = ProductRecipe.make(read.order(), List.of());
    if (product.ok()) {
      accepted.incrementAndGet();
      assertThat(apart(product.orthosis().orElseThrow())).as("seed %d", seed).isTrue();
      for (PieceInspection piece : product.inspection().orElseThrow().pieces()) {
        assertThat(piece.audit().sound()).as("seed %d", seed).isTrue();
        assertThat(piece.audit().holes())
            .isEqualTo(piece.solid().piece().outline().polygon().getNumInteriorRing());
      }
    } else {
      product.findings().stream()
          .filter(f -> f.severity() == Finding.Severity.REFUSAL)
          .forEach(f -> refused(seed, f));
    }
  }

  private void refused(int seed, Finding finding) {
    assertNamesAKey(finding, "seed " + seed);
    refusals.merge(finding.code(), 1, Integer::sum);
  }

  /** A refusal is about a key of the table and has a sentence. */
  public static void assertNamesAKey(Finding finding, String about) {
    assertThat(KeyTable.standard().find(finding.key())).as("%s: %s", about, finding).isPresent();
    assertThat(finding.text()).as(about).hasSizeGreaterThan(40);
  }
}
