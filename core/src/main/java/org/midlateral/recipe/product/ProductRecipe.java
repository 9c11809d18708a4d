package org.midlateral.recipe.product;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.concurrent.ForkJoinPool;
import org.midlateral.measurement.DesignRefused;
import org.midlateral.measurement.Finding;
import org.midlateral.measurement.Order;
import org.midlateral.recipe.Inspection;
import org.midlateral.recipe.Interruption;
import org.midlateral.recipe.Orthosis;
import org.midlateral.recipe.PrintCheck;
import org.midlateral.recipe.Report;
import org.midlateral.recipe.Stopwatch;

/** The steps behind {@link Product}: the pieces made and inspected, then the documents drawn. */
public final class ProductRecipe {
  /** A mesh that misses a bound is made again, finer, then with points a little elsewhere. */
  private static final double[] FINER = {0.85, 0.7, 0.93, 1.08, 0.78, 0.6};

  private final Order order;
  private final Executor beside;
  private final List<Finding> findings;
  private final Stopwatch watch = new Stopwatch();

  private ProductRecipe(Order order, List<Finding> cautions, Executor beside) {
    this.order = order;
    this.beside = beside;
    this.findings = new ArrayList<>(cautions);
  }

  /**
   * Makes and inspects an order, on two threads.
   *
   * @param cautions found on reading it
   * @throws java.util.concurrent.CancellationException where the thread is interrupted meanwhile
   */
  public static Product make(Order order, List<Finding> cautions) {
    return make(order, cautions, ForkJoinPool.commonPool());
  }

  /**
   * Makes and inspects an order.
   *
   * @param cautions found on reading it
   * @param beside takes what can be done beside the rest
   */
  public static Product make(Order order, List<Finding> cautions, Executor beside) {
    return new ProductRecipe(order, cautions, beside).run(Optional.empty());
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
    return new ProductRecipe(made.order(), cautions, ForkJoinPool.commonPool())
        .run(Optional.of(made));
  }

  private Product run(Optional<Orthosis> made) {
    try {
      Interruption.ifInterrupted();
      Orthosis orthosis = made.isPresent() ? made.get() : Orthosis.make(order);
      watch.geometryEnds();
      return inspected(orthosis);
    } catch (DesignRefused refused) {
      watch.geometryEnds();
      findings.add(refused.finding());
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

  /** The product of an orthosis, or of a finer one where its mesh misses a bound. */
  private Product inspected(Orthosis first) throws DesignRefused {
    Orthosis orthosis = first;
    Inspection inspection = inspection(first);
    boolean mendable = inspection.mendable();
    for (int i = 0; i < FINER.length && mendable; i++) {
      Interruption.ifInterrupted();
      Orthosis finer = Orthosis.make(order, FINER[i]);
      watch.geometryEnds();
      Inspection found = inspection(finer);
      mendable = found.mendable();
      // Where none passes, the best of them is told, which need not be the finest.
      if (found.isBetterThan(inspection)) {
        orthosis = finer;
        inspection = found;
      }
    }
    findings.addAll(orthosis.findings());
    findings.addAll(inspection.findings());
    PrintCheck print = PrintCheck.of(orthosis, inspection);
    findings.addAll(print.findings());
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

  private Inspection inspection(Orthosis made) {
    Interruption.ifInterrupted();
    Inspection found = Inspection.of(made, beside);
    watch.checksEnd();
    return found;
  }

  /**
   * A product with its mechanics computed and its documents drawn; as it is where it was refused.
   *
   * @throws java.util.concurrent.CancellationException where the thread is interrupted meanwhile
   */
  public static Product withDocuments(Product product) {
    if (!product.ok()) {
      return product;
    }
    long start = System.nanoTime();
    Documents drawn = Documents.of(product.orthosis().orElseThrow());
    Report.Timing with = product.timing().withDocuments((System.nanoTime() - start) / 1e6);
    return product.withDocuments(drawn).withTiming(with);
  }
}
