package org.midlateral.cli.line;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.midlateral.cli.text.Paragraph;

/**
 * The help of a command, in lines that fit a terminal. The library's own knows nothing of what
 * stands for itself, nor of commands under a program.
 */
public final class HelpPage {
  private static final String INDENT = "  ";

  /** Between the longest name of a table and what is said of it. */
  private static final int GAP = 3;

  private final StringBuilder text = new StringBuilder();

  private HelpPage() {}

  /**
   * The help of one command.
   *
   * @param command as it is typed, the program's name first
   */
  public static String of(String command, CommandForm form) {
    HelpPage page = new HelpPage();
    page.head(command, form, "");
    page.text.append("\nExamples:\n");
    form.examples().forEach(example -> page.text.append(INDENT + example + '\n'));
    return page.text.toString();
  }

  /**
   * The help of a program with commands under it.
   *
   * @param closing its last paragraph
   */
  public static String of(
      String program, CommandForm form, Map<String, CommandForm> commands, String closing) {
    HelpPage page = new HelpPage();
    page.head(program, form, " [COMMAND]");
    page.text.append("Commands:\n");
    Map<String, String> rows = new LinkedHashMap<>();
    commands.forEach((name, command) -> rows.put(INDENT + name, command.told().get(0)));
    page.table(rows);
    page.text.append('\n').append(new Paragraph(closing).lines("", ""));
    return page.text.toString();
  }

  private void head(String command, CommandForm form, String more) {
    List<Parameter<?>> sorted = new ArrayList<>(form.parameters());
    sorted.sort(Comparator.comparing(Parameter::name));
    String called = "Usage: " + command + " ";
    text.append(new Paragraph(usage(sorted) + more).lines(called, " ".repeat(called.length())));
    form.told().forEach(paragraph -> text.append(new Paragraph(paragraph).lines("", "")));
    Map<String, String> rows = new LinkedHashMap<>();
    sorted.forEach(each -> rows.put(row(each), description(each)));
    table(rows);
  }

  /** Flags first, what stands for itself last. */
  private static String usage(List<Parameter<?>> sorted) {
    StringBuilder letters = new StringBuilder("[-");
    StringBuilder flags = new StringBuilder();
    StringBuilder options = new StringBuilder();
    StringBuilder operands = new StringBuilder();
    for (Parameter<?> each : sorted) {
      String typed = each.required() ? joined(each) : "[" + joined(each) + "]";
      String word = " " + typed + (each.repeatable() ? "..." : "");
      if (!each.letter().isEmpty()) {
        letters.append(each.letter().substring(1));
      } else if (!each.isOption()) {
        operands.append(word);
      } else {
        (each.takesValue() ? options : flags).append(word);
      }
    }
    return letters.append(']').append(flags).append(options).append(operands).toString();
  }

  private static String joined(Parameter<?> parameter) {
    return parameter.asTyped().replace(' ', '=');
  }

  private static String row(Parameter<?> parameter) {
    String letter = parameter.letter().isEmpty() ? "   " : parameter.letter() + ",";
    return INDENT + letter + " " + joined(parameter);
  }

  private static String description(Parameter<?> parameter) {
    String words = String.join(", ", parameter.kind().words());
    return parameter.description().replace(Parameter.WORDS, words);
  }

  private void table(Map<String, String> rows) {
    int widest = rows.keySet().stream().mapToInt(String::length).max().orElse(0);
    String next = " ".repeat(widest + GAP);
    rows.forEach(
        (name, told) ->
            text.append(
                new Paragraph(told).lines((name + next).substring(0, next.length()), next)));
  }
}
