package org.midlateral.cli;

import java.io.IOException;
import java.util.List;
import org.midlateral.cli.line.CommandForm;
import org.midlateral.cli.line.ReadLine;
import org.midlateral.cli.line.ReadyCommand;
import org.midlateral.cli.text.FindingsJson;
import org.midlateral.measurement.Finding;
import org.midlateral.measurement.Order;
import org.midlateral.measurement.file.Orders;
import org.midlateral.recipe.product.Product;
import org.midlateral.recipe.product.ProductRecipe;

/** Validates a measurement file and the design it asks for. */
final class CheckCommand implements ReadyCommand {
  static final CommandForm FORM =
      CommandForm.of("Validates measurements and design, and writes nothing.")
          .with(InputOptions.ALL)
          .with(MessageOptions.ALL)
          .with(MachineOption.ALL)
          .examples(
              "midlateral check finger.yaml", "midlateral check finger.yaml --set trough.wall=2");

  private final StandardStreams streams;
  private final InputOptions input;
  private final MessageOptions messages;
  private final MachineOption machine;

  CheckCommand(ReadLine line, StandardStreams streams) {
    this.streams = streams;
    this.input = new InputOptions(line);
    this.messages = MessageOptions.of(line);
    this.machine = MachineOption.of(line);
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
