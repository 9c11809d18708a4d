package org.midlateral.measurement;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.midlateral.measurement.SharedTable.TableRow;
import org.midlateral.shared.SharedData;

/**
 * A material by generic name; short-term values at room temperature, to compare designs with.
 *
 * @param name in measurement files
 * @param title on screens and sheets
 * @param modulus Young's modulus (MPa)
 * @param poisson Poisson's ratio
 * @param density g/cm³
 * @param allowableStrain bending strain borne now and again, as a share
 * @param softens temperature at which a worn piece loses its shape (°C)
 * @param overnight what is left of the modulus after 8 hours at 34 °C; empty where that is not
 *     known
 * @param madeBy what a piece is usually made by: names of printing processes, or {@code moulding};
 *     empty where that is not known
 * @param sources where each value comes from, by the property's name in the table
 */
public record Material(
    String name,
    String title,
    double modulus,
    double poisson,
    double density,
    double allowableStrain,
    double softens,
    Optional<Creep> overnight,
    List<String> madeBy,
    Map<String, String> sources) {

  /**
   * What is left of a modulus under a steady load, as a share.
   *
   * @param share most likely
   * @param low least
   * @param high most
   * @param moist share of the dry modulus when moist
   */
  public record Creep(double share, double low, double high, double moist) {}

  /** Moulding by hand, where a printing process would stand. */
  public static final String MOULDING = "moulding";

  private static final String OWN = "stated in the measurement file";

  public Material {
    madeBy = List.copyOf(madeBy);
    sources = Collections.unmodifiableMap(new LinkedHashMap<>(sources));
  }

  private static final class Standard {
    static final List<Material> TABLE = load();
  }

  /** All materials of the shared table, in its order. */
  public static List<Material> all() {
    return Standard.TABLE;
  }

  /**
   * A material of the shared table.
   *
   * @throws IllegalArgumentException where it has none of that name
   */
  public static Material named(String name) {
    return all().stream()
        .filter(material -> material.name.equals(name))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no material " + name));
  }

  /**
   * The material chosen, with the user's own values over the table's.
   *
   * @throws IllegalArgumentException where the table has no material of that name
   */
  public static Material of(Design.MaterialDesign chosen) {
    Material base = named(chosen.name());
    Map<String, String> sources = new LinkedHashMap<>(base.sources);
    chosen.modulus().ifPresent(value -> sources.put("modulus", OWN));
    chosen.poisson().ifPresent(value -> sources.put("poisson", OWN));
    chosen.density().ifPresent(value -> sources.put("density", OWN));
    chosen.allowableStrain().ifPresent(value -> sources.put("allowable-strain", OWN));
    return new Material(
        base.name,
        base.title,
        chosen.modulus().orElse(base.modulus),
        chosen.poisson().orElse(base.poisson),
        chosen.density().orElse(base.density),
        chosen.allowableStrain().orElse(base.allowableStrain),
        base.softens,
        base.overnight,
        base.madeBy,
        sources);
  }

  /** Whether a piece of it is moulded by hand from a sheet. */
  public boolean moulded() {
    return madeBy.contains(MOULDING);
  }

  /** Whether it may be printed by a process: as far as is known, and where it is printed at all. */
  public boolean goesWith(String process) {
    return madeBy.isEmpty() || moulded() || madeBy.contains(process);
  }

  private static List<Material> load() {
    List<Material> materials = new ArrayList<>();
    for (TableRow row : SharedTable.rows(SharedTable.load(SharedData.MATERIALS))) {
      Map<String, String> sources = new LinkedHashMap<>();
      materials.add(
          new Material(
              row.text("name"),
              row.text("title"),
              value(row, "modulus", sources),
              value(row, "poisson", sources),
              value(row, "density", sources),
              value(row, "allowable-strain", sources),
              value(row, "softens", sources),
              creep(row, sources),
              madeBy(row, sources),
              sources));
    }
    return List.copyOf(materials);
  }

  private static Optional<Creep> creep(TableRow row, Map<String, String> sources) {
    List<String> valuesAndSource = row.list("creep");
    if (valuesAndSource.isEmpty()) {
      return Optional.empty();
    }
    sources.put("creep", valuesAndSource.get(3));
    return Optional.of(
        new Creep(
            Double.parseDouble(valuesAndSource.get(0)),
            Double.parseDouble(valuesAndSource.get(1)),
            Double.parseDouble(valuesAndSource.get(2)),
            value(row, "moist", sources)));
  }

  /** All but the last, which is the source. */
  private static List<String> madeBy(TableRow row, Map<String, String> sources) {
    List<String> valuesAndSource = row.list("made-by");
    if (valuesAndSource.isEmpty()) {
      return List.of();
    }
    int last = valuesAndSource.size() - 1;
    sources.put("made-by", valuesAndSource.get(last));
    return valuesAndSource.subList(0, last);
  }

  private static double value(TableRow row, String property, Map<String, String> sources) {
    List<String> valueAndSource = row.list(property);
    sources.put(property, valueAndSource.get(1));
    return Double.parseDouble(valueAndSource.get(0));
  }
}
