package org.midlateral.cli.line;

import java.util.ArrayList;
import java.util.List;

/** Numbers with commas between them. */
public record NumberList() implements ValueKind<List<Double>> {
  @Override
  public List<Double> read(String name, String word) throws WrongCommandLine {
    NumberValue kind = new NumberValue();
    List<Double> numbers = new ArrayList<>();
    for (String part : word.split(",")) {
      numbers.add(kind.read(name, part));
    }
    return numbers;
  }
}
