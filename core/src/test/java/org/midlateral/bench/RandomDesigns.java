package org.midlateral.bench;

import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.midlateral.RandomFile;
import org.midlateral.measurement.Finding;
import org.midlateral.measurement.file.Orders;
import org.midlateral.recipe.PieceInspection;
import org.midlateral.recipe.product.Product;
import org.midlateral.recipe.product.ProductRecipe;
import org.midlateral.solid.SlowChecks;

/**
 * Random designs through every check of the meshes: a run of hours, outside CI.
 *
 * <pre>
 * mvn -q -pl core -am test-compile -Pbench \
 *     -Dbench.class=org.midlateral.bench.RandomDesigns -Dbench=20000
 * </pre>
 *
 * <p>Arguments: how many designs that are accepted are wanted (100), the seed (1), the edge length
 * (1.2 mm). Every accepted design goes through the slow forms of the checks as well. Prints every
 * design that was refused for its mesh though no rule of the design forbade it, and every one that
 * was accepted in error; how many were drawn and accepted after each thousand, and at the end how
 * many were refused and for what.
 */
public final class RandomDesigns {
  /** What a mesh check finds; anything else is a rule of the design. */
  private static final List<String> MESH_CODES =
      List.of(
          "surface",
          "wall",
          "clearance",
          "relief",
          "trim",
          "chord-error",
          "sliver",
          "circumference",
          "pieces-meet",
          "fit-gap");

  private final long seed;
  private final double edgeLength;
  private final AtomicInteger accepted = new AtomicInteger();
  private final AtomicInteger unsound = new AtomicInteger();
  private final AtomicInteger wrong = new AtomicInteger();
  private final Map<String, Integer> refused = new TreeMap<>();

  private RandomDesigns(long seed, double edgeLength) {
    this.seed = seed;
    this.edgeLength = edgeLength;
  }

  public static void main(String[] arguments) {
    int wanted = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 100;
    long seed = arguments.length > 1 ? Long.parseLong(arguments[1]) : 1;
    double edge = arguments.length > 2 ? Double.parseDouble(arguments[2]) : 1.2;
    RandomDesigns run = new RandomDesigns(seed, edge);
    int drawn = 0;
    while (run.accepted.get() < wanted) {
      int step = Math.max(1, Math.min(1000, wanted - run.accepted.get()));
      IntStream.range(drawn, drawn + step).parallel().forEach(run::one);
      drawn += step;
      System.out.printf(
          "drawn %d, wrong input %d, accepted %d, pieces of these accepted in error %d%n",
          drawn, run.wrong.get(), run.accepted.get(), run.unsound.get());
    }
    System.out.println("refused, by code: " + run.refused);
  }

  private void one(int index) {
    Random random = new Random(seed * 1_000_003 + index);
    double[] draws = random.doubles(RandomFile.DRAWS).toArray();
    List<String> entries = RandomFile.entries(draws, edgeLength);
    Orders.Result read = Orders.row(entries, "random", index, List.of());
    if (!read.ok()) {
      wrong.incrementAndGet();
      return;
    }
    Product product = ProductRecipe.make(read.order(), read.cautions());
    if (product.ok()) {
      accepted.incrementAndGet();
      for (PieceInspection piece : product.inspection().orElseThrow().pieces()) {
        List<String> faults = SlowChecks.faults(piece.solid(), piece.conformance());
        if (!faults.isEmpty()) {
          unsound.incrementAndGet();
          System.out.println("accepted in error: " + faults + " " + entries);
        }
      }
      return;
    }
    product.findings().stream()
        .filter(finding -> finding.severity() == Finding.Severity.REFUSAL)
        .forEach(finding -> refused(index, finding));
  }

  private synchronized void refused(int index, Finding finding) {
    refused.merge(finding.code(), 1, Integer::sum);
    if (MESH_CODES.contains(finding.code())) {
      System.out.println("mesh check: " + index + ": " + finding.text());
    }
  }
}
