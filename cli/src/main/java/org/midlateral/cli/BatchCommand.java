package org.midlateral.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Consumer;
import org.midlateral.document.FileProblem;
import org.midlateral.document.WholeFile;
import org.midlateral.measurement.InputError;
import org.midlateral.measurement.Machine;
import org.midlateral.measurement.file.MachineFile;
import org.midlateral.measurement.file.Orders;
import org.midlateral.recipe.batch.Batch;
import org.midlateral.recipe.batch.BatchSettings;
import org.midlateral.recipe.batch.BatchSettings.RunOption;
import org.midlateral.recipe.batch.ColumnNames;
import org.midlateral.recipe.batch.FolderInUse;
import org.midlateral.recipe.batch.OrderSource;
import org.midlateral.recipe.batch.OrderSources;
import org.midlateral.recipe.batch.Outcome;
import org.midlateral.recipe.batch.Outcome.OrderState;
import org.midlateral.recipe.batch.SourceProblem;
import org.midlateral.recipe.batch.SourceWatch;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Many orders in one run. */
@Command(
    name = "batch",
    description = {
      "Makes the parts and reports of many orders, on all cores.",
      "Stopped and run again, it goes on where it stopped and makes again only what changed. In"
          + " the end each order's folder holds what the table says now, or nothing but a"
          + " record of why; what else lay there is moved to DIR/superseded, and the report"
          + " says so. An order whose dorsal shell cannot be made is made without it, and"
          + " reported as partly made."
    },
    mixinStandardHelpOptions = true,
    versionProvider = ProgramVersion.class,
    footer = {
      "",
      "Examples:",
      "  midlateral batch orders.csv --out out/batch",
      "  midlateral batch orders --out out/batch --format 3mf --sheets"
    })
final class BatchCommand implements Callable<Integer> {

  /** Between two looks at what is watched (ms). */
  private static final long LOOK_EVERY = 2000;

  private final StandardStreams streams;

  @Spec private CommandSpec spec;

