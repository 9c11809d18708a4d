package org.midlateral.viewer.window;

import java.util.function.Consumer;
import javax.swing.SwingUtilities;
import org.midlateral.viewer.background.Worker;
import org.midlateral.viewer.scene.MadeDraft;
import org.midlateral.viewer.scene.Quantity;
import org.midlateral.viewer.section.Colouring;

/** Colours the newest design by quantities that take their time. */
final class ColouringWorker implements AutoCloseable {
  private final Worker<ColourRequest, ColourAnswer> worker;

  /**
   * A question.
   *
   * @param made what to colour; it has a view
   * @param quantity by what
   */
  record ColourRequest(MadeDraft made, Quantity quantity) {}

  /** What came of it. */
  record ColourAnswer(ColourRequest asked, Colouring colouring) {}

  /**
   * Starts.
   *
   * @param listener gets each answer, on the screen's thread
   */
  ColouringWorker(Consumer<ColourAnswer> listener) {
    worker =
        new Worker<>(
            "colourist",
            asked ->
                new ColourAnswer(
                    asked, Colouring.of(asked.made().shapes().orElseThrow(), asked.quantity())),
            SwingUtilities::invokeLater,
            listener);
  }

  void ask(MadeDraft made, Quantity quantity) {
    worker.ask(new ColourRequest(made, quantity));
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
