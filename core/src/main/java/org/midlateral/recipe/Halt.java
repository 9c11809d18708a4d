package org.midlateral.recipe;

import java.util.concurrent.CancellationException;

/** Ends long work between two of its steps where the thread that asked for it was interrupted. */
final class Halt {
  private Halt() {}

  /**
   * Goes on, or not.
   *
   * @param asker the thread that waits for the work
   * @throws CancellationException where it was interrupted; it stays so
   */
  static void ifInterrupted(Thread asker) {
    if (asker.isInterrupted()) {
      throw new CancellationException("the work was called off");
    }
  }

  static void ifInterrupted() {
    ifInterrupted(Thread.currentThread());
  }
}
