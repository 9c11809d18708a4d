package org.midlateral.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import org.midlateral.document.format.SolidFormat;
import org.midlateral.measurement.Machine;
import org.midlateral.measurement.Order;
import org.midlateral.measurement.file.MachineFile;
import org.midlateral.measurement.file.Orders;
import org.midlateral.measurement.key.KeyTable;
import org.midlateral.recipe.record.MakingSource;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The measurement file of a command, and what is laid over it. */
final class InputOptions {

  /** What may follow {@code --set}, for the shell's completion; read when that is asked for. */
  static final class SettableKeys implements Iterable<String> {
    @Override
    public Iterator<String> iterator() {
      return KeyTable.standard().keys().stream()
          .filter(key -> !key.isOfItem())
          .map(key -> key.path() + "=")
          .iterator();
    }
  }

  @Parameters(paramLabel = "FILE", description = "Measurement file, YAML or JSON.")
  private Path file;

  @Option(
      names = "--set",
      paramLabel = "KEY=VALUE",
      completionCandidates = InputOptions.SettableKeys.class,
      description = "Replaces what the file says, as trough.wall=2; may be repeated.")
  private List<String> overrides = new ArrayList<>();

  private final List<Order> orders = new ArrayList<>();

  Path file() {
    return file;
  }

  Orders.Result read() {
    return kept(Orders.read(file, overrides));
  }

  /** Reads the file for a machine, where a profile was named. */
  Orders.Result read(MachineOption option) {
    Optional<MachineFile.ReadMachine> profile = option.read();
    if (profile.isPresent() && profile.get().machine().isEmpty()) {
      return new Orders.Result(null, profile.get().errors(), List.of());
    }
    Optional<Machine> machine = profile.flatMap(MachineFile.ReadMachine::machine);
    Orders.Result read = Orders.read(file, MachineOption.with(machine, overrides));
    return kept(
        read.ok() && machine.isPresent()
            ? new Orders.Result(read.order().on(machine.get()), read.errors(), read.cautions())
            : read);
  }

  /** What was asked for, for the record of making. */
  MakingSource source(Order order, Collection<SolidFormat> formats) {
    return MakingSource.of(String.valueOf(file.getFileName()), order, overrides, formats);
  }

  /** Reads one more file, as it is. */
  Orders.Result read(Path other) {
    return kept(Orders.read(other, List.of()));
  }

  private Orders.Result kept(Orders.Result read) {
    if (read.ok()) {
      orders.add(read.order());
    }
    return read;
  }

  /** What has been read so far. */
  List<Order> orders() {
    return orders;
  }
}
