package org.midlateral.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.midlateral.cli.line.Parameter;
import org.midlateral.cli.line.PathValue;
import org.midlateral.cli.line.ReadLine;
import org.midlateral.measurement.Machine;
import org.midlateral.measurement.file.MachineFile;

/**
 * The machine that parts are printed on.
 *
 * @param file its profile, if one was named
 */
record MachineOption(Optional<Path> file) {
  private static final String PROCESS = "print.process";

  private static final Parameter<Path> MACHINE =
      Parameter.option(
          "--machine",
          "FILE",
          new PathValue(),
          "Profile of the machine: process, bed, least wall and gap, shrinkage, poses; its process"
              + " replaces what the order says.");

  static final List<Parameter<?>> ALL = List.of(MACHINE);

  static MachineOption of(ReadLine line) {
    return new MachineOption(line.one(MACHINE));
  }

  /** What came of reading the profile; nothing where none was named. */
  Optional<MachineFile.ReadMachine> read() {
    return file.map(MachineFile::read);
  }

  /** Overrides with the machine's process among them, where none is there yet. */
  static List<String> with(Optional<Machine> machine, List<String> overrides) {
    boolean stated = overrides.stream().anyMatch(o -> o.strip().startsWith(PROCESS));
    if (machine.isEmpty() || stated) {
      return overrides;
    }
    List<String> all = new ArrayList<>(overrides);
    all.add(PROCESS + "=" + machine.get().limits().name());
    return all;
  }
}
