package org.midlateral.cli;

import java.nio.file.Path;
import java.util.List;
import org.midlateral.cli.line.Parameter;
import org.midlateral.cli.line.PathValue;
import org.midlateral.cli.line.ReadLine;

/**
 * The folder that a command writes into.
 *
 * @param folder made where it is missing
 * @param force whether files in it may be replaced
 */
record OutputOptions(Path folder, boolean force) {
  static final Parameter<Path> OUT =
      Parameter.option(
              "--out",
              Parameter.FOLDER,
              new PathValue(),
              "Folder to write into; made where it is missing.")
          .needed();

  private static final Parameter<Boolean> FORCE =
      Parameter.flag("--force", "Replaces files that exist.");

  static final List<Parameter<?>> ALL = List.of(OUT, FORCE);

  static OutputOptions of(ReadLine line) {
    return new OutputOptions(line.must(OUT), line.is(FORCE));
  }
}
