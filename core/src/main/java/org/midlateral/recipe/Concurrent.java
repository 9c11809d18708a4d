package org.midlateral.recipe;

import java.util.concurrent.ExecutionException;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinTask;
import java.util.concurrent.atomic.AtomicBoolean;
import org.midlateral.measurement.DesignRefused;
import org.midlateral.work.Interruption;

/**
 * Work done on another core while its owner goes on; called off where its owner is.
 *
 * @param <T> what comes of it
 */
public final class Concurrent<T> {
  private final ForkJoinTask<Result<T>> task;
  private final AtomicBoolean begun;

  /**
   * Work that may be refused.
   *
   * @param <T> what comes of it
   */
  public interface Work<T> {
    T run() throws DesignRefused;
  }

  /** One of the two is null. */
  private record Result<T>(T value, DesignRefused refused) {}

  private Concurrent(ForkJoinTask<Result<T>> task, AtomicBoolean begun) {
    this.task = task;
    this.begun = begun;
  }

  /**
   * Begins.
   *
   * @param <T> what comes of it
   */
  public static <T> Concurrent<T> begin(Work<T> work) {
    Interruption asked = Interruption.current();
    AtomicBoolean begun = new AtomicBoolean();
    return new Concurrent<>(
        ForkJoinPool.commonPool()
            .submit(
                () -> {
                  begun.set(true);
                  return asked.during(() -> outcome(work));
                }),
        begun);
  }

  private static <T> Result<T> outcome(Work<T> work) {
    try {
      return new Result<>(work.run(), null);
    } catch (DesignRefused refused) {
      return new Result<>(null, refused);
    }
  }

  /**
   * Waits for the end; does the work itself where nobody has begun it.
   *
   * @throws DesignRefused as the work did
   * @throws java.util.concurrent.CancellationException where it was called off
   */
  public T end() throws DesignRefused {
    Result<T> outcome = outcome();
    if (outcome.refused() != null) {
      throw outcome.refused();
    }
    return outcome.value();
  }

  /**
   * Does the work where nobody has begun it, and else does not wait: so that of several works none
   * is waited for while another could be done. What came of it {@link #end()} tells.
   */
  public void help() {
    if (!begun.get()) {
      outcome();
    }
  }

  /** While a thread joins work it does not look interrupted to others: it must see that itself. */
  private Result<T> outcome() {
    try {
      return task.get();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      Interruption.ifInterrupted();
      // Another asker's work goes on.
      return task.join();
    } catch (ExecutionException e) {
      // As it was thrown.
      return task.join();
    }
  }

  /** Gives it up where nobody has begun it; {@link #end()} is not to be asked then. */
  public void cancel() {
    task.cancel(false);
  }
}
