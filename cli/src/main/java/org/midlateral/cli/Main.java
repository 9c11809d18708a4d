package org.midlateral.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.midlateral.cli.line.AskedCommand;
import org.midlateral.cli.line.CommandForm;
import org.midlateral.cli.line.HelpPage;
import org.midlateral.cli.line.LineReader;
import org.midlateral.cli.line.Parameter;
import org.midlateral.cli.line.ReadLine;
import org.midlateral.cli.line.ReadyCommand;
import org.midlateral.cli.line.WrongCommandLine;
import org.midlateral.digit.Ellipses;
import org.midlateral.document.Defect;
import org.midlateral.measurement.file.Orders;
import org.midlateral.recipe.Concurrent;
import org.midlateral.shared.SharedData;

/** The command {@code midlateral}. */
public final class Main {
  private static final String NAME = "midlateral";

  /** The line of who names no command. */
  private static final CommandForm FORM =
      CommandForm.of(
          "From a few tape measurements of a finger to a printable volar trough.",
          "It compares; it clears nothing for use. Follow local rules and licensed practice.");

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
    prepare();
    List<String> words = helpLast(List.of(arguments));
    Optional<KnownCommand> named =
        words.isEmpty() ? Optional.empty() : KnownCommand.named(words.get(0));
    AskedCommand asked =
        AskedCommand.named(named.isPresent() ? NAME + " " + named.get().word() : NAME);
    try {
      ReadLine line = read(named, words);
      asked = asked.read(line);
      int status;
      if (line.is(Parameter.HELP)) {
        streams.out().print(help(asked.name(), named));
        status = ExitStatus.DONE.code();
      } else if (line.is(Parameter.VERSION)) {
        streams.out().println(NAME + " " + SharedData.version() + "+" + SharedData.build());
        status = ExitStatus.DONE.code();
      } else if (named.isEmpty()) {
        status = greet(streams);
      } else {
        ReadyCommand command = named.get().ready(line, streams);
        asked = asked.ready(command);
        status = command.call();
      }
      if (streams.out().checkError()) {
        streams.err().println("midlateral: standard output cannot be written");
        return ExitStatus.MACHINE.code();
      }
      return status;
    } catch (WrongCommandLine e) {
      streams.err().println(asked.name() + ": " + e.getMessage());
      streams.err().println("Try: " + asked.name() + " --help");
      return ExitStatus.WRONG_INPUT.code();
    } catch (IOException | UncheckedIOException e) {
      streams.err().println("midlateral: a file or stream failed: " + e.getMessage());
      return ExitStatus.MACHINE.code();
    } catch (OutOfMemoryError e) {
      streams.err().println("midlateral: there is not enough memory for this");
      return ExitStatus.MACHINE.code();
    } catch (RuntimeException | Error e) {
      return defect(e, asked, streams);
    }
  }

  /**
   * Nearly every command reads a file by them; they are loaded while its words are read, and then
   * what the first section and the first written number need. What fails here fails again, and is
   * told, where it is asked for.
   */
  private static void prepare() {
    Concurrent.begin(
        () -> {
          Orders.prepare();
          return String.format(Locale.ROOT, "%.1f", Ellipses.unitPerimeter(1));
        });
  }

  /** {@code help make} is read as {@code make --help}. */
  private static List<String> helpLast(List<String> words) {
    if (words.isEmpty() || !words.get(0).equals("help")) {
      return words;
    }
    List<String> asked = new ArrayList<>(words.subList(1, words.size()));
    asked.add(Parameter.HELP.name());
    return asked;
  }

  /**
   * Reads a line.
   *
   * @param named the command that its first word names, if it names one
   */
  static ReadLine read(Optional<KnownCommand> named, List<String> words) throws WrongCommandLine {
    if (named.isPresent()) {
      return LineReader.read(named.get().form(), words.subList(1, words.size()));
    }
    try {
      return LineReader.read(FORM, words);
    } catch (WrongCommandLine e) {
      // A misspelt command may stand before whatever the command takes.
      throw words.get(0).startsWith("-")
          ? e
          : new WrongCommandLine("there is no command '" + words.get(0) + "'");
    }
  }

  private static String help(String name, Optional<KnownCommand> named) {
    return named.isPresent()
        ? HelpPage.of(name, named.get().form())
        : HelpPage.of(
            name,
            FORM,
            KnownCommand.forms(),
            "Exit status: 0 done; 2 command line or input wrong; 3 design, or its dorsal shell,"
                + " refused; 4 a disk, a folder or the memory failed; 1 a defect of this program.");
  }

  /** Greets who names no command, and tells what comes next. */
  private static int greet(StandardStreams streams) {
    streams
        .out()
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
    return ExitStatus.DONE.code();
  }

  /** One line, and a file with the rest. */
  private static int defect(Throwable e, AskedCommand asked, StandardStreams streams) {
    Defect defect = new Defect(e, asked.words(), asked.orders());
    String request = Defect.request(defect.write(asked.folder()));
    String what = "midlateral: a defect of this program, " + request + ": " + defect.inShort();
    streams.err().println(what);
    return ExitStatus.DEFECT.code();
  }
}
