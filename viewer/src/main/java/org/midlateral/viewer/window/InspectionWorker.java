package org.midlateral.viewer.window;

import java.util.List;
import java.util.function.Consumer;
import javax.swing.SwingUtilities;
import org.midlateral.measurement.Finding;
import org.midlateral.recipe.product.Product;
import org.midlateral.recipe.product.ProductRecipe;
import org.midlateral.viewer.background.Worker;
import org.midlateral.viewer.scene.MadeDraft;

/** Finds out about the newest design what is found out before its files are written. */
final class InspectionWorker implements AutoCloseable {
  private final Worker<MadeDraft, Inspected> worker;

  /**
   * What came of it.
   *
   * @param made what was inspected
   * @param findings all that is found before files are written
   */
  record Inspected(MadeDraft made, List<Finding> findings) {}

  /**
   * Starts.
   *
   * @param listener gets each answer, on the screen's thread
   */
  InspectionWorker(Consumer<Inspected> listener) {
    worker =
        new Worker<>(
            "inspector",
            InspectionWorker::inspect,
            answer -> SwingUtilities.invokeLater(() -> listener.accept(answer)));
  }

  private static Inspected inspect(MadeDraft made) {
    Product product =
        ProductRecipe.inspect(made.shapes().orElseThrow().orthosis(), made.findings());
    return new Inspected(made, ProductRecipe.checked(product).findings());
  }

  /** Asks for a design that was made. */
  void ask(MadeDraft made) {
    worker.ask(made);
  }

  /** What is inspected now is of no use any more. */
  void drop() {
    worker.drop();
  }

  @Override
  public void close() {
    worker.close();
  }
}
