package org.midlateral.cli.line;

import java.util.List;

/**
 * What may stand behind an option, or for itself.
 *
 * @param <T> what is read from it
 */
public interface ValueKind<T> {
  /**
   * Reads a word.
   *
   * @param name of the option, or the label of what stands for itself, for the sentence
   */
  T read(String name, String word) throws WrongCommandLine;

  /** Words that the shell may offer and the help may name; none where there are too many. */
  default List<String> words() {
    return List.of();
  }

  /** Whether it is the path of a file or folder. */
  default boolean isPath() {
    return false;
  }

  /** Whether it may name a file or tell of a person, so that it is left out of reports. */
  default boolean isPrivate() {
    return false;
  }
}
