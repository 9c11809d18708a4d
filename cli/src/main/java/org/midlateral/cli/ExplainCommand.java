package org.midlateral.cli;

import java.io.PrintStream;
import java.util.Iterator;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.midlateral.measurement.MessageGuide;
import org.midlateral.measurement.MessageGuide.GuideSection;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** What a message means and what to do about it. */
@Command(
    name = "explain",
    description = {
      "Explains a message: what it means, and what to do about it.",
      "The code stands in brackets at the end of each note, caution and refusal. Without a code,"
          + " all of them are listed."
    },
    mixinStandardHelpOptions = true,
    versionProvider = ProgramVersion.class,
    footer = {"", "Examples:", "  midlateral explain", "  midlateral explain pressure-high"})
final class ExplainCommand implements Callable<Integer> {

  /** Columns of the narrowest usual terminal. */
  private static final int WIDTH = 80;

  private final StandardStreams streams;

  @Parameters(
      paramLabel = "CODE",
      arity = "0..1",
      completionCandidates = Codes.class,
      description = "Code of a message, as pressure-high.")
  private Optional<String> code = Optional.empty();

  /** For the shell's completion. */
  static final class Codes implements Iterable<String> {
    @Override
    public Iterator<String> iterator() {
      return MessageGuide.sections().stream().flatMap(s -> s.codes().stream()).iterator();
    }
  }

  ExplainCommand(StandardStreams streams) {
    this.streams = streams;
  }

  @Override
  public Integer call() {
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

  private void list(GuideSection section) {
    streams.out().println(section.title());
    print("  ", String.join(", ", section.codes()));
  }

  private void tell(GuideSection section) {
    streams.out().println(section.title());
    for (String paragraph : section.paragraphs()) {
      streams.out().println();
      print("", paragraph);
    }
  }

  private void print(String indent, String paragraph) {
    PrintStream out = streams.out();
    StringBuilder line = new StringBuilder(indent);
    for (String word : paragraph.split(" ")) {
      boolean first = line.length() == indent.length();
      if (!first && line.length() + 1 + word.length() > WIDTH) {
        out.println(line);
        line.setLength(indent.length());
        first = true;
      }
      line.append(first ? "" : " ").append(word);
    }
    out.println(line);
  }
}
