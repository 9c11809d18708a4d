package org.midlateral.measurement.entry;

import java.util.HashSet;
import java.util.Set;

/** Writes keys line by line, opening the sections they stand in. */
public final class YamlLines {

  private static final int WIDTH = 96;

  private final StringBuilder text = new StringBuilder();
  private final Set<String> open = new HashSet<>();

  /** An empty line. */
  public YamlLines space() {
    text.append('\n');
    return this;
  }

  /**
   * A comment, broken into lines.
   *
   * @param section whose indentation it takes; empty for the root
   * @param words of the comment
   */
  public YamlLines comment(String section, String words) {
    String indent = indent(section) + "# ";
    StringBuilder line = new StringBuilder(indent);
    for (String word : words.strip().split("\\s+")) {
      if (line.length() > indent.length() && line.length() + word.length() >= WIDTH) {
        text.append(line.toString().stripTrailing()).append('\n');
        line = new StringBuilder(indent);
      }
      line.append(word).append(' ');
    }
    text.append(line.toString().stripTrailing()).append('\n');
    return this;
  }

  /** Opens a section, and those around it, where they are not open yet. */
  public YamlLines open(String section) {
    if (!section.isEmpty() && open.add(section)) {
      open(outer(section));
      text.append(indent(outer(section))).append(name(section)).append(":\n");
    }
    return this;
  }

  /** Whether a section was opened. */
  public boolean isOpen(String section) {
    return open.contains(section);
  }

  /** A key with its value. */
  public YamlLines value(String path, String value) {
    open(outer(path));
    text.append(indent(outer(path))).append(name(path)).append(": ").append(value).append('\n');
    return this;
  }

  /**
   * A key that is left to be filled in, with a note behind it; without its # it is indented well.
   */
  public YamlLines blank(String path, String note) {
    open(outer(path));
    text.append(indent(outer(path)))
        .append('#')
        .append(name(path))
        .append(':')
        .append(note)
        .append('\n');
    return this;
  }

  public String text() {
    return text.toString();
  }

  private static String outer(String path) {
    return path.contains(".") ? path.substring(0, path.lastIndexOf('.')) : "";
  }

  private static String name(String path) {
    return path.substring(path.lastIndexOf('.') + 1);
  }

  private static String indent(String section) {
    long depth = section.isEmpty() ? 0 : 1 + section.chars().filter(c -> c == '.').count();
    return "  ".repeat((int) depth);
  }
}
