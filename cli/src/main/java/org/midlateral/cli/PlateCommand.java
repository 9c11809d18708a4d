package org.midlateral.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.midlateral.cli.line.CommandForm;
import org.midlateral.cli.line.Parameter;
import org.midlateral.cli.line.PathValue;
import org.midlateral.cli.line.ReadLine;
import org.midlateral.cli.line.ReadyCommand;
import org.midlateral.document.Content;
import org.midlateral.document.FileProblem;
import org.midlateral.document.WholeFile;
import org.midlateral.measurement.InputError;
import org.midlateral.measurement.file.MachineFile;
import org.midlateral.recipe.batch.OrderHomes;
import org.midlateral.recipe.plate.PlateSet;
import org.midlateral.recipe.record.MakingRecord;

/** Many orders' parts on one bed, or in one volume of powder. */
final class PlateCommand implements ReadyCommand {
  private static final Parameter<Path> FOLDERS =
      Parameter.operand(
              "ORDERS",
              new PathValue(),
              "Folders that make or batch wrote, with binary STL in them.")
          .repeated();

  private static final Parameter<Path> PROFILE =
      Parameter.option(
              "--machine",
              "FILE",
              new PathValue(),
              "Profile of the machine: its bed, and the room at edges and between parts.")
          .needed();

  static final CommandForm FORM =
      CommandForm.of(
              "Lays the parts of many orders on as few plates as it can.",
              "On a bed by their outlines, in powder in layers: a 3MF for each plate, and a sheet"
                  + " that tells whose part lies where. A part that is not as it was made is left"
                  + " out, with a message; then the status is 3.")
          .with(FOLDERS, PROFILE)
          .with(OutputOptions.ALL)
          .with(MessageOptions.QUIET)
          .examples(
              "midlateral plate out/batch --machine machine.yaml --out plates",
              "midlateral plate out/mon out/tue --machine machine.yaml --out plates");

  private final StandardStreams streams;
  private final List<Path> folders;
  private final Path profile;
  private final OutputOptions output;
  private final boolean quiet;

  PlateCommand(ReadLine line, StandardStreams streams) {
    this.streams = streams;
    this.folders = line.all(FOLDERS);
    this.profile = line.must(PROFILE);
    this.output = OutputOptions.of(line);
    this.quiet = line.is(MessageOptions.QUIET);
  }

  @Override
  public int call() throws IOException {
    MachineFile.ReadMachine machine = MachineFile.read(profile);
    if (machine.machine().isEmpty()) {
      machine.errors().stream().map(InputError::message).forEach(streams.err()::println);
      return ExitStatus.WRONG_INPUT.code();
    }
    List<Path> homes = new ArrayList<>();
    for (Path folder : folders) {
      List<Path> found = OrderHomes.in(folder);
      if (found.isEmpty()) {
        String text =
            "midlateral: %s: there is no %s in it; allowed: a folder that make or batch wrote";
        streams.err().println(String.format(text, folder, MakingRecord.FILE));
        return ExitStatus.WRONG_INPUT.code();
      }
      homes.addAll(found);
    }
    return write(PlateSet.of(homes, machine.machine().get()));
  }

  private int write(PlateSet plates) {
    plates.leftOut().forEach(streams.err()::println);
    if (plates.plateCount() > 0) {
      try {
        WholeFile.makeFolder(output.folder());
        Map<Path, Content> files = new LinkedHashMap<>();
        plates
            .files()
            .forEach((name, content) -> files.put(output.folder().resolve(name), content));
        WholeFile.writeAll(files, output.force());
      } catch (FileProblem problem) {
        return WriteFailure.tell(problem, streams);
      }
    }
    if (!quiet) {
      String fills =
          plates.fills().stream()
              .map(fill -> String.format(Locale.ROOT, "%.0f %%", 100 * fill))
              .collect(Collectors.joining(", "));
      streams
          .err()
          .println(
              output.folder()
                  + ": plates: "
                  + plates.plateCount()
                  + ", parts: "
                  + plates.partCount()
                  + ", of the bed covered: "
                  + fills);
    }
    return plates.leftOut().isEmpty() ? ExitStatus.DONE.code() : ExitStatus.DESIGN_REFUSED.code();
  }
}
