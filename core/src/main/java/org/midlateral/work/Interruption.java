package org.midlateral.work;

import java.util.concurrent.CancellationException;
import java.util.function.Supplier;

/**
 * Ends long work between two of its steps where the thread that asked for it was interrupted, on
 * that thread and on all that work for it.
 */
public final class Interruption {
  private static final ThreadLocal<Interruption> AT_WORK = new ThreadLocal<>();

  private final Thread asker;

  /**
   * Whether anyone called it off, or found the asker interrupted; what is left of the work ends by
   * it, however long the asker stays interrupted: waiting for a part hides that.
   */
  private volatile boolean calledOff;

  private Interruption(Thread asker) {
    this.asker = asker;
  }

  /** That of the work which this thread does: its own, or for another that asked. */
  public static Interruption current() {
    Interruption current = AT_WORK.get();
    if (current == null || current.isOver()) {
      current = new Interruption(Thread.currentThread());
      AT_WORK.set(current);
    }
    return current;
  }

  /** Whether its asker, which is this thread, has turned to other work. */
  private boolean isOver() {
    return calledOff && asker == Thread.currentThread() && !asker.isInterrupted();
  }

  /**
   * Goes on with the work which this thread does, or not.
   *
   * @throws CancellationException where its asker was interrupted; it stays so
   */
  public static void ifInterrupted() {
    current().check();
  }

  /**
   * Goes on, or not.
   *
   * @throws CancellationException where the asker was interrupted; it stays so
   */
  public void check() {
    if (asker.isInterrupted()) {
      calledOff = true;
    }
    if (calledOff) {
      throw new CancellationException("the work was called off");
    }
  }

  /** Calls the work off; its asker is interrupted. */
  public void callOff() {
    calledOff = true;
    asker.interrupt();
  }

  /** Does a part of the work, on whatever thread this is, for the same asker. */
  public <T> T during(Supplier<T> part) {
    Interruption before = AT_WORK.get();
    AT_WORK.set(this);
    try {
      check();
      return part.get();
    } finally {
      AT_WORK.set(before);
    }
  }
}
