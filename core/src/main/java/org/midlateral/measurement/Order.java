package org.midlateral.measurement;

import java.util.Optional;

/**
 * One file read.
 *
 * @param measurements what was measured
 * @param design what was chosen
 * @param note a remark for the bench
 * @param machine it is printed on, where its profile was given
 */
public record Order(
    Measurements measurements, Design design, Optional<String> note, Optional<Machine> machine) {
  /** An order for any machine. */
  public Order(Measurements measurements, Design design, Optional<String> note) {
    this(measurements, design, note, Optional.empty());
  }

  /** What the machine it is printed on holds, or a usual one of its process. */
  public PrintProcess process() {
    return machine.map(Machine::limits).orElseGet(() -> PrintProcess.of(design.print().process()));
  }

  /** The same order for a machine. */
  public Order on(Machine printer) {
    return new Order(measurements, design, note, Optional.of(printer));
  }

  /** Whether the pieces are moulded by hand from a sheet: as it is said, else by the material. */
  public boolean byHand() {
    return switch (design.making().way()) {
      case HAND -> true;
      case PRINT -> false;
      case AUTO -> Material.named(design.material().name()).moulded();
    };
  }

  /** The same order for another finger. */
  public Order withMeasurements(Measurements other) {
    return new Order(other, design, note, machine);
  }

  /** The same order with another design. */
  public Order withDesign(Design other) {
    return new Order(measurements, other, note, machine);
  }

  /** The same order of a trough alone. */
  public Order withoutDorsalShell() {
    return withDesign(design.withDorsalShell(design.dorsalShell().withMake(false)));
  }
}
