package org.midlateral.viewer.window;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.SwingUtilities;
import org.midlateral.measurement.Finding;
import org.midlateral.recipe.Orthosis;
import org.midlateral.recipe.product.Product;
import org.midlateral.recipe.product.ProductRecipe;
import org.midlateral.viewer.background.Worker;
import org.midlateral.viewer.scene.DesignShapes;
import org.midlateral.viewer.scene.MadeDraft;

/** Finds out about the newest design what is found out before its files are written. */
final class InspectionWorker implements AutoCloseable {
  private final Worker<MadeDraft, Inspected> worker;

  /**
   * What came of it.
   *
   * @param made what was inspected; without its dorsal shell where that cannot be made
   * @param findings all that is found before files are written
   * @param shellDropped whether a shell was shown that cannot be made
   */
  record Inspected(MadeDraft made, List<Finding> findings, boolean shellDropped) {}

  /**
   * Starts.
   *
   * @param listener gets each answer, on the screen's thread
   */
  InspectionWorker(Consumer<Inspected> listener) {
    worker =
        new Worker<>("inspector", InspectionWorker::inspect, SwingUtilities::invokeLater, listener);
  }

  static Inspected inspect(MadeDraft made) {
    // What was refused is told again, with what was tried.
    List<Finding> cautions =
        made.findings().stream().filter(f -> f.severity() != Finding.Severity.REFUSAL).toList();
    Optional<Orthosis> shown = made.shapes().map(DesignShapes::orthosis);
    Product product =
        shown.isPresent()
            ? ProductRecipe.inspect(shown.get(), cautions)
            : ProductRecipe.make(made.order().orElseThrow(), cautions);
    List<Finding> findings = ProductRecipe.checked(product).findings();
    if (!product.isMade()) {
      return new Inspected(made, findings, false);
    }
    Orthosis orthosis = product.orthosis().orElseThrow();
    boolean shellDropped =
        orthosis.dorsalShell().isEmpty() && shown.flatMap(Orthosis::dorsalShell).isPresent();
    return new Inspected(shellDropped ? made.showing(orthosis) : made, findings, shellDropped);
  }

  /** Asks for a design that was made. */
  void ask(MadeDraft made) {
    worker.ask(made);
  }

  /** What is inspected now is of no use any more. */
  void drop() {
    worker.drop();
  }

  /** Another file is open: nothing of the former is told any more. */
  void forget() {
    worker.forget();
  }

  @Override
  public void close() {
    worker.close();
  }
}
