package org.midlateral.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.midlateral.document.FileProblem;
import org.midlateral.document.WholeFile;
import org.midlateral.measurement.file.Orders;
import org.midlateral.recipe.Report;
import org.midlateral.recipe.product.FormerParts;
import org.midlateral.recipe.product.Product;
import org.midlateral.recipe.product.ProductRecipe;
import org.midlateral.recipe.product.ProductReport;
import org.midlateral.recipe.product.ProductWriter;
import org.midlateral.recipe.product.ProductWriter.Writing;
import org.midlateral.recipe.record.MakingSource;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** The main job: every part, document and the report of one order. */
@Command(
    name = "make",
    description = {
      "Makes every part, document and the report of one measurement file.",
      "Where only the dorsal shell cannot be made, the first finding says so and why, all the"
          + " rest is made without it, and the status is 3. Each refusal names up to three"
          + " changes of a key that were tried on this order and work, the smallest first, as"
          + " dorsal-shell.overlap=3.9. At most some 16 orders are made to find them; a change"
          + " that was not tried is not named."
    },
    mixinStandardHelpOptions = true,
    versionProvider = ProgramVersion.class,
    footer = {
      "",
      "Examples:",
      "  midlateral make finger.yaml --out out/finger",
      "  midlateral make finger.yaml --out out/finger --set closure.kind=strap --force"
    })
final class MakeCommand implements Callable<Integer> {

  private final StandardStreams streams;

  @Mixin private InputOptions input;
  @Mixin private MessageOptions messages;
  @Mixin private MachineOption machine;
  @Mixin private FormatOptions formats;

  @Option(
      names = "--out",
      required = true,
      paramLabel = "DIR",
      description = "Folder to write into; made where it is missing.")
  private Path folder;

  @Option(names = "--force", description = "Replaces files that exist.")
  private boolean force;

  @Option(
      names = "--reproducible",
      description = "Leaves the timing out of the report: same input, same bytes.")
  private boolean reproducible;

  @Option(
      names = "--parts-only",
      description = "Writes the parts and their report, without mechanics and bench documents.")
  private boolean partsOnly;

  MakeCommand(StandardStreams streams) {
    this.streams = streams;
  }

  @Override
  public Integer call() throws IOException {
    Orders.Result read = input.read(machine);
    if (!read.ok()) {
      return messages.wrong(read, streams);
    }
    try {
      WholeFile.requireFolder(folder);
      if (!force) {
        ProductWriter.requireRoom(folder, formats.chosen(), partsOnly);
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
      WholeFile.makeFolder(folder);
      Optional<MakingSource> source = Optional.of(input.source(product.order(), formats.chosen()));
      report =
          ProductWriter.write(
              product, folder, new Writing(formats.chosen(), force, reproducible, source));
    } catch (FileProblem problem) {
      return WriteFailure.tell(problem, streams);
    }
    if (messages.json()) {
      streams.out().print(report.json());
    } else {
      String what = product.ok() ? ": written" : ": written, without the dorsal shell";
      messages.say(folder + what, streams);
    }
    tellFormer(ProductWriter.files(product, formats.chosen()).keySet());
    return product.ok() ? ExitStatus.DONE.code() : ExitStatus.DESIGN_REFUSED.code();
  }

  /** Told even when quiet: whoever prints them has pieces that do not belong together. */
  private void tellFormer(Collection<String> made) {
    for (Path former : FormerParts.in(folder, made)) {
      streams
          .err()
          .println("caution: " + former + " is left from another run; delete it or move it away.");
    }
  }
}
