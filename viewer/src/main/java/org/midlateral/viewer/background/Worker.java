package org.midlateral.viewer.background;

import java.util.concurrent.CancellationException;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import java.util.function.Function;
import org.midlateral.work.Interruption;

/**
 * One thread that answers the newest question. What was asked is of one subject, as a file that is
 * open; once the asker turns to another, no answer about the former comes any more, however late it
 * would be ready.
 *
 * @param <Q> a question
 * @param <A> its answer
 */
public final class Worker<Q, A> implements AutoCloseable {
  private static final long IDLE_MILLIS = 60_000;

  private final Newest<Asked<Q>> waiting = new Newest<>();
  private final Function<Q, A> work;
  private final Executor asker;
  private final Consumer<A> deliver;
  private final Thread thread;

  /** What is done now; null for nothing. */
  private Interruption atWork;

  private volatile boolean closed;

  /** Number of the subject; changed and compared by the asker alone. */
  private int subject;

  /**
   * A question.
   *
   * @param subject number of what it is about
   */
  private record Asked<Q>(Q question, int subject) {}

  /**
   * Starts the thread.
   *
   * @param name of the thread
   * @param work answers a question; where it is interrupted it may end with a {@link
   *     CancellationException}
   * @param asker the one thread that asks, forgets and is told
   * @param deliver gets each answer, on the asker's thread
   */
  public Worker(String name, Function<Q, A> work, Executor asker, Consumer<A> deliver) {
    this.work = work;
    this.asker = asker;
    this.deliver = deliver;
    thread = new Thread(this::run, name);
    thread.setDaemon(true);
    thread.start();
  }

  /** Asks; a question that still waits is dropped for it. */
  public void ask(Q question) {
    waiting.put(new Asked<>(question, subject));
  }

  /** Turns to another subject: whatever was asked so far is answered no more. */
  public void forget() {
    subject++;
    drop();
  }

  /** Drops the question that waits, and interrupts the work on the one that does not. */
  public synchronized void drop() {
    waiting.clear();
    if (atWork != null) {
      atWork.callOff();
    }
  }

  private void run() {
    try {
      while (!closed) {
        Asked<Q> question = waiting.take(IDLE_MILLIS);
        if (question != null) {
          begin();
          answer(question);
          end();
        }
      }
    } catch (InterruptedException e) {
      // Only closing interrupts a thread that waits: this is its end.
      Thread.currentThread().interrupt();
    }
  }

  private synchronized void begin() {
    atWork = Interruption.current();
  }

  /** What interrupted the work does not end the thread. */
  private synchronized void end() {
    atWork = null;
    Thread.interrupted();
  }

  /** A question that fails is reported as the thread's own end would be; the next is answered. */
  private void answer(Asked<Q> asked) {
    try {
      A answer = work.apply(asked.question());
      asker.execute(
          () -> {
            if (asked.subject() == subject) {
              deliver.accept(answer);
            }
          });
    } catch (CancellationException e) {
      // It was dropped: there is nobody to tell.
      return;
    } catch (RuntimeException e) {
      thread.getUncaughtExceptionHandler().uncaughtException(thread, e);
    }
  }

  @Override
  public synchronized void close() {
    closed = true;
    thread.interrupt();
  }
}
