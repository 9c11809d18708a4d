package org.midlateral.recipe.batch;

import java.io.IOException;
import java.util.ArrayDeque;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Future;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.midlateral.document.FileProblem;
import org.midlateral.measurement.InputError;
import org.midlateral.measurement.file.Orders;
import org.midlateral.recipe.batch.Outcome.OrderState;

/** One run over many orders. */
public final class Batch {
  /** Name of the table of what became of each order, in the run's folder. */
  public static final String REPORT = BatchReport.FILE;

  /** Orders read ahead for each thread. */
  private static final int AHEAD = 4;

  private final BatchSettings settings;
  private final Consumer<Outcome> listener;
  private final Names names = new Names();
  private final Map<OrderState, Long> counts = new EnumMap<>(OrderState.class);
  private final ArrayDeque<Future<Outcome>> waiting = new ArrayDeque<>();

  private final ObsoleteOrders obsolete;

  private Batch(BatchSettings settings, Consumer<Outcome> listener) {
    this.settings = settings;
    this.obsolete = new ObsoleteOrders(settings);
    this.listener = listener;
  }

  /**
   * Makes all orders of a source. An order that cannot be written where its folder is to be is
   * told, and the others are made. In the end each folder holds what the source says now, or
   * nothing but a record of why: what else lies there was moved to {@code superseded}.
   *
   * @param listener told of each order, in the source's order, on the caller's thread
   * @return how many orders came to which end
   * @throws FolderInUse if another run writes into the folder
   * @throws FileProblem if the disk or the folder takes no more; what was made stays, and another
   *     run goes on
   * @throws SourceProblem if the source was changed meanwhile; then no former order is moved
   * @throws IOException if the source can be read no further
   */
  public static Map<OrderState, Long> run(
      OrderSource source, BatchSettings settings, Consumer<Outcome> listener)
      throws IOException, FolderInUse, SourceProblem {
    try (FolderLock lock = FolderLock.take(settings.folder());
        BatchReport report = new BatchReport(lock.folder())) {
      OrderFolder.sweep(lock.folder());
      Batch batch = new Batch(settings, listener);
      batch.run(source, report);
      source.requireUnchanged();
      for (Outcome outcome : batch.obsolete.clear(batch.names)) {
        batch.tell(outcome, report);
      }
      report.finish();
      return batch.counts;
    }
  }

  private void run(OrderSource source, BatchReport report) throws IOException {
    int most = AHEAD * settings.threads();
    ThreadPoolExecutor pool =
        new ThreadPoolExecutor(
            settings.threads(),
            settings.threads(),
            0,
            TimeUnit.SECONDS,
            new ArrayBlockingQueue<>(most + 1));
    try {
      for (Optional<RawOrder> raw = source.next(); raw.isPresent(); raw = source.next()) {
        waiting.add(begin(raw.get(), pool));
        while (waiting.size() >= most) {
          end(report);
        }
      }
      while (!waiting.isEmpty()) {
        end(report);
      }
    } finally {
      pool.shutdownNow();
    }
  }

  private Future<Outcome> begin(RawOrder raw, ExecutorService pool) {
    Orders.Result read = raw.read().apply(settings.overrides());
    if (!read.ok()) {
      String text =
          read.errors().stream().map(InputError::message).collect(Collectors.joining("\n"));
      Outcome wrong = Outcome.without(raw.place(), raw.reference(), "", OrderState.WRONG, text);
      obsolete.wrong(raw, wrong);
      return done(wrong);
    }
    String reference = read.order().measurements().reference();
    Optional<String> folder = names.folder(reference);
    if (folder.isEmpty()) {
      String text = "the reference " + reference + " is used by an earlier order of this batch";
      return done(Outcome.without(raw.place(), reference, "", OrderState.DUPLICATE, text));
    }
    return pool.submit(new OrderJob(raw, settings.understood(raw, read), folder.get(), settings));
  }

  private static Future<Outcome> done(Outcome outcome) {
    return CompletableFuture.completedFuture(outcome);
  }

  /** Waits for the order that has been under way longest. */
  private void end(BatchReport report) throws IOException {
    Outcome outcome;
    try {
      outcome = waiting.remove().get();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IOException("interrupted", e);
    } catch (ExecutionException e) {
      if (e.getCause() instanceof FileProblem problem) {
        throw problem;
      }
      if (e.getCause() instanceof Error error) {
        throw error;
      }
      throw new IllegalStateException(e.getCause());
    }
    tell(outcome, report);
  }

  private void tell(Outcome outcome, BatchReport report) {
    counts.merge(outcome.state(), 1L, Long::sum);
    report.add(outcome);
    listener.accept(outcome);
  }
}
