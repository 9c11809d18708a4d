package org.midlateral.viewer.window;

import java.util.List;
import java.util.function.Consumer;
import javax.swing.SwingUtilities;
import org.midlateral.measurement.Finding;
import org.midlateral.recipe.Inspection;
import org.midlateral.viewer.live.Worker;
import org.midlateral.viewer.scene.Made;

/** Inspects what was made last, as it is inspected before files are written. */
final class Inspector implements AutoCloseable {
  private final Worker<Made, Inspected> worker;

  /**
   * What came of it.
   *
   * @param made what was inspected
   * @param findings what does not hold
   */
  record Inspected(Made made, List<Finding> findings) {}

  /**
   * Starts.
   *
   * @param listener gets each answer, on the screen's thread
   */
  Inspector(Consumer<Inspected> listener) {
    worker =
        new Worker<>(
            "inspector",
            made ->
                new Inspected(made, Inspection.of(made.view().orElseThrow().orthosis()).findings()),
            answer -> SwingUtilities.invokeLater(() -> listener.accept(answer)));
  }

  /** Asks for a design that was made. */
  void ask(Made made) {
    worker.ask(made);
  }

  @Override
  public void close() {
    worker.close();
  }
}
