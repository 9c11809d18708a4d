package org.midlateral.measurement;

import java.util.Optional;

/**
 * One file read.
 *
 * @param measurements what was measured
 * @param design what was chosen
 * @param note a remark for the bench
 */
public record Order(Measurements measurements, Design design, Optional<String> note) {

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
    return new Order(other, design, note);
  }

  /** The same order with another design. */
  public Order withDesign(Design other) {
    return new Order(measurements, other, note);
  }

  /** The same order of a trough alone. */
  public Order withoutDorsalShell() {
    return withDesign(design.withDorsalShell(design.dorsalShell().withMake(false)));
  }
}
