package org.midlateral.cli;

import java.io.IOException;
import java.util.concurrent.Callable;
import org.midlateral.measurement.Orders;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Validates a measurement file. */
@Command(
    name = "check",
    description = "Validates measurements and design, and writes nothing.",
    mixinStandardHelpOptions = true,
    versionProvider = Main.Version.class)
final class CheckCommand implements Callable<Integer> {

  private final Streams streams;

  @Mixin private InputOptions input;
  @Mixin private TalkOptions talk;

  CheckCommand(Streams streams) {
    this.streams = streams;
  }

  @Override
  public Integer call() throws IOException {
    Orders.Result result = input.read();
    if (talk.json()) {
      streams.out().print(FindingsJson.text(result));
    } else {
      talk.tell(result, streams);
    }
    if (!result.ok()) {
      return ExitStatus.WRONG_INPUT.code();
    }
    if (!talk.json()) {
      int cautions = result.cautions().size();
      String counted = cautions == 0 ? "" : ", cautions: " + cautions;
      talk.say(input.file() + ": in order" + counted, streams);
    }
    return ExitStatus.DONE.code();
  }
}
