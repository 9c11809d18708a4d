package org.midlateral.recipe.plate;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.midlateral.document.Content;
import org.midlateral.document.format.SolidSet;
import org.midlateral.document.format.ThreeMfFile;
import org.midlateral.measurement.Machine;
import org.midlateral.recipe.record.Program;

/** The plates of many orders, as files. */
public final class PlateSet {
  /** Name of the sheet that tells whose part lies where. */
  public static final String SHEET = "plates.pdf";

  private final Machine machine;
  private final List<Plate> plates;
  private final List<String> leftOut;
  private final int partCount;

  private PlateSet(Machine machine, List<Plate> plates, List<String> leftOut, int partCount) {
    this.machine = machine;
    this.plates = plates;
    this.leftOut = leftOut;
    this.partCount = partCount;
  }

  /**
   * Lays the parts of orders.
   *
   * @param homes their folders
   * @throws IOException if one cannot be read
   */
  public static PlateSet of(List<Path> homes, Machine machine) throws IOException {
    PlateParts gathered = new PlateParts();
    for (Path home : homes) {
      gathered.add(home);
    }
    Plate.LaidParts laid = Plate.lay(gathered.parts(), machine);
    List<String> leftOut = new ArrayList<>(gathered.leftOut());
    for (PlatePart part : laid.tooLarge()) {
      leftOut.add(part.solid().title() + ": left out, it has no room on " + machine.name());
    }
    return new PlateSet(
        machine, laid.plates(), leftOut, gathered.parts().size() - laid.tooLarge().size());
  }

  /** Parts that have a place. */
  public int partCount() {
    return partCount;
  }

  /** How many plates there are. */
  public int plateCount() {
    return plates.size();
  }

  /** Why something was left out, a sentence each. */
  public List<String> leftOut() {
    return List.copyOf(leftOut);
  }

  /** Shares of the bed that each plate's parts cover, in its fullest layer. */
  public List<Double> fills() {
    return plates.stream().map(Plate::fill).toList();
  }

  /** All files by name: a 3MF for each plate, and the sheet. */
  public Map<String, Content> files() {
    Map<String, Content> files = new LinkedHashMap<>();
    for (int i = 0; i < plates.size(); i++) {
      Plate plate = plates.get(i);
      Set<String> materials = new TreeSet<>();
      plate.parts().forEach(part -> materials.add(material(part)));
      SolidSet solids =
          new SolidSet(
              "plate " + (i + 1) + " of " + plates.size() + ", " + machine.name(),
              "midlateral " + Program.current().version() + "+" + Program.current().build(),
              String.join(", ", materials),
              plate.solids(),
              true);
      files.put("plate-" + (i + 1) + ".3mf", new ThreeMfFile(solids));
    }
    if (!plates.isEmpty()) {
      byte[] sheet = PlateSheet.pdf(plates, machine);
      files.put(SHEET, out -> out.write(sheet));
    }
    return files;
  }

  private static String material(LaidPart part) {
    return part.turned().part().record().settings().getOrDefault("material.name", "");
  }
}
