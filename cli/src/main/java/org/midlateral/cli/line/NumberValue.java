package org.midlateral.cli.line;

/** A number, with decimals or without. */
public record NumberValue() implements ValueKind<Double> {
  @Override
  public Double read(String name, String word) throws WrongCommandLine {
    try {
      return Double.valueOf(word);
    } catch (NumberFormatException e) {
      throw new WrongCommandLine(
          name + ": '" + word + "' is not a number; decimals follow a point");
    }
  }
}
