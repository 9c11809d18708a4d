package org.midlateral.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.midlateral.cli.line.Parameter;
import org.midlateral.cli.line.PathValue;
import org.midlateral.cli.line.ReadLine;
import org.midlateral.cli.line.TextValue;
import org.midlateral.document.format.SolidFormat;
import org.midlateral.measurement.Machine;
import org.midlateral.measurement.Order;
import org.midlateral.measurement.file.MachineFile;
import org.midlateral.measurement.file.Orders;
import org.midlateral.measurement.key.KeyTable;
import org.midlateral.recipe.record.MakingSource;

/** The measurement file of a command, and what is laid over it. */
final class InputOptions {

  private static final Parameter<Path> FILE =
      Parameter.operand("FILE", new PathValue(), "Measurement file, YAML or JSON.");

  private static final Parameter<String> SET =
      Parameter.option(
              "--set",
              "KEY=VALUE",
              new SettableKey(),
              "Replaces what the file says, as trough.wall=2; may be repeated.")
          .repeated();

  static final List<Parameter<?>> ALL = List.of(FILE, SET);

  private final Path file;
  private final List<String> overrides;
  private final List<Order> orders = new ArrayList<>();

  InputOptions(ReadLine line) {
    this.file = line.must(FILE);
    this.overrides = line.all(SET);
  }

  /** What may follow {@code --set}; the keys are read when the shell is to offer them. */
  static final class SettableKey extends TextValue {
    @Override
    public List<String> words() {
      return KeyTable.standard().keys().stream()
          .filter(key -> !key.isOfItem())
          .map(key -> key.path() + "=")
          .toList();
    }
  }

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
