package org.midlateral.cli;

import java.util.List;
import java.util.Optional;
import org.midlateral.cli.line.CommandForm;
import org.midlateral.cli.line.Parameter;
import org.midlateral.cli.line.ReadLine;
import org.midlateral.cli.line.ReadyCommand;
import org.midlateral.cli.line.TextValue;
import org.midlateral.cli.text.Paragraph;
import org.midlateral.measurement.MessageGuide;
import org.midlateral.measurement.MessageGuide.GuideSection;

/** What a message means and what to do about it. */
final class ExplainCommand implements ReadyCommand {
  private static final Parameter<String> CODE =
      Parameter.operand("CODE", new Code(), "Code of a message, as pressure-high.").omissible();

  static final CommandForm FORM =
      CommandForm.of(
              "Explains a message: what it means, and what to do about it.",
              "The code stands in brackets at the end of each note, caution and refusal. Without a"
                  + " code, all of them are listed.")
          .with(CODE)
          .examples("midlateral explain", "midlateral explain pressure-high");

  private final StandardStreams streams;
  private final Optional<String> code;

  ExplainCommand(ReadLine line, StandardStreams streams) {
    this.streams = streams;
    this.code = line.one(CODE);
  }

  @Override
  public int call() {
    if (code.isEmpty()) {
      MessageGuide.sections().forEach(this::list);
      return ExitStatus.DONE.code();
    }
    Optional<GuideSection> section = MessageGuide.of(code.get());
    if (section.isEmpty()) {
      streams
          .err()
          .println(
              "midlateral explain: no message has the code "
                  + code.get()
                  + "; allowed: one of those that `midlateral explain` lists");
      return ExitStatus.WRONG_INPUT.code();
    }
    tell(section.get());
    return ExitStatus.DONE.code();
  }

  /** A code; the shell may offer all of them. */
  private static final class Code extends TextValue {
    @Override
    public List<String> words() {
      return MessageGuide.sections().stream().flatMap(s -> s.codes().stream()).toList();
    }
  }

  private void list(GuideSection section) {
    streams.out().println(section.title());
    streams.out().print(new Paragraph(String.join(", ", section.codes())).lines("  ", "  "));
  }

  private void tell(GuideSection section) {
    streams.out().println(section.title());
    for (String paragraph : section.paragraphs()) {
      streams.out().println();
      streams.out().print(new Paragraph(paragraph).lines("", ""));
    }
  }
}
