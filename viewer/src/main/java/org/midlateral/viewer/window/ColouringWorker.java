package org.midlateral.viewer.window;

import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.SwingUtilities;
import org.midlateral.viewer.background.Worker;
import org.midlateral.viewer.scene.MadeDraft;
import org.midlateral.viewer.scene.Quantity;
import org.midlateral.viewer.section.Colouring;

/** Colours the newest design by quantities that take their time. */
final class ColouringWorker implements AutoCloseable {
  private final Worker<ColourRequest, ColourAnswer> worker;
  private final KeptColouring ofKept = new KeptColouring();

  /**
   * A question.
   *
   * @param made what to colour; it has a view
   * @param kept is shown beside it
   * @param quantity by what
   */
  record ColourRequest(MadeDraft made, Optional<MadeDraft> kept, Quantity quantity) {}

  /**
   * What came of it.
   *
   * @param ofKept the same of the design that was kept; plain where there is none
   */
  record ColourAnswer(ColourRequest asked, Colouring colouring, Colouring ofKept) {}

  /**
   * Starts.
   *
   * @param listener gets each answer, on the screen's thread
   */
  ColouringWorker(Consumer<ColourAnswer> listener) {
    worker = new Worker<>("colourist", this::colour, SwingUtilities::invokeLater, listener);
  }

  private ColourAnswer colour(ColourRequest asked) {
    Colouring colouring = Colouring.of(asked.made().shapes().orElseThrow(), asked.quantity());
    return new ColourAnswer(
        asked, colouring, ofKept.of(asked.kept().flatMap(MadeDraft::shapes), asked.quantity()));
  }

  void ask(MadeDraft made, Optional<MadeDraft> kept, Quantity quantity) {
    worker.ask(new ColourRequest(made, kept, quantity));
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
