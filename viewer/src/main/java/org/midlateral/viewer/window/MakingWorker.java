package org.midlateral.viewer.window;

import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.SwingUtilities;
import org.midlateral.viewer.background.Worker;
import org.midlateral.viewer.draft.Draft;
import org.midlateral.viewer.scene.MadeDraft;
import org.midlateral.viewer.scene.Quantity;
import org.midlateral.viewer.section.Colouring;
import org.midlateral.viewer.section.SkinPressure;

/** Makes the newest draft, on a thread of its own. */
final class MakingWorker implements AutoCloseable {
  private final Worker<MakeRequest, MadeAnswer> worker;
  private final KeptColouring ofKept = new KeptColouring();
  private MadeDraft last;

  /**
   * A question.
   *
   * @param draft to be made
   * @param shown what was made last, perhaps of this very draft; null for nothing
   * @param kept is shown beside it
   * @param quantity to colour both by
   * @param like the pressure of a design much like it, to colour by in passing; empty for none
   * @param since when it was asked (ns)
   */
  record MakeRequest(
      Draft draft,
      MadeDraft shown,
      Optional<MadeDraft> kept,
      Quantity quantity,
      Optional<SkinPressure> like,
      long since) {}

  /**
   * What came of it.
   *
   * @param colouring plain, or in passing, where the quantity takes longer than a frame
   * @param ofKept the same of the design that was kept; plain where there is none
   */
  record MadeAnswer(MakeRequest asked, MadeDraft made, Colouring colouring, Colouring ofKept) {}

  /**
   * Starts.
   *
   * @param listener gets each answer, on the screen's thread
   */
  MakingWorker(Consumer<MadeAnswer> listener) {
    worker = new Worker<>("maker", this::make, SwingUtilities::invokeLater, listener);
  }

  void ask(
      Draft draft,
      MadeDraft shown,
      Optional<MadeDraft> kept,
      Quantity quantity,
      Optional<SkinPressure> like) {
    worker.ask(new MakeRequest(draft, shown, kept, quantity, like, System.nanoTime()));
  }

  private MadeAnswer make(MakeRequest asked) {
    if (asked.shown() != null && asked.shown().draft().equals(asked.draft())) {
      last = asked.shown();
    }
    if (last == null || !last.draft().equals(asked.draft())) {
      last = MadeDraft.of(asked.draft(), Optional.ofNullable(last).flatMap(MadeDraft::shapes));
    }
    Quantity quantity = asked.quantity().isSlow() ? Quantity.NONE : asked.quantity();
    Colouring colouring =
        last.shapes()
            .map(
                shapes ->
                    asked
                        .like()
                        .flatMap(like -> Colouring.passing(shapes, like))
                        .orElseGet(() -> Colouring.of(shapes, quantity)))
            .orElse(Colouring.PLAIN);
    Colouring beside = ofKept.of(asked.kept().flatMap(MadeDraft::shapes), quantity);
    return new MadeAnswer(asked, last, colouring, beside);
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
