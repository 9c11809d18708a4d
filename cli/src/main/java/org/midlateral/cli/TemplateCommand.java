package org.midlateral.cli;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.midlateral.document.FileProblem;
import org.midlateral.document.WholeFile;
import org.midlateral.document.bench.MeasuringForm;
import org.midlateral.document.drawing.PaperSize;
import org.midlateral.measurement.Design.Making;
import org.midlateral.measurement.LengthUnit;
import org.midlateral.measurement.file.Template;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Writes a measurement file to start from, or a form to measure with. */
@Command(
    name = "template",
    description = "Writes a commented measurement file to start from, or a form on paper.",
    mixinStandardHelpOptions = true,
    versionProvider = ProgramVersion.class,
    footer = {
      "",
      "Examples:",
      "  midlateral template --unit cm --out finger.yaml",
      "  midlateral template --sheet --out form.pdf"
    })
final class TemplateCommand implements Callable<Integer> {

  private final StandardStreams streams;

  @Spec private CommandSpec spec;

  @Option(
      names = "--unit",
      paramLabel = "UNIT",
      defaultValue = "mm",
      description = "Unit of the measurements: ${COMPLETION-CANDIDATES} (default: mm).")
  private LengthUnit unit;

  @Option(
      names = "--making",
      paramLabel = "WAY",
      defaultValue = "print",
      description = {
        "How the pieces are made, hand or print (default: print);",
        "keys that it does not need are left out."
      })
  private Making making;

  @Option(
      names = "--sheet",
      description = "Writes a measuring form instead, a PDF with a drawing of each level.")
  private boolean sheet;

  @Option(
      names = "--out",
      paramLabel = "FILE",
      description = "File to write; without it, standard output. A form needs it.")
  private Path out;

  @Option(names = "--force", description = "Replaces a file that exists.")
  private boolean force;

  TemplateCommand(StandardStreams streams) {
    this.streams = streams;
  }

  @Override
  public Integer call() {
    if (sheet && out == null) {
      throw new ParameterException(spec.commandLine(), "--sheet needs --out FILE, as form.pdf");
    }
    if (out == null) {
      streams.out().print(Template.text(unit, making));
      return ExitStatus.DONE.code();
    }
    byte[] bytes =
        sheet
            ? MeasuringForm.pdf(unit, PaperSize.usualWith(unit))
            : Template.text(unit, making).getBytes(StandardCharsets.UTF_8);
    try {
      WholeFile.makeFolderOf(out);
      WholeFile.write(out, stream -> stream.write(bytes), force);
    } catch (FileProblem problem) {
      return WriteFailure.tell(problem, streams);
    }
    return ExitStatus.DONE.code();
  }
}
