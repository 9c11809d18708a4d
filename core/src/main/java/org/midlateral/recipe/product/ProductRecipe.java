package org.midlateral.recipe.product;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.midlateral.measurement.DesignRefused;
import org.midlateral.measurement.Finding;
import org.midlateral.measurement.Order;
import org.midlateral.recipe.Inspection;
import org.midlateral.recipe.Orthosis;
import org.midlateral.recipe.PrintCheck;
import org.midlateral.recipe.Report;
import org.midlateral.recipe.Stopwatch;
import org.midlateral.recipe.rigidity.BendOfPieces;
import org.midlateral.recipe.rigidity.Comparison;
import org.midlateral.recipe.rigidity.Rigidity;
import org.midlateral.work.Interruption;

/** The steps behind {@link Product}: the pieces made and inspected, then the documents drawn. */
public final class ProductRecipe {
  /** A mesh that misses a bound is made again, finer, then with points a little elsewhere. */
  private static final double[] FINER = {0.85, 0.7, 0.93, 1.08, 0.78, 0.6};

  private final Order order;
  private final List<Finding> findings;
  private final Stopwatch watch = new Stopwatch();

  private ProductRecipe(Order order, List<Finding> cautions) {
    this.order = order;
    this.findings = new ArrayList<>(cautions);
  }

  /**
   * Makes and inspects an order, on two threads.
   *
   * @param cautions found on reading it
   * @throws java.util.concurrent.CancellationException where the thread is interrupted meanwhile
   */
  public static Product make(Order order, List<Finding> cautions) {
    return new ProductRecipe(order, cautions).run(Optional.empty());
  }

  /**
   * Inspects an orthosis that is made already, on two threads; only where its mesh misses a bound
   * is it made again, finer.
   *
   * @param made as {@link Orthosis#make(Order)} gives it
   * @param cautions found on reading its order
   * @throws java.util.concurrent.CancellationException where the thread is interrupted meanwhile
   */
  public static Product inspect(Orthosis made, List<Finding> cautions) {
    return new ProductRecipe(made.order(), cautions).run(Optional.of(made));
  }

  /**
   * Why a trough cannot be made, with what was tried on its order and passes.
   *
   * @throws java.util.concurrent.CancellationException where the thread is interrupted meanwhile
   */
  public static Finding advised(Order order, DesignRefused refused) {
    ProductRecipe recipe = new ProductRecipe(order, List.of());
    return recipe.advised(List.of(refused.finding()), false).get(0);
  }

  private Product run(Optional<Orthosis> made) {
    try {
      Interruption.ifInterrupted();
      Orthosis orthosis = made.isPresent() ? made.get() : Orthosis.make(order);
      watch.geometryEnds();
      return product(withTrough(best(orthosis), orthosis));
    } catch (DesignRefused refused) {
      watch.geometryEnds();
      findings.addAll(advised(List.of(refused.finding()), false));
      return new Product(
          order,
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          findings,
          watch.timing());
    }
  }

  /**
   * An orthosis and what was found on it.
   *
   * @param ofShell what spoke against its shell, at any fineness that was tried
   */
  private record Inspected(Orthosis orthosis, Inspection inspection, Optional<Finding> ofShell) {}

  /** An orthosis inspected, or the best of finer ones where its mesh misses a bound. */
  private Inspected best(Orthosis first) {
    Orthosis best = first;
    Inspection inspection = inspection(first);
    Optional<Finding> ofShell = inspection.refusalOfShell();
    boolean mendable = inspection.mendable();
    for (int i = 0; i < FINER.length && mendable; i++) {
      Interruption.ifInterrupted();
      Optional<Orthosis> finer = finer(first, FINER[i]);
      watch.geometryEnds();
      if (finer.isEmpty() || finer.get().solids().size() < first.solids().size()) {
        Optional<Finding> met = finer.flatMap(Orthosis::shellRefused);
        return new Inspected(best, inspection, ofShell.or(() -> met));
      }
      Inspection found = inspection(finer.get());
      ofShell = ofShell.or(found::refusalOfShell);
      mendable = found.mendable();
      // Where none passes, the best of them is told, which need not be the finest.
      if (found.isBetterThan(inspection)) {
        best = finer.get();
        inspection = found;
      }
    }
    return new Inspected(best, inspection, ofShell);
  }

  /** The same pieces with finer meshes; empty where the trough is refused then. */
  private static Optional<Orthosis> finer(Orthosis first, double fineness) {
    Optional<Finding> missing = first.shellRefused();
    Order asked = missing.isPresent() ? first.order().withoutDorsalShell() : first.order();
    try {
      Orthosis made = Orthosis.make(asked, fineness);
      return Optional.of(missing.map(made::withoutShell).orElse(made));
    } catch (DesignRefused e) {
      return Optional.empty();
    }
  }

