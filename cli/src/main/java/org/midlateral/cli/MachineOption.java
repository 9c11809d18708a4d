package org.midlateral.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.midlateral.measurement.Machine;
import org.midlateral.measurement.file.MachineFile;
import picocli.CommandLine.Option;

/** The machine that parts are printed on. */
final class MachineOption {
  private static final String PROCESS = "print.process";

  @Option(
      names = "--machine",
      paramLabel = "FILE",
      description = {
        "Profile of the machine: process, bed, least wall and gap, shrinkage, poses; its process",
        "replaces what the order says."
      })
  private Path file;

  /** What came of reading the profile; nothing where none was named. */
  Optional<MachineFile.ReadMachine> read() {
    return Optional.ofNullable(file).map(MachineFile::read);
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
