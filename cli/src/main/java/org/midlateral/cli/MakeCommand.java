package org.midlateral.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.midlateral.cli.line.CommandForm;
import org.midlateral.cli.line.Parameter;
import org.midlateral.cli.line.ReadLine;
import org.midlateral.cli.line.ReadyCommand;
import org.midlateral.document.FileProblem;
import org.midlateral.document.WholeFile;
import org.midlateral.measurement.Order;
import org.midlateral.measurement.file.Orders;
import org.midlateral.recipe.Report;
import org.midlateral.recipe.product.FormerParts;
import org.midlateral.recipe.product.Product;
import org.midlateral.recipe.product.ProductRecipe;
import org.midlateral.recipe.product.ProductReport;
import org.midlateral.recipe.product.ProductWriter;
import org.midlateral.recipe.product.ProductWriter.Writing;
import org.midlateral.recipe.record.MakingSource;

/** The main job: every part, document and the report of one order. */
final class MakeCommand implements ReadyCommand {
  private static final Parameter<Boolean> REPRODUCIBLE =
      Parameter.flag(
          "--reproducible", "Leaves the timing out of the report: same input, same bytes.");

  private static final Parameter<Boolean> PARTS_ONLY =
      Parameter.flag(
          "--parts-only",
          "Writes the parts and their report, without mechanics and bench documents.");

  static final CommandForm FORM =
      CommandForm.of(
              "Makes every part, document and the report of one measurement file.",
              "Where only the dorsal shell cannot be made, the first finding says so and why, all"
                  + " the rest is made without it, and the status is 3. Each refusal names up to"
                  + " three changes of a key that were tried on this order and work, the smallest"
                  + " first, as dorsal-shell.overlap=3.9. At most some 16 orders are made to find"
                  + " them; a change that was not tried is not named.")
          .with(InputOptions.ALL)
          .with(OutputOptions.ALL)
          .with(REPRODUCIBLE, PARTS_ONLY)
          .with(MessageOptions.ALL)
          .with(MachineOption.ALL)
          .with(FormatOptions.ALL)
          .examples(
              "midlateral make finger.yaml --out out/finger",
              "midlateral make finger.yaml --out out/finger --set closure.kind=strap --force");

  private final StandardStreams streams;
  private final OutputOptions output;
  private final boolean reproducible;
  private final boolean partsOnly;
  private final InputOptions input;
  private final MessageOptions messages;
  private final MachineOption machine;
  private final FormatOptions formats;

  MakeCommand(ReadLine line, StandardStreams streams) {
    this.streams = streams;
    this.output = OutputOptions.of(line);
    this.reproducible = line.is(REPRODUCIBLE);
    this.partsOnly = line.is(PARTS_ONLY);
    this.input = new InputOptions(line);
    this.messages = MessageOptions.of(line);
    this.machine = MachineOption.of(line);
    this.formats = FormatOptions.of(line);
  }

  @Override
  public List<Order> orders() {
    return input.orders();
  }

  @Override
  public int call() throws IOException {
    Orders.Result read = input.read(machine);
    if (!read.ok()) {
      return messages.wrong(read, streams);
    }
    try {
      WholeFile.requireFolder(output.folder());
      if (!output.force()) {
        ProductWriter.requireRoom(output.folder(), formats.chosen(), partsOnly);
      }
    } catch (FileProblem problem) {
      return WriteFailure.tell(problem, streams);
    }
    Product product =
        partsOnly
            ? ProductRecipe.make(read.order(), read.cautions())
            : ProductRecipe.makeWithDocuments(read.order(), read.cautions());
    if (!messages.json()) {
      messages.tell(product.findings(), streams);
    }
    if (!product.isMade()) {
      if (messages.json()) {
        streams.out().print(ProductReport.of(product, List.of(), Optional.empty()).json());
      } else {
        streams.err().println(input.file() + ": refused; no part is written");
      }
      tellFormer(List.of());
      return ExitStatus.DESIGN_REFUSED.code();
    }
    return write(product);
  }

  private int write(Product product) throws IOException {
    Report report;
    try {
      WholeFile.makeFolder(output.folder());
      Optional<MakingSource> source = Optional.of(input.source(product.order(), formats.chosen()));
      report =
          ProductWriter.write(
              product,
              output.folder(),
              new Writing(formats.chosen(), output.force(), reproducible, source));
    } catch (FileProblem problem) {
      return WriteFailure.tell(problem, streams);
    }
    if (messages.json()) {
      streams.out().print(report.json());
    } else {
      String what = product.ok() ? ": written" : ": written, without the dorsal shell";
      messages.say(output.folder() + what, streams);
    }
    tellFormer(ProductWriter.files(product, formats.chosen()).keySet());
    return product.ok() ? ExitStatus.DONE.code() : ExitStatus.DESIGN_REFUSED.code();
  }

  /** Told even when quiet: whoever prints them has pieces that do not belong together. */
  private void tellFormer(Collection<String> made) {
    for (Path former : FormerParts.in(output.folder(), made)) {
      streams
          .err()
          .println("caution: " + former + " is left from another run; delete it or move it away.");
    }
  }
}