  /** Where its shell is refused and its trough alone would not be, the trough alone. */
  private Inspected withTrough(Inspected asked, Orthosis first) {
    if (asked.inspection.ok() || asked.ofShell.isEmpty()) {
      return asked;
    }
    Inspected alone = best(first.withoutShell(asked.ofShell.get()));
    return alone.inspection.ok() ? alone : asked;
  }

  /** What was found on it, then what is told of the order. */
  private Product product(Inspected made) {
    Orthosis orthosis = made.orthosis;
    Inspection inspection = made.inspection;
    watch.checksEnd();
    Optional<Finding> missing = orthosis.missing();
    if (inspection.ok()) {
      // First of all: whoever waits for two pieces gets one.
      missing.ifPresent(shell -> findings.addAll(0, advised(List.of(shell), true)));
      findings.addAll(orthosis.findings());
      findings.addAll(inspection.findings());
    } else {
      findings.addAll(orthosis.findings());
      findings.addAll(advised(inspection.findings(), false));
    }
    PrintCheck print = PrintCheck.of(orthosis, inspection);
    if (!order.byHand()) {
      findings.addAll(print.findings());
    }
    watch.checksEnd();
    return new Product(
        order,
        Optional.of(orthosis),
        Optional.of(inspection),
        Optional.of(print),
        Optional.empty(),
        findings,
        watch.timing());
  }

  /** What was found, each refusal with what else was tried and passes. */
  private List<Finding> advised(List<Finding> found, boolean ofShell) {
    Finding first = found.stream().filter(ProductRecipe::isRefusal).findFirst().orElseThrow();
    Predicate<Order> passes = other -> new ProductRecipe(other, List.of()).passes();
    Advice advice =
        ofShell ? Advice.onShell(order, first, passes) : Advice.onTrough(order, first, passes);
    return found.stream().map(f -> isRefusal(f) ? advice.to(f) : f).toList();
  }

  private static boolean isRefusal(Finding finding) {
    return finding.severity() == Finding.Severity.REFUSAL;
  }

  /**
   * Whether the order can be made as it is. What passes with other meshes alone does not count: it
   * would be a near miss, and cost several times as much.
   */
  private boolean passes() {
    Interruption.ifInterrupted();
    try {
      Orthosis orthosis = Orthosis.make(order);
      return orthosis.missing().isEmpty() && inspection(orthosis).ok();
    } catch (DesignRefused e) {
      return false;
    }
  }

  private Inspection inspection(Orthosis made) {
    Interruption.ifInterrupted();
    Inspection found = Inspection.of(made);
    watch.checksEnd();
    return found;
  }

  /**
   * A product with all findings that {@link #withDocuments} gives it, and no document drawn; as it
   * is where there is nothing to write.
   *
   * @throws java.util.concurrent.CancellationException where the thread is interrupted meanwhile
   */
  public static Product checked(Product product) {
    return product.isMade()
        ? product.withFindings(Documents.findings(product.orthosis().orElseThrow()))
        : product;
  }

  /**
   * A product with its mechanics computed and its documents drawn; as it is where there is nothing
   * to write.
   *
   * @throws java.util.concurrent.CancellationException where the thread is interrupted meanwhile
   */
  public static Product withDocuments(Product product) {
    return product.isMade() ? withDocuments(product, compared(product.order())) : product;
  }

  /**
   * Makes and inspects an order, computes its mechanics and draws its documents: the same as {@link
   * #withDocuments} of what {@link #make} gives, in less time.
   *
   * @param cautions found on reading it
   * @throws java.util.concurrent.CancellationException where the thread is interrupted meanwhile
   */
  public static Product makeWithDocuments(Order order, List<Finding> cautions) {
    Comparison comparison = compared(order);
    try {
      Product product = make(order, cautions);
      return product.isMade() ? withDocuments(product, comparison) : product;
    } finally {
      comparison.cancel();
    }
  }

  private static Comparison compared(Order order) {
    return Comparison.begin(order, Rigidity.USUAL_WRAPS, BendOfPieces.BEAMS_AND_ELEMENTS);
  }

  private static Product withDocuments(Product product, Comparison comparison) {
    long start = System.nanoTime();
    Documents drawn = Documents.of(product.orthosis().orElseThrow(), comparison);
    Report.Timing with = product.timing().withDocuments((System.nanoTime() - start) / 1e6);
    return product.withDocuments(drawn).withTiming(with);
  }
}
