package org.midlateral.cli;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import org.midlateral.cli.line.Parameter;
import org.midlateral.cli.line.ReadLine;
import org.midlateral.cli.line.ValueKind;
import org.midlateral.cli.line.WrongCommandLine;
import org.midlateral.document.format.SolidFormat;

/**
 * The formats that solids are written in.
 *
 * @param chosen each once; the usual two where none was asked for
 */
record FormatOptions(Collection<SolidFormat> chosen) {
  private static final Parameter<SolidFormat> FORMAT =
      Parameter.option(
              "--format",
              "FORMAT",
              new FormatName(),
              "Format of the solids' files: "
                  + Parameter.WORDS
                  + "; may be repeated (default: stl and 3mf).")
          .repeated();

  static final List<Parameter<?>> ALL = List.of(FORMAT);

  static FormatOptions of(ReadLine line) {
    List<SolidFormat> asked = line.all(FORMAT);
    return new FormatOptions(asked.isEmpty() ? SolidFormat.USUAL : new LinkedHashSet<>(asked));
  }

  /** A format's name. */
  private record FormatName() implements ValueKind<SolidFormat> {
    @Override
    public SolidFormat read(String name, String word) throws WrongCommandLine {
      return SolidFormat.of(word)
          .orElseThrow(
              () ->
                  new WrongCommandLine(
                      name
                          + ": '"
                          + word
                          + "' is no format; allowed: "
                          + String.join(", ", words())));
    }

    @Override
    public List<String> words() {
      List<String> words = new ArrayList<>();
      for (SolidFormat format : SolidFormat.values()) {
        words.add(format.key());
      }
      return words;
    }
  }
}
