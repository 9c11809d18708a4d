package org.midlateral.recipe;

import java.util.concurrent.CancellationException;

/** Ends long work between two of its steps where the thread that asked for it was interrupted. */
public final class Interruption {
  private Interruption() {}

  /**
   * Goes on, or not.
   *
   * @param asker the thread that waits for the work
   * @throws CancellationException where it was interrupted; it stays so
   */
  public static void ifInterrupted(Thread asker) {
    if (asker.isInterrupted()) {
      throw new CancellationException("the work was called off");
    }
  }

  public static void ifInterrupted() {
    ifInterrupted(Thread.currentThread());
  }
}
