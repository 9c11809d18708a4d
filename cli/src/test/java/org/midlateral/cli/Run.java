package org.midlateral.cli;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;

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
}
