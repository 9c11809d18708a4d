package org.midlateral.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import org.midlateral.document.FileProblem;
import org.midlateral.document.WholeFile;
import org.midlateral.recipe.batch.Batch;
import org.midlateral.recipe.batch.BatchSettings;
import org.midlateral.recipe.batch.FolderInUse;
import org.midlateral.recipe.batch.OrderSource;
import org.midlateral.recipe.batch.Outcome.State;
import org.midlateral.recipe.batch.SourceProblem;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Many orders in one run. */
@Command(
    name = "batch",
    description = {
      "Makes the parts and reports of many orders, on all cores.",
      "Cut short and run again, it goes on where it stopped and makes again only what changed."
    },
    mixinStandardHelpOptions = true,
    versionProvider = Main.Version.class)
final class BatchCommand implements Callable<Integer> {

  private final Streams streams;

  @Parameters(
      paramLabel = "ORDERS",
      description = {
        "Table (CSV by RFC 4180) whose first row names keys, as circumference.pip, and whose",
        "every further row is an order; or a folder of measurement files."
      })
  private Path orders;

  @Option(
      names = "--out",
      required = true,
      paramLabel = "DIR",
      description = "Folder to write into; made where it is missing.")
  private Path folder;

  @Option(
      names = "--set",
      paramLabel = "KEY=VALUE",
      description = "Goes before what every order says; may be repeated.")
  private List<String> overrides = new ArrayList<>();

  @Option(names = "--quiet", description = "Says nothing but what is wrong; no progress.")
  private boolean quiet;

  @Mixin private FormatOptions formats;

  BatchCommand(Streams streams) {
    this.streams = streams;
  }

  @Override
  public Integer call() throws IOException {
    try (OrderSource source = OrderSource.open(orders)) {
      return run(source);
    } catch (SourceProblem | FolderInUse e) {
      streams.err().println("midlateral: " + e.getMessage());
      return e instanceof SourceProblem ? ExitStatus.WRONG_INPUT.code() : ExitStatus.MACHINE.code();
    } catch (FileProblem e) {
      streams.err().println("midlateral: " + e.getMessage());
      if (e.kind() == FileProblem.Kind.NOT_A_FOLDER) {
        return ExitStatus.WRONG_INPUT.code();
      }
      streams.err().println("midlateral: stopped; run it again to go on from here");
      return ExitStatus.MACHINE.code();
    }
  }

  private int run(OrderSource source) throws IOException, FolderInUse {
    WholeFile.makeFolder(folder);
    BatchSettings settings =
        new BatchSettings(
            folder,
            List.copyOf(formats.chosen()),
            overrides,
            Runtime.getRuntime().availableProcessors());
    Map<State, Long> counts;
    try (Progress progress = Progress.of(streams, quiet, OrderSource.count(orders))) {
      counts = Batch.run(source, settings, progress);
    }
    if (!quiet) {
      streams.err().println(summary(counts));
    }
    return status(counts);
  }

  private static String summary(Map<State, Long> counts) {
    StringBuilder text = new StringBuilder("orders");
    counts.forEach((state, n) -> text.append(", ").append(state.word()).append(": ").append(n));
    return text.toString();
  }

  private static int status(Map<State, Long> counts) {
    if (counts.containsKey(State.DEFECT)) {
      return ExitStatus.DEFECT.code();
    }
    boolean allDone = counts.keySet().stream().allMatch(State::isDone);
    return allDone ? ExitStatus.DONE.code() : ExitStatus.DESIGN_REFUSED.code();
  }
}
