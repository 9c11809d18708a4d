package org.midlateral.recipe.plate;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.midlateral.document.format.NamedSolid;
import org.midlateral.measurement.Machine;

/** One bed, or one volume of powder, and the parts on it. */
final class Plate {
  private final Machine machine;
  private final List<Layer> layers = new ArrayList<>();

  private Plate(Machine machine) {
    this.machine = machine;
  }

  /** What came of laying parts: the plates, and the parts that no plate has room for. */
  record LaidParts(List<Plate> plates, List<PlatePart> tooLarge) {}

  /** Lays parts on as few plates as it can, each on the first that has room. */
  static LaidParts lay(List<PlatePart> parts, Machine machine) {
    List<Plate> plates = new ArrayList<>();
    List<PlatePart> tooLarge = new ArrayList<>();
    for (PlatePart part : sorted(parts, machine)) {
      List<TurnedPart> ways = TurnedPart.ways(part);
      boolean laid = plates.stream().anyMatch(plate -> plate.lay(part, ways));
      if (!laid) {
        Plate next = new Plate(machine);
        if (next.lay(part, ways)) {
          plates.add(next);
        } else {
          tooLarge.add(part);
        }
      }
    }
    return new LaidParts(plates, tooLarge);
  }

  /**
   * In layers the highest come first, so that each layer's parts are alike; on a bed the broadest.
   */
  private static List<PlatePart> sorted(List<PlatePart> parts, Machine machine) {
    Comparator<PlatePart> most =
        layered(machine)
            ? Comparator.comparingDouble(PlatePart::height)
            : Comparator.comparingDouble(
                part -> Footprint.of(part.solid().mesh(), part.solid().pose()).area());
    return parts.stream().sorted(most.reversed()).toList();
  }

  /** Whether parts may lie over one another: where the powder holds them. */
  private static boolean layered(Machine machine) {
    return !machine.limits().supports() && !machine.limits().stands();
  }

  private boolean lay(PlatePart part, List<TurnedPart> ways) {
    double height = part.height();
    for (Layer layer : layers) {
      if (height <= layer.height() + 1e-9 && layer.lay(ways)) {
        return true;
      }
    }
    double base = 0;
    if (!layers.isEmpty()) {
      Layer top = layers.get(layers.size() - 1);
      base = top.base() + top.height() + machine.spacing();
    }
    if (!layers.isEmpty() && !layered(machine) || base + height > machine.bed().height()) {
      return false;
    }
    Layer next =
        new Layer(
            cells(machine.bed().width() - 2 * machine.margin()),
            cells(machine.bed().depth() - 2 * machine.margin()),
            (int) Math.ceil(machine.spacing() / Footprint.CELL),
            base,
            layered(machine) ? height : machine.bed().height());
    if (!next.lay(ways)) {
      return false;
    }
    layers.add(next);
    return true;
  }

  private static int cells(double length) {
    return Math.max(1, (int) (length / Footprint.CELL));
  }

  /** The parts, layer by layer. */
  List<LaidPart> parts() {
    return layers.stream().flatMap(layer -> layer.parts().stream()).toList();
  }

  /** The parts in their places, for a file. */
  List<NamedSolid> solids() {
    return parts().stream().map(part -> part.solid(machine.margin())).toList();
  }

  int layerCount() {
    return layers.size();
  }

  /** Share of the bed between the margins that the parts of its fullest layer cover. */
  double fill() {
    double bed =
        (machine.bed().width() - 2 * machine.margin())
            * (machine.bed().depth() - 2 * machine.margin());
    return layers.stream()
            .mapToDouble(
                layer ->
                    layer.parts().stream().mapToDouble(p -> p.turned().footprint().area()).sum())
            .max()
            .orElse(0)
        / bed;
  }
}
