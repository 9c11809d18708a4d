package org.midlateral.cli.line;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.midlateral.measurement.Order;

/**
 * A command as it was asked for, to be told of where it met a defect.
 *
 * @param name it was called by
 * @param line it was asked with, once that was read
 * @param command that came of the line
 */
public record AskedCommand(String name, Optional<ReadLine> line, Optional<ReadyCommand> command) {

  /** A command of which no more is known than its name. */
  public static AskedCommand named(String name) {
    return new AskedCommand(name, Optional.empty(), Optional.empty());
  }

  /** The same, once its line was read. */
  public AskedCommand read(ReadLine read) {
    return new AskedCommand(name, Optional.of(read), command);
  }

  /** The same, once it is ready to run. */
  public AskedCommand ready(ReadyCommand ready) {
    return new AskedCommand(name, line, Optional.of(ready));
  }

  /** Its name and options; what names a file or a key is left out. */
  public List<String> words() {
    List<String> words = new ArrayList<>(List.of(name));
    line.map(ReadLine::told).ifPresent(words::addAll);
    return words;
  }

  /** Orders that it has read. */
  public List<Order> orders() {
    return command.map(ReadyCommand::orders).orElse(List.of());
  }

  /** The folder that its output goes to, if it writes any. */
  public Optional<Path> folder() {
    return line.flatMap(read -> read.folder("--out"));
  }
}
