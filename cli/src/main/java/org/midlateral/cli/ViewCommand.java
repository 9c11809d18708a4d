package org.midlateral.cli;

import java.nio.file.Path;
import org.midlateral.cli.line.CommandForm;
import org.midlateral.cli.line.Parameter;
import org.midlateral.cli.line.PathValue;
import org.midlateral.cli.line.ReadLine;
import org.midlateral.cli.line.ReadyCommand;
import org.midlateral.viewer.Viewer;

/** The viewer. */
final class ViewCommand implements ReadyCommand {
  private static final Parameter<Path> FILE =
      Parameter.operand(
              "FILE",
              new PathValue(),
              "Measurement file, YAML or JSON; a sample where none is given.")
          .omissible();

  static final CommandForm FORM =
      CommandForm.of("Opens the viewer, on a measurement file or on a sample.")
          .with(FILE)
          .examples("midlateral view", "midlateral view finger.yaml");

  private final Path file;

  ViewCommand(ReadLine line) {
    this.file = line.one(FILE).orElse(null);
  }

  @Override
  public int call() {
    return Viewer.open(file);
  }
}
