package org.midlateral.cli.text;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads a path from the command line. */
public final class PathConverter implements ITypeConverter<Path> {
  @Override
  public Path convert(String text) {
    if (text.isBlank()) {
      throw new TypeConversionException(
          "'"
              + text
              + "' names no file or folder; allowed: a path, as . for the folder you are in");
    }
    try {
      return Path.of(text);
    } catch (InvalidPathException e) {
      throw new TypeConversionException(
          "'"
              + text
              + "' is no path here; allowed: characters that file names of this system and its"
              + " locale may have, as under a UTF-8 locale");
    }
  }
}
