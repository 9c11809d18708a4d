package org.midlateral.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Consumer;
import org.midlateral.cli.line.CommandForm;
import org.midlateral.cli.line.Parameter;
import org.midlateral.cli.line.PathValue;
import org.midlateral.cli.line.ReadLine;
import org.midlateral.cli.line.ReadyCommand;
import org.midlateral.cli.line.TextValue;
import org.midlateral.cli.line.WrongCommandLine;
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

/** Many orders in one run. */
final class BatchCommand implements ReadyCommand {
  private static final Parameter<Path> ORDERS =
      Parameter.operand(
          "ORDERS",
          new PathValue(),
          "Table (CSV by RFC 4180, cells separated by commas, or by semicolons with decimal commas)"
              + " whose first row names keys, as circumference.pip, and whose every further row is"
              + " an order; or a folder of measurement files.");

  private static final Parameter<String> SET =
      Parameter.option(
              "--set",
              "KEY=VALUE",
              new InputOptions.SettableKey(),
              "Replaces what every order says; may be repeated.")
          .repeated();

  private static final Parameter<String> MAPS =
      Parameter.option(
              "--map",
              "COLUMN=KEY",
              new TextValue(),
              "The key of a column that has another name, as Finger=digit; may be repeated.")
          .repeated();

  private static final Parameter<String> IGNORED =
      Parameter.option(
              "--ignore", "COLUMN", new TextValue(), "A column to leave out; may be repeated.")
          .repeated();

  private static final Parameter<Boolean> WATCH =
      Parameter.flag(
          "--watch",
          "Goes on when all is made, and makes what is added or changed, until stopped.");

  private static final Parameter<Boolean> DELETE_SUPERSEDED =
      Parameter.flag(
          "--delete-superseded",
          "Deletes former parts instead of moving them; their records stay.");

  private static final Parameter<Boolean> KEEP_OTHERS =
      Parameter.flag("--keep-others", "Leaves the folders of orders that ORDERS does not name.");

  private static final Parameter<Boolean> THOROUGH =
      Parameter.flag(
          "--thorough", "Reads every file made before, instead of trusting sizes and dates.");

  private static final Parameter<Boolean> NO_LABEL =
      Parameter.flag(
          "--no-label",
          "Labels parts only where an order says print.label; without it, all that have room.");

  private static final Parameter<Boolean> FULL_NAMES =
      Parameter.flag(
          "--full-names",
          "Names parts' files after order, hand, digit, part, revision and commit.");

  private static final Parameter<Boolean> SHEETS =
      Parameter.flag(
          "--sheets", "Writes mechanics, bench sheet, pattern and a record to sign too.");

  static final CommandForm FORM =
      CommandForm.of(
              "Makes the parts and reports of many orders, on all cores.",
              "Stopped and run again, it goes on where it stopped and makes again only what"
                  + " changed. In the end each order's folder holds what the table says now, or"
                  + " nothing but a record of why; what else lay there is moved to DIR/superseded,"
                  + " and the report says so. An order whose dorsal shell cannot be made is made"
                  + " without it, and reported as partly made.")
          .with(
              ORDERS,
              OutputOptions.OUT,
              SET,
              MAPS,
              IGNORED,
              WATCH,
              DELETE_SUPERSEDED,
              KEEP_OTHERS,
              THOROUGH,
              NO_LABEL,
              FULL_NAMES,
              SHEETS)
          .with(MessageOptions.ALL)
          .with(FormatOptions.ALL)
          .with(MachineOption.ALL)
          .examples(
              "midlateral batch orders.csv --out out/batch",
              "midlateral batch orders --out out/batch --format 3mf --sheets");

  /** Between two looks at what is watched (ms). */
  private static final long LOOK_EVERY = 2000;

  private final StandardStreams streams;
  private final Path orders;
  private final Path folder;
  private final List<String> overrides;
  private final List<String> maps;
  private final List<String> ignored;
  private final boolean watch;
  private final boolean deleteSuperseded;
  private final boolean keepOthers;
  private final boolean thorough;
  private final boolean noLabel;
  private final boolean fullNames;
  private final boolean sheets;
  private final MessageOptions messages;
  private final FormatOptions formats;
  private final MachineOption machineOption;

  private Optional<Machine> machine = Optional.empty();

  BatchCommand(ReadLine line, StandardStreams streams) throws WrongCommandLine {
    this.streams = streams;
    this.orders = line.must(ORDERS);
    this.folder = line.must(OutputOptions.OUT);
    this.overrides = line.all(SET);
    this.maps = line.all(MAPS);
    this.ignored = line.all(IGNORED);
    this.watch = line.is(WATCH);
    this.deleteSuperseded = line.is(DELETE_SUPERSEDED);
    this.keepOthers = line.is(KEEP_OTHERS);
    this.thorough = line.is(THOROUGH);
    this.noLabel = line.is(NO_LABEL);
    this.fullNames = line.is(FULL_NAMES);
    this.sheets = line.is(SHEETS);
    this.messages = MessageOptions.of(line);
    this.formats = FormatOptions.of(line);
    this.machineOption = MachineOption.of(line);
    if (watch && messages.json()) {
      throw new WrongCommandLine("--watch cannot be used with --json: it does not end");
    }
  }

  @Override
  public int call() throws IOException {
    List<InputError> wrong = new ArrayList<>(Orders.wrongOverrides(overrides));
    Optional<MachineFile.ReadMachine> profile = machineOption.read();
    profile.ifPresent(read -> wrong.addAll(read.errors()));
    machine = profile.flatMap(MachineFile.ReadMachine::machine);
    if (!wrong.isEmpty()) {
      return messages.wrong(new Orders.Result(null, wrong, List.of()), streams);
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