  @Parameters(
      paramLabel = "ORDERS",
      description = {
        "Table (CSV by RFC 4180, cells separated by commas, or by semicolons with decimal commas)"
            + " whose",
        "first row names keys, as circumference.pip, and whose every further row is an order;",
        "or a folder of measurement files."
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
      completionCandidates = InputOptions.SettableKeys.class,
      description = "Replaces what every order says; may be repeated.")
  private List<String> overrides = new ArrayList<>();

  @Option(
      names = "--map",
      paramLabel = "COLUMN=KEY",
      description = "The key of a column that has another name, as Finger=digit; may be repeated.")
  private List<String> maps = new ArrayList<>();

  @Option(
      names = "--ignore",
      paramLabel = "COLUMN",
      description = "A column to leave out; may be repeated.")
  private List<String> ignored = new ArrayList<>();

  @Option(
      names = "--watch",
      description = "Goes on when all is made, and makes what is added or changed, until stopped.")
  private boolean watch;

  @Option(
      names = "--delete-superseded",
      description = "Deletes former parts instead of moving them; their records stay.")
  private boolean deleteSuperseded;

  @Option(
      names = "--keep-others",
      description = "Leaves the folders of orders that ORDERS does not name.")
  private boolean keepOthers;

  @Option(
      names = "--thorough",
      description = "Reads every file made before, instead of trusting sizes and dates.")
  private boolean thorough;

  @Option(
      names = "--no-label",
      description =
          "Labels parts only where an order says print.label; without it, all that have" + " room.")
  private boolean noLabel;

  @Option(
      names = "--full-names",
      description = "Names parts' files after order, hand, digit, part, revision and commit.")
  private boolean fullNames;

  @Option(
      names = "--sheets",
      description = "Writes mechanics, bench sheet, pattern and a record to sign too.")
  private boolean sheets;

  @Mixin private MessageOptions messages;
  @Mixin private FormatOptions formats;
  @Mixin private MachineOption machineOption;

  private Optional<Machine> machine = Optional.empty();

  BatchCommand(StandardStreams streams) {
    this.streams = streams;
  }

  @Override
  public Integer call() throws IOException {
    List<InputError> wrong = new ArrayList<>(Orders.wrongOverrides(overrides));
    Optional<MachineFile.ReadMachine> profile = machineOption.read();
    profile.ifPresent(read -> wrong.addAll(read.errors()));
    machine = profile.flatMap(MachineFile.ReadMachine::machine);
    if (!wrong.isEmpty()) {
      return messages.wrong(new Orders.Result(null, wrong, List.of()), streams);
    }
    if (watch && messages.json()) {
      throw new ParameterException(
          spec.commandLine(), "--watch cannot be used with --json: it does not end");
    }
    SourceWatch seen = new SourceWatch(orders);
    try {
      while (true) {
        seen.look();
        int status = once();
        if (!watch || status == ExitStatus.MACHINE.code()) {
          return status;
        }
        messages.say("watching " + orders + "; stop it with Ctrl-C", streams);
        seen.await(LOOK_EVERY);
      }
    } catch (InterruptedException e) {
      return ExitStatus.DONE.code();
    }
  }

  private int once() throws IOException {
    try (OrderSource source = OrderSources.open(orders, ColumnNames.of(maps, ignored))) {
      source.notes().forEach(note -> messages.say("note: " + note, streams));
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

  private int run(OrderSource source) throws IOException, FolderInUse, SourceProblem {
    WholeFile.makeFolder(folder);
    BatchSettings plain =
        new BatchSettings(
                folder,
                List.copyOf(formats.chosen()),
                MachineOption.with(machine, overrides),
                Runtime.getRuntime().availableProcessors())
            .with(options());
    BatchSettings settings = machine.map(plain::on).orElse(plain);
    AtomicLong cautioned = new AtomicLong();
    Consumer<Outcome> count = outcome -> cautioned.addAndGet(isCautioned(outcome) ? 1 : 0);
    Map<OrderState, Long> counts;
    try (BatchProgress progress =
        BatchProgress.of(streams, messages.quiet(), OrderSources.count(orders))) {
      counts = run(source, settings, count.andThen(progress));
    }
    messages.say(summary(counts), streams);
    if (cautioned.get() > 0) {
      Path report = folder.resolve(Batch.REPORT);
      messages.say(
          "of those made, with cautions: " + cautioned + "; read them in " + report, streams);
    }
    return status(counts);
  }

  private static boolean isCautioned(Outcome outcome) {
    OrderState state = outcome.state();
    return (state == OrderState.MADE || state == OrderState.UNCHANGED) && !outcome.text().isEmpty();
  }

  private Set<RunOption> options() {
    Map<RunOption, Boolean> asked =
        Map.of(
            RunOption.DELETE_SUPERSEDED, deleteSuperseded,
            RunOption.KEEP_OTHERS, keepOthers,
            RunOption.THOROUGH, thorough,
            RunOption.NO_LABEL, noLabel,
            RunOption.FULL_NAMES, fullNames,
            RunOption.SHEETS, sheets);
    Set<RunOption> options = EnumSet.noneOf(RunOption.class);
    asked.forEach(
        (option, chosen) -> {
          if (chosen) {
            options.add(option);
          }
        });
    return options;
  }

  private Map<OrderState, Long> run(
      OrderSource source, BatchSettings settings, Consumer<Outcome> listener)
      throws IOException, FolderInUse, SourceProblem {
    if (!messages.json()) {
      return Batch.run(source, settings, listener);
    }
    try (BatchJson json = new BatchJson(streams)) {
      Map<OrderState, Long> counts = Batch.run(source, settings, listener.andThen(json));
      json.finish(counts);
      return counts;
    }
  }

  private static String summary(Map<OrderState, Long> counts) {
    StringBuilder text = new StringBuilder("orders");
    counts.forEach((state, n) -> text.append(", ").append(state.word()).append(": ").append(n));
    return text.toString();
  }

  private static int status(Map<OrderState, Long> counts) {
    if (counts.containsKey(OrderState.DEFECT)) {
      return ExitStatus.DEFECT.code();
    }
    if (counts.containsKey(OrderState.UNWRITTEN)) {
      return ExitStatus.MACHINE.code();
    }
    boolean allDone = counts.keySet().stream().allMatch(OrderState::isDone);
    return allDone ? ExitStatus.DONE.code() : ExitStatus.DESIGN_REFUSED.code();
  }
}
