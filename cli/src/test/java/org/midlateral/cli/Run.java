package org.midlateral.cli;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.midlateral.cli.line.WrongCommandLine;

/**
 * One run of the command in this process.
 *
 * @param status it ended with
 * @param out what it wrote to standard output
 * @param err what it wrote to standard error
 */
record Run(int status, String out, String err) {

  static Run of(String... arguments) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    StandardStreams streams =
        new StandardStreams(
            new PrintStream(out, true, StandardCharsets.UTF_8),
            new PrintStream(err, true, StandardCharsets.UTF_8));
    int status = Main.run(arguments, streams);
    return new Run(
        status, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
  }

  /** The command that a line names; the line must be one that it understands. */
  static KnownCommand read(String... arguments) throws WrongCommandLine {
    Optional<KnownCommand> named = KnownCommand.named(arguments[0]);
    Main.read(named, List.of(arguments));
    return named.orElseThrow();
  }
}
