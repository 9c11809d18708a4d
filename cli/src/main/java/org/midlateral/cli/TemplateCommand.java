package org.midlateral.cli;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.midlateral.cli.line.CommandForm;
import org.midlateral.cli.line.OneOf;
import org.midlateral.cli.line.Parameter;
import org.midlateral.cli.line.PathValue;
import org.midlateral.cli.line.ReadLine;
import org.midlateral.cli.line.ReadyCommand;
import org.midlateral.cli.line.WrongCommandLine;
import org.midlateral.document.FileProblem;
import org.midlateral.document.WholeFile;
import org.midlateral.document.bench.MeasuringForm;
import org.midlateral.document.drawing.PaperSize;
import org.midlateral.measurement.Design.Making;
import org.midlateral.measurement.LengthUnit;
import org.midlateral.measurement.file.Template;

/** Writes a measurement file to start from, or a form to measure with. */
final class TemplateCommand implements ReadyCommand {
  private static final Parameter<LengthUnit> UNIT =
      Parameter.option(
          "--unit",
          "UNIT",
          new OneOf<>(List.of(LengthUnit.values())),
          "Unit of the measurements: " + Parameter.WORDS + " (default: mm).");

  private static final Parameter<Making> MAKING =
      Parameter.option(
          "--making",
          "WAY",
          new OneOf<>(List.of(Making.values())),
          "How the pieces are made, hand or print (default: print); keys that it does not need are"
              + " left out.");

  private static final Parameter<Boolean> SHEET =
      Parameter.flag(
          "--sheet", "Writes a measuring form instead, a PDF with a drawing of each level.");

  private static final Parameter<Path> OUT =
      Parameter.option(
          "--out",
          "FILE",
          new PathValue(),
          "File to write; without it, standard output. A form needs it.");

  private static final Parameter<Boolean> FORCE =
      Parameter.flag("--force", "Replaces a file that exists.");

  static final CommandForm FORM =
      CommandForm.of("Writes a commented measurement file to start from, or a form on paper.")
          .with(UNIT, MAKING, SHEET, OUT, FORCE)
          .examples(
              "midlateral template --unit cm --out finger.yaml",
              "midlateral template --sheet --out form.pdf");

  private final StandardStreams streams;
  private final LengthUnit unit;
  private final Making making;
  private final boolean sheet;
  private final Path out;
  private final boolean force;

  TemplateCommand(ReadLine line, StandardStreams streams) throws WrongCommandLine {
    this.streams = streams;
    this.unit = line.one(UNIT).orElse(LengthUnit.MM);
    this.making = line.one(MAKING).orElse(Making.PRINT);
    this.sheet = line.is(SHEET);
    this.out = line.one(OUT).orElse(null);
    this.force = line.is(FORCE);
    if (sheet && out == null) {
      throw new WrongCommandLine("--sheet needs --out FILE, as form.pdf");
    }
  }

  @Override
  public int call() {
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
