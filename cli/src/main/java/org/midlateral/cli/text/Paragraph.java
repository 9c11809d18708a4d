package org.midlateral.cli.text;

/**
 * A paragraph for a terminal.
 *
 * @param text in one line
 */
public record Paragraph(String text) {
  /** Columns of the narrowest usual terminal. */
  private static final int WIDTH = 80;

  /**
   * Its lines, none wider than a terminal, unless a word is.
   *
   * @param first begins the first line
   * @param next begins the others
   */
  public String lines(String first, String next) {
    StringBuilder lines = new StringBuilder();
    StringBuilder line = new StringBuilder(first);
    boolean begun = false;
    for (String word : text.split(" ")) {
      if (begun && line.length() + 1 + word.length() > WIDTH) {
        lines.append(line).append('\n');
        line = new StringBuilder(next);
        begun = false;
      }
      line.append(begun ? " " : "").append(word);
      begun = true;
    }
    return lines.append(line).append('\n').toString();
  }
}
