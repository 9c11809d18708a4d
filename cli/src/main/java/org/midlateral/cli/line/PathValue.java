package org.midlateral.cli.line;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;

/** A path of a file or folder. */
public record PathValue() implements ValueKind<Path> {
  @Override
  public Path read(String name, String word) throws WrongCommandLine {
    if (word.isBlank()) {
      throw new WrongCommandLine(
          name
              + ": '"
              + word
              + "' names no file or folder; allowed: a path, as . for the folder you are in");
    }
    try {
      return Path.of(word);
    } catch (InvalidPathException e) {
      throw new WrongCommandLine(
          name
              + ": '"
              + word
              + "' is no path here; allowed: characters that file names of this system and its"
              + " locale may have, as under a UTF-8 locale");
    }
  }

  @Override
  public boolean isPath() {
    return true;
  }

  @Override
  public boolean isPrivate() {
    return true;
  }
}
