package org.midlateral.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.midlateral.viewer.Viewer;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** The viewer. */
@Command(
    name = "view",
    description = "Opens the viewer, on a measurement file or on a sample.",
    mixinStandardHelpOptions = true,
    versionProvider = ProgramVersion.class,
    footer = {"", "Examples:", "  midlateral view", "  midlateral view finger.yaml"})
final class ViewCommand implements Callable<Integer> {

  @Parameters(
      paramLabel = "FILE",
      arity = "0..1",
      description = "Measurement file, YAML or JSON; a sample where none is given.")
  private Path file;

  @Override
  public Integer call() {
    return Viewer.open(file);
  }
}
