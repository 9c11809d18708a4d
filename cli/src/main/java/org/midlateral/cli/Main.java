package org.midlateral.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import org.midlateral.cli.text.PathConverter;
import org.midlateral.cli.text.WrongCommandLine;
import org.midlateral.document.Defect;
import org.midlateral.measurement.file.Orders;
import org.midlateral.recipe.Concurrent;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** The command {@code midlateral}. */
@Command(
    name = "midlateral",
    description = {
      "From a few tape measurements of a finger to a printable volar trough.",
      "It compares; it clears nothing for use. Follow local rules and licensed practice."
    },
    versionProvider = ProgramVersion.class,
    mixinStandardHelpOptions = true,
    footer = {
      "",
      "Exit status: 0 done; 2 command line or input wrong; 3 design, or its dorsal shell,"
          + " refused; 4 a disk, a folder or the memory failed; 1 a defect of this program."
    })
public final class Main implements Runnable {

  @Spec private CommandSpec spec;

  private Main() {}

  /** Runs the process's arguments and ends the process with the status. */
  public static void main(String[] arguments) {
    System.exit(run(arguments, StandardStreams.ofProcess()));
  }

  /**
   * Runs a command in this process.
   *
   * @param arguments of the command line
   * @param streams to write to
   * @return exit status
   */
  static int run(String[] arguments, StandardStreams streams) {
    loadTables();
    String[] words = helpLast(arguments);
    CommandLine line = line(streams, words);
    try {
      int status = line.execute(words);
      if (streams.out().checkError()) {
        streams.err().println("midlateral: standard output cannot be written");
        return ExitStatus.MACHINE.code();
      }
      return status;
    } catch (OutOfMemoryError e) {
      streams.err().println("midlateral: there is not enough memory for this");
      return ExitStatus.MACHINE.code();
    } catch (RuntimeException | Error e) {
      return defect(e, line, streams);
    }
  }

  /**
   * Nearly every command reads a file by them; they are loaded while its words are read. What fails
   * here fails again, and is told, where a table is asked for.
   */
  private static void loadTables() {
    Concurrent.begin(
        () -> {
          Orders.prepare();
          return true;
        });
  }

  /** {@code help make} is read as {@code make --help}. */
  private static String[] helpLast(String[] arguments) {
    if (arguments.length == 0 || !arguments[0].equals("help")) {
      return arguments;
    }
    String[] asked = Arrays.copyOfRange(arguments, 1, arguments.length + 1);
    asked[asked.length - 1] = "--help";
    return asked;
  }

  /** Makers of the commands by name, in the order of the help. */
  static Map<String, Supplier<Callable<Integer>>> commands(StandardStreams streams) {
    Map<String, Supplier<Callable<Integer>>> commands = new LinkedHashMap<>();
    commands.put("template", () -> new TemplateCommand(streams));
    commands.put("check", () -> new CheckCommand(streams));
    commands.put("make", () -> new MakeCommand(streams));
    commands.put("view", ViewCommand::new);
    commands.put("rigidity", () -> new RigidityCommand(streams));
    commands.put("refit", () -> new RefitCommand(streams));
    commands.put("follow-up", () -> new FollowUpCommand(streams));
    commands.put("batch", () -> new BatchCommand(streams));
    commands.put("verify", () -> new VerifyCommand(streams));
    commands.put("plate", () -> new PlateCommand(streams));
    commands.put("explain", () -> new ExplainCommand(streams));
    commands.put("completion", () -> new CompletionCommand(() -> line(streams), streams));
    return commands;
  }

  /** The command with all others under it. */
  static CommandLine line(StandardStreams streams) {
    return line(streams, new String[0]);
  }

  /**
   * The command with that other under it that the first word names, or with all: each that is made
   * takes time at every start.
   */
  private static CommandLine line(StandardStreams streams, String[] words) {
    CommandLine line = new CommandLine(new Main());
    Map<String, Supplier<Callable<Integer>>> commands = commands(streams);
    if (words.length > 0 && commands.containsKey(words[0])) {
      commands.keySet().retainAll(List.of(words[0]));
    }
    commands.forEach((name, maker) -> line.addSubcommand(name, maker.get()));
    line.registerConverter(Path.class, new PathConverter());
    line.setOut(new PrintWriter(streams.out(), true, StandardCharsets.UTF_8));
    line.setErr(new PrintWriter(streams.err(), true, StandardCharsets.UTF_8));
    line.setExpandAtFiles(false);
    line.setCaseInsensitiveEnumValuesAllowed(true);
    line.setParameterExceptionHandler(
        (e, typed) -> wrong(new WrongCommandLine(line, e, List.of(typed)), streams));
    line.setExecutionExceptionHandler((e, command, result) -> failed(e, line, streams));
    return line;
  }

  /** Greets who names no command, and tells what comes next. */
  @Override
  public void run() {
    spec.commandLine()
        .getOut()
        .println(
            """
            Midlateral makes a finger's volar trough and dorsal shell from a few tape measurements.
            It compares; it clears nothing for use. Follow local rules and licensed practice.

            To begin:
              midlateral template --out finger.yaml       a file to write the measurements in
              midlateral check finger.yaml                what is wrong or unusual in it
              midlateral make finger.yaml --out finger    the pieces, the pattern and the bench sheet
              midlateral view                             the viewer, on an invented finger

            All commands: midlateral --help""");
  }

  private static int wrong(WrongCommandLine wrong, StandardStreams streams) {
    streams.err().println(wrong.command() + ": " + wrong.sentence());
    streams.err().println("Try: " + wrong.command() + " --help");
    return ExitStatus.WRONG_INPUT.code();
  }

  private static int failed(Exception e, CommandLine line, StandardStreams streams) {
    if (e instanceof IOException || e instanceof UncheckedIOException) {
      streams.err().println("midlateral: a file or stream failed: " + e.getMessage());
      return ExitStatus.MACHINE.code();
    }
    return defect(e, line, streams);
  }

  /** One line, and a file with the rest. */
  private static int defect(Throwable e, CommandLine line, StandardStreams streams) {
    AskedCommand asked = AskedCommand.of(line);
    Defect defect = new Defect(e, asked.words(), asked.orders());
    String request = Defect.request(defect.write(asked.folder()));
    String what = "midlateral: a defect of this program, " + request + ": " + defect.inShort();
    streams.err().println(what);
    return ExitStatus.DEFECT.code();
  }
}
