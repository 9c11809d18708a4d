package org.midlateral.cli.line;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What a line gave for the parameters of its command. */
public final class ReadLine {

  /**
   * What was given for one of them.
   *
   * @param words as they were typed
   * @param values that were read from them
   */
  record Given<T>(Parameter<T> parameter, List<String> words, List<T> values) {

    static <T> Given<T> nothing(Parameter<T> parameter) {
      return new Given<>(parameter, new ArrayList<>(), new ArrayList<>());
    }

    void add(String word) throws WrongCommandLine {
      if (!parameter.repeatable() && !words.isEmpty()) {
        String label = parameter.takesValue() ? " (" + parameter.label() + ")" : "";
        throw new WrongCommandLine(
            "option '" + parameter.name() + "'" + label + " should be specified only once");
      }
      values.add(parameter.kind().read(parameter.shortName(), word));
      words.add(word);
    }

    /** What may be told of it to others. */
    private String told() {
      if (!parameter.takesValue()) {
        return parameter.name();
      }
      String value = parameter.kind().isPrivate() ? parameter.label() : String.join(",", words);
      return (parameter.name() + " " + value).strip();
    }
  }

  /** By name; in the order of the line, but for what stands for itself, which is first. */
  private final Map<String, Given<?>> given;

  ReadLine(Map<String, Given<?>> given) {
    this.given = given;
  }

  /** All values of a parameter, in the order of the line. */
  // One name is one parameter's, and its values were read by its kind.
  @SuppressWarnings("unchecked")
  public <T> List<T> all(Parameter<T> parameter) {
    Given<?> found = given.get(parameter.name());
    return found == null ? List.of() : (List<T>) found.values();
  }

  /** The value of a parameter, if it was given. */
  public <T> Optional<T> one(Parameter<T> parameter) {
    List<T> all = all(parameter);
    return all.isEmpty() ? Optional.empty() : Optional.of(all.get(0));
  }

  /** The value of a parameter that must be given. */
  public <T> T must(Parameter<T> parameter) {
    return all(parameter).get(0);
  }

  /** Whether a flag was given. */
  public boolean is(Parameter<Boolean> flag) {
    return one(flag).orElse(false);
  }

  /** The folder that an option names, or that of the file it names. */
  public Optional<Path> folder(String option) {
    Given<?> found = given.get(option);
    if (found == null) {
      return Optional.empty();
    }
    Path path = (Path) found.values().get(0);
    return found.parameter().label().equals(Parameter.FOLDER)
        ? Optional.of(path)
        : Optional.ofNullable(path.toAbsolutePath().getParent());
  }

  /** The line as it may be told to others: for what names a file or a key stands its label. */
  public List<String> told() {
    List<String> told = new ArrayList<>();
    for (Given<?> one : given.values()) {
      told.add(one.told());
    }
    return told;
  }
}
