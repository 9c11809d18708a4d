package org.midlateral.cli.line;

/**
 * A whole number.
 *
 * @param least that it may be
 * @param most that it may be
 */
public record WholeNumber(long least, long most) implements ValueKind<Long> {
  @Override
  public Long read(String name, String word) throws WrongCommandLine {
    try {
      long number = Long.parseLong(word);
      if (number >= least && number <= most) {
        return number;
      }
    } catch (NumberFormatException e) {
      if (!word.matches("[+-]?\\d+")) {
        throw new WrongCommandLine(name + ": '" + word + "' is not a whole number");
      }
    }
    throw new WrongCommandLine(name + ": '" + word + "' is too large");
  }
}
