package org.midlateral.cli.line;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * One of a few, in capitals or not.
 *
 * @param all that are allowed
 */
public record OneOf<T extends Enum<T>>(List<T> all) implements ValueKind<T> {
  public OneOf {
    all = List.copyOf(all);
  }

  @Override
  public T read(String name, String word) throws WrongCommandLine {
    for (T each : all) {
      if (each.toString().equalsIgnoreCase(word)) {
        return each;
      }
    }
    throw new WrongCommandLine(name + ": '" + word + "' is none of " + String.join(", ", words()));
  }

  @Override
  public List<String> words() {
    List<String> words = new ArrayList<>();
    for (T each : all) {
      words.add(each.toString().toLowerCase(Locale.ROOT));
    }
    return words;
  }
}
