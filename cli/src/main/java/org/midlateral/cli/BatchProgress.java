package org.midlateral.cli;

import java.io.IOException;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import me.tongfei.progressbar.ProgressBar;
import me.tongfei.progressbar.ProgressBarBuilder;
import me.tongfei.progressbar.ProgressBarStyle;
import org.midlateral.recipe.batch.Outcome;

/**
 * Tells how a batch goes: on a terminal a bar with rate and time left, in a log a line now and
 * then; every order that was not made gets lines of its own.
 */
final class BatchProgress implements Consumer<Outcome>, AutoCloseable {
  private static final long LINE_EVERY = 10_000_000_000L;

  private final StandardStreams streams;
  private final boolean quiet;
  private final long orders;
  private final Optional<ProgressBar> bar;
  private final long begun = System.nanoTime();
  private long lastLine = begun;
  private long count;

  private BatchProgress(
      StandardStreams streams, boolean quiet, long orders, Optional<ProgressBar> bar) {
    this.orders = orders;
    this.streams = streams;
    this.quiet = quiet;
    this.bar = bar;
  }

  /**
   * For one run.
   *
   * @param orders how many there are, roughly
   */
  static BatchProgress of(StandardStreams streams, boolean quiet, long orders) {
    boolean drawn = !quiet && terminal();
    return new BatchProgress(
        streams, quiet, orders, drawn ? Optional.of(bar(orders)) : Optional.empty());
  }

  /**
   * Whether standard error is a terminal. Java tells only of standard input and output together;
   * where the system has POSIX's {@code test}, that is asked.
   */
  // From Java 22 on the console is there without a terminal too; a bar in a log is the worst of it.
  @SuppressWarnings("SystemConsoleNull")
  private static boolean terminal() {
    try {
      return new ProcessBuilder("test", "-t", "2")
              .redirectError(ProcessBuilder.Redirect.INHERIT)
              .start()
              .waitFor()
          == 0;
    } catch (IOException e) {
      return System.console() != null;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return false;
    }
  }

  private static ProgressBar bar(long orders) {
    return new ProgressBarBuilder()
        .setTaskName("orders")
        .setInitialMax(orders)
        .setStyle(ProgressBarStyle.ASCII)
        .setUpdateIntervalMillis(250)
        .showSpeed()
        .build();
  }

  @Override
  public void accept(Outcome outcome) {
    count++;
    bar.ifPresent(ProgressBar::step);
    if (!outcome.state().isDone()) {
      boolean placed = outcome.text().startsWith(outcome.place());
      String place = placed ? "" : outcome.place() + ": " + outcome.state().word() + ": ";
      String text = place + outcome.text();
      streams.err().println((bar.isPresent() ? "\n" : "") + text);
    }
    long now = System.nanoTime();
    if (!quiet && bar.isEmpty() && now - lastLine > LINE_EVERY) {
      lastLine = now;
      streams.err().println(line(count, orders, (now - begun) / 1e9));
    }
  }

  /**
   * How far it is, how fast, and how long it will take yet.
   *
   * @param orders how many there are, roughly
   * @param seconds since it began
   */
  static String line(long count, long orders, double seconds) {
    double rate = count / seconds;
    long left = Math.round(Math.max(0, orders - count) / rate);
    String time =
        left < 60
            ? left + " s"
            : left < 3600 ? left / 60 + " min" : left / 3600 + " h " + left % 3600 / 60 + " min";
    return String.format(
        Locale.ROOT, "%d of %d orders, %.1f a second, %s left", count, orders, rate, time);
  }

  @Override
  public void close() {
    bar.ifPresent(ProgressBar::close);
  }
}
