package org.midlateral.cli;

import java.io.IOException;
import java.util.List;
import org.midlateral.cli.line.Parameter;
import org.midlateral.cli.line.ReadLine;
import org.midlateral.cli.text.FindingsJson;
import org.midlateral.measurement.Finding;
import org.midlateral.measurement.InputError;
import org.midlateral.measurement.MessageGuide;
import org.midlateral.measurement.file.Orders;

/**
 * How much a command says, and in what form.
 *
 * @param quiet only what is wrong
 * @param json a report on standard output instead of sentences
 */
record MessageOptions(boolean quiet, boolean json) {
  static final Parameter<Boolean> QUIET = Parameter.flag("--quiet", "Prints only what is wrong.");

  private static final Parameter<Boolean> JSON =
      Parameter.flag("--json", "Prints a report as JSON on standard output.");

  static final List<Parameter<?>> ALL = List.of(QUIET, JSON);

  static MessageOptions of(ReadLine line) {
    return new MessageOptions(line.is(QUIET), line.is(JSON));
  }

  /** Tells what came of reading a file. */
  void tell(Orders.Result result, StandardStreams streams) {
    for (InputError error : result.errors()) {
      streams.err().println(error.message());
    }
    if (!result.errors().isEmpty()) {
      streams.err().println("To read more: " + explained(MessageGuide.INPUT));
    }
    tell(result.cautions(), streams);
  }

  /** Tells what is wrong with an input, in the form asked for; gives the exit status. */
  int wrong(Orders.Result read, StandardStreams streams) throws IOException {
    if (json) {
      streams.out().print(FindingsJson.text(read));
    } else {
      tell(read, streams);
    }
    return ExitStatus.WRONG_INPUT.code();
  }

  /** Tells what was found on a design that is refused, in the form asked for; gives the status. */
  int refused(List<Finding> findings, StandardStreams streams) throws IOException {
    if (json) {
      streams.out().print(FindingsJson.text(false, findings));
    } else {
      tell(findings, streams);
    }
    return ExitStatus.DESIGN_REFUSED.code();
  }

  /** Tells findings; when quiet, refusals only. */
  void tell(List<Finding> findings, StandardStreams streams) {
    for (Finding finding : findings) {
      if (!quiet || finding.severity() == Finding.Severity.REFUSAL) {
        String level = FindingsJson.level(finding.severity());
        String more = explained(finding.code());
        streams.err().println(level + ": " + finding.text() + " (" + more + ")");
      }
    }
  }

  /** Where a message is explained; the launcher says how the program was called. */
  private static String explained(String code) {
    return System.getProperty("midlateral.command", "midlateral") + " explain " + code;
  }

  /** Says a sentence, unless told to be quiet. */
  void say(String sentence, StandardStreams streams) {
    if (!quiet) {
      streams.err().println(sentence);
    }
  }
}
