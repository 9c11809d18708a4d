package org.midlateral.cli;

import java.util.concurrent.Callable;
import org.midlateral.measurement.LengthUnit;
import org.midlateral.measurement.Template;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Writes a measurement file to start from. */
@Command(
    name = "template",
    description = "Writes a commented measurement file to start from.",
    mixinStandardHelpOptions = true,
    versionProvider = Main.Version.class)
final class TemplateCommand implements Callable<Integer> {

  private final Streams streams;

  @Option(
      names = "--unit",
      paramLabel = "UNIT",
      defaultValue = "mm",
      description = "Unit of the measurements: ${COMPLETION-CANDIDATES} (default: mm).")
  private LengthUnit unit;

  TemplateCommand(Streams streams) {
    this.streams = streams;
  }

  @Override
  public Integer call() {
    streams.out().print(Template.text(unit));
    return ExitStatus.DONE.code();
  }
}
