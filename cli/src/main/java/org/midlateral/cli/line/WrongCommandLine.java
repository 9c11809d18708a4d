package org.midlateral.cli.line;

/** A command line that cannot be understood, told in one sentence for who typed it. */
public final class WrongCommandLine extends Exception {
  private static final long serialVersionUID = 1L;

  /**
   * A line that is wrong.
   *
   * @param sentence what is wrong, and what is allowed; control characters in it, which only what
   *     was typed can bring, become blanks
   */
  public WrongCommandLine(String sentence) {
    super(sentence.replaceAll("\\p{Cntrl}+", " "));
  }
}
