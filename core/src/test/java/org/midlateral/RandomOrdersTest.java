package org.midlateral;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Tag;
import org.midlateral.measurement.DesignRefused;
import org.midlateral.measurement.Finding;
import org.midlateral.measurement.InputError;
import org.midlateral.measurement.Order;
import org.midlateral.measurement.file.Orders;
import org.midlateral.measurement.key.KeyTable;
import org.midlateral.mesh.query.MeshAudit;
import org.midlateral.recipe.Inspection;
import org.midlateral.recipe.Orthosis;
import org.midlateral.recipe.product.Product;
import org.midlateral.recipe.product.ProductRecipe;
import org.midlateral.solid.Solid;

/**
 * Random plausible fingers and designs: each is a sound solid or is refused with a sentence that
 * names what was tried. Every sixteenth is made and inspected as the program does it, the others
 * are made once and audited: closed, oriented, one shell, no two triangles meeting, none
 * degenerate.
 */
class RandomOrdersTest {
  private static final int AT_ONCE = 16;
  private static final double MOST_REFUSED = 0.25;

  private static final Tally TROUGHS = new Tally();
  private static final Tally BOTH = new Tally();

  /** How many were sound and how many refused. */
  private record Tally(AtomicInteger sound, AtomicInteger refused) {
    Tally() {
      this(new AtomicInteger(), new AtomicInteger());
    }

    double refusedShare() {
      return (double) refused.get() / (sound.get() + refused.get());
    }
  }

  @Tag(LongRun.TAG)
  @Seeded(value = 8, full = 125)
  void everyTroughIsSoundOrClearlyRefused(long seed) {
    assertThat(wrong(files(seed), TROUGHS, "dorsal-shell.make=no")).isEmpty();
  }

  @Tag(LongRun.TAG)
  @Seeded(value = 1, full = 4)
  void everyPairIsSoundOrClearlyRefused(long seed) {
    assertThat(wrong(files(seed), BOTH, "dorsal-shell.make=yes")).isEmpty();
  }

  private static List<double[]> files(long seed) {
    Drawn drawn = new Drawn(seed);
    return Stream.generate(() -> drawn.even(RandomFile.DRAWS)).limit(AT_ONCE).toList();
  }

  @AfterAll
  static void refusalsDoNotDominate() {
    System.out.printf(Locale.ROOT, "random troughs: %s%n", TROUGHS);
    System.out.printf(Locale.ROOT, "random troughs with dorsal shell: %s%n", BOTH);

    assertThat(TROUGHS.refusedShare()).isLessThan(MOST_REFUSED);
  }

  private static List<String> wrong(List<double[]> files, Tally tally, String more) {
    List<String> wrong = Collections.synchronizedList(new ArrayList<>());
    files.parallelStream()
        .forEach(
            draws -> {
              boolean whole = draws == files.get(0);
              List<String> entries = new ArrayList<>(RandomFile.entries(draws, whole ? 0.8 : 1.6));
              entries.removeIf(entry -> entry.startsWith("dorsal-shell.make="));
              entries.add(more);
              String what = wrong(entries, whole, tally);
              if (what != null) {
                wrong.add(what + " for " + entries);
              }
            });
    return wrong;
  }

  /** What is wrong with what came of a file; null where nothing is. */
  private static String wrong(List<String> entries, boolean whole, Tally tally) {
    Orders.Result read = Orders.parse("unit: mm", "random", entries);
    if (!read.ok()) {
      tally.refused().incrementAndGet();
      return unclear(read.errors().stream().map(InputError::key).toList());
    }
    try {
      List<Finding> refusals = whole ? inspected(read.order()) : audited(read.order());
      (refusals.isEmpty() ? tally.sound() : tally.refused()).incrementAndGet();
      return refusals.isEmpty() ? null : unclear(refusals.stream().map(Finding::key).toList());
    } catch (RuntimeException | StackOverflowError | AssertionError e) {
      return e + " thrown at " + e.getStackTrace()[0];
    }
  }

  private static List<Finding> inspected(Order order) {
    Product product = ProductRecipe.make(order, List.of());
    if (product.isMade()) {
      for (Solid solid : product.orthosis().orElseThrow().solids()) {
        assertThat(MeshAudit.of(solid.mesh()).sound()).isTrue();
      }
    }
    List<Finding> refusals = refusals(product.findings());
    assertThat(refusals).allMatch(f -> namesAKey(f.text()), "names a key in its text");
    return refusals;
  }

  private static List<Finding> audited(Order order) {
    try {
      Orthosis made = Orthosis.make(order);
      for (Solid solid : made.solids()) {
        if (!MeshAudit.of(solid.mesh()).sound()) {
          List<Finding> refusals = refusals(Inspection.of(made).findings());
          assertThat(refusals).as("what the inspection says of an unsound solid").isNotEmpty();
          return refusals;
        }
      }
      return made.missing().stream().toList();
    } catch (DesignRefused e) {
      return List.of(e.finding());
    }
  }

  private static List<Finding> refusals(List<Finding> findings) {
    return findings.stream().filter(f -> f.severity() == Finding.Severity.REFUSAL).toList();
  }

  private static String unclear(List<String> keys) {
    boolean known = keys.stream().allMatch(key -> KeyTable.standard().find(key).isPresent());
    return known && !keys.isEmpty() ? null : "refused over keys that are none: " + keys;
  }

  private static boolean namesAKey(String text) {
    return KeyTable.standard().keys().stream()
        .filter(key -> key.path().contains("."))
        .anyMatch(key -> text.contains(key.path()));
  }
}
