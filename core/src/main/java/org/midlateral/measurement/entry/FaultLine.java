package org.midlateral.measurement.entry;

import java.util.List;
import java.util.Optional;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;

/**
 * The line in which a text stops being YAML. The parser marks where it noticed, which is often a
 * line or many after the fault: behind a key without its colon, a quote or bracket left open.
 */
final class FaultLine {
  private final List<String> lines;

  FaultLine(String text) {
    this.lines = text.lines().toList();
  }

  /** The line from 1; 0 where it is not known. */
  int of(MarkedYamlEngineException e) {
    Optional<Mark> noticed = e.getProblemMark();
    if (noticed.isEmpty()) {
      return 0;
    }
    String context = String.valueOf(e.getContext());
    if (context.contains("quoted scalar") || context.contains("simple key")) {
      // It began there and was never ended.
      return e.getContextMark().orElse(noticed.get()).getLine() + 1;
    }
    int line = noticed.get().getLine();
    String before = before(line, noticed.get().getColumn());
    boolean inBrackets = context.contains("flow") && !before.matches(".*[,:\\[\\]{}].*");
    boolean ranOn =
        String.valueOf(e.getProblem()).contains("mapping values are not allowed")
            && !before.contains(":");
    if (!inBrackets && !ranOn) {
      return line + 1;
    }
    int above = above(line);
    // A line that ran on into the next is one without a colon.
    return above < 0 || ranOn && lines.get(above).contains(":") ? line + 1 : above + 1;
  }

  private String before(int line, int column) {
    return line < lines.size()
        ? lines.get(line).substring(0, Math.min(column, lines.get(line).length()))
        : "";
  }

  /** The nearest line above that says something, from 0; -1 where there is none. */
  private int above(int line) {
    int above = Math.min(line, lines.size()) - 1;
    while (above >= 0
        && (lines.get(above).isBlank() || lines.get(above).stripLeading().startsWith("#"))) {
      above--;
    }
    return above;
  }
}
