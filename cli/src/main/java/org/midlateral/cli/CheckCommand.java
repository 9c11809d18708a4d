package org.midlateral.cli;

import java.io.IOException;
import java.util.concurrent.Callable;
import org.midlateral.cli.text.FindingsJson;
import org.midlateral.measurement.Finding;
import org.midlateral.measurement.file.Orders;
import org.midlateral.recipe.product.Product;
import org.midlateral.recipe.product.ProductRecipe;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Validates a measurement file and the design it asks for. */
@Command(
    name = "check",
    description = "Validates measurements and design, and writes nothing.",
    mixinStandardHelpOptions = true,
    versionProvider = ProgramVersion.class,
    footer = {
      "",
      "Examples:",
      "  midlateral check finger.yaml",
      "  midlateral check finger.yaml --set trough.wall=2"
    })
final class CheckCommand implements Callable<Integer> {

  private final StandardStreams streams;

  @Mixin private InputOptions input;
  @Mixin private MessageOptions messages;
  @Mixin private MachineOption machine;

  CheckCommand(StandardStreams streams) {
    this.streams = streams;
  }

  @Override
  public Integer call() throws IOException {
    Orders.Result read = input.read(machine);
    if (!read.ok()) {
      return messages.wrong(read, streams);
    }
    Product product = ProductRecipe.checked(ProductRecipe.make(read.order(), read.cautions()));
    if (messages.json()) {
      streams.out().print(FindingsJson.text(product.ok(), product.findings()));
    } else {
      messages.tell(product.findings(), streams);
    }
    if (!product.ok()) {
      return ExitStatus.DESIGN_REFUSED.code();
    }
    if (!messages.json()) {
      long cautions =
          product.findings().stream().filter(f -> f.severity() == Finding.Severity.CAUTION).count();
      String counted = cautions == 0 ? "" : ", cautions: " + cautions;
      messages.say(input.file() + ": in order" + counted, streams);
    }
    return ExitStatus.DONE.code();
  }
}
