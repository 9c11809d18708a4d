package org.midlateral.viewer.live;

import java.util.function.Consumer;
import java.util.function.Function;

/**
 * One thread that answers the newest question.
 *
 * @param <Q> a question
 * @param <A> its answer
 */
public final class Worker<Q, A> implements AutoCloseable {
  private static final long IDLE_MILLIS = 60_000;

  private final Newest<Q> waiting = new Newest<>();
  private final Function<Q, A> work;
  private final Consumer<A> deliver;
  private final Thread thread;

  /**
   * Starts the thread.
   *
   * @param name of the thread
   * @param work answers a question
   * @param deliver gets each answer, on the worker's thread
   */
  public Worker(String name, Function<Q, A> work, Consumer<A> deliver) {
    this.work = work;
    this.deliver = deliver;
    thread = new Thread(this::run, name);
    thread.setDaemon(true);
    thread.start();
  }

  /** Asks; a question that still waits is dropped for it. */
  public void ask(Q question) {
    waiting.put(question);
  }

  private void run() {
    try {
      while (!Thread.currentThread().isInterrupted()) {
        Q question = waiting.take(IDLE_MILLIS);
        if (question != null) {
          answer(question);
        }
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  /** A question that fails is reported as the thread's own end would be; the next is answered. */
  private void answer(Q question) {
    try {
      deliver.accept(work.apply(question));
    } catch (RuntimeException e) {
      thread.getUncaughtExceptionHandler().uncaughtException(thread, e);
    }
  }

  @Override
  public void close() {
    thread.interrupt();
  }
}
