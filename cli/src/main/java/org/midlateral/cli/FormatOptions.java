package org.midlateral.cli;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Iterator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.midlateral.document.format.SolidFormat;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** The formats that solids are written in. */
final class FormatOptions {
  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      converter = FormatConverter.class,
      completionCandidates = FormatNames.class,
      description = {
        "Format of the solids' files: ${COMPLETION-CANDIDATES}; may be repeated",
        "(default: stl and 3mf)."
      })
  private List<SolidFormat> formats = new ArrayList<>();

  /** Each format once; the usual two where none was asked for. */
  Collection<SolidFormat> chosen() {
    return formats.isEmpty() ? SolidFormat.USUAL : new LinkedHashSet<>(formats);
  }

  /** The names of all formats. */
  static final class FormatNames implements Iterable<String> {
    @Override
    public Iterator<String> iterator() {
      return Stream.of(SolidFormat.values()).map(SolidFormat::key).iterator();
    }
  }

  /** Reads a format's name. */
  static final class FormatConverter implements ITypeConverter<SolidFormat> {
    @Override
    public SolidFormat convert(String value) {
      return SolidFormat.of(value)
          .orElseThrow(
              () ->
                  new TypeConversionException(
                      "'"
                          + value
                          + "' is no format; allowed: "
                          + Stream.of(SolidFormat.values())
                              .map(SolidFormat::key)
                              .collect(Collectors.joining(", "))));
    }
  }
}
