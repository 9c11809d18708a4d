package org.midlateral.viewer.window;

import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.SwingUtilities;
import javax.swing.Timer;
import org.midlateral.viewer.background.Worker;
import org.midlateral.viewer.scene.MadeDraft;
import org.midlateral.viewer.scene.Quantity;
import org.midlateral.viewer.section.Colouring;
import org.midlateral.viewer.section.SkinPressure;

/**
 * Colours the newest design by quantities that take their time, and keeps the answer: a design much
 * like it is coloured by that in passing.
 */
final class ColouringWorker implements AutoCloseable {
  private static final int REST_MILLIS = 250;

  private final Worker<ColourRequest, ColourAnswer> worker;
  private final KeptColouring ofKept = new KeptColouring();

  /** What was shown in passing is computed when the numbers rest. */
  private final Timer rest = new Timer(REST_MILLIS, e -> askNow());

  /** What waits for that. */
  private ColourRequest waiting;

  /** Told last of the open file; null for nothing. */
  private ColourAnswer last;

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
    worker =
        new Worker<>(
            "colourist",
            this::colour,
            SwingUtilities::invokeLater,
            answer -> {
              last = answer;
              listener.accept(answer);
            });
    rest.setRepeats(false);
  }

  private ColourAnswer colour(ColourRequest asked) {
    Colouring colouring = Colouring.of(asked.made().shapes().orElseThrow(), asked.quantity());
    return new ColourAnswer(
        asked, colouring, ofKept.of(asked.kept().flatMap(MadeDraft::shapes), asked.quantity()));
  }

  /**
   * Asks.
   *
   * @param passing whether colours are shown in passing already, so that it has time until the
   *     numbers rest
   */
  void ask(MadeDraft made, Optional<MadeDraft> kept, Quantity quantity, boolean passing) {
    waiting = new ColourRequest(made, kept, quantity);
    if (passing) {
      rest.restart();
    } else {
      rest.stop();
      askNow();
    }
  }

  private void askNow() {
    worker.ask(waiting);
  }

  /** The pressure that a design much like it is coloured by in passing; empty for none. */
  Optional<SkinPressure> like(Quantity quantity) {
    return last == null || quantity != Quantity.PRESSURE
        ? Optional.empty()
        : last.colouring().pressure();
  }

  /** The colours of the design that is kept, while the other is coloured in passing. */
  Colouring ofKept(Optional<MadeDraft> kept) {
    return last != null && last.asked().kept().equals(kept) ? last.ofKept() : Colouring.PLAIN;
  }

  /** What is being computed would only hold up what is coloured in passing now. */
  void drop() {
    rest.stop();
    worker.drop();
  }

  /** Another file is open: nothing of the former is told any more. */
  void forget() {
    rest.stop();
    last = null;
    worker.forget();
  }

  @Override
  public void close() {
    rest.stop();
    worker.close();
  }
}
