package org.midlateral.measurement;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.midlateral.measurement.SharedTable.TableRow;
import org.midlateral.shared.SharedData;

/**
 * A text that warns the user of the finished piece.
 *
 * @param code a stable word for scripts
 * @param text one or two sentences for a person
 * @param figure a sentence on the temperature at which a material softens, to be formatted with it;
 *     empty where there is none to tell
 * @param materials the materials it is limited to, by name; empty where it always applies
 * @param printed whether it is of printed pieces, and not of a sheet that is moulded
 */
public record Caution(
    String code, String text, String figure, List<String> materials, boolean printed) {
  private static final String CREEP = "creep";

  public Caution {
    materials = List.copyOf(materials);
  }

  private static final class Standard {
    static final List<Caution> TABLE = load();
  }

  /** All cautions of the shared table, in its order. */
  public static List<Caution> all() {
    return Standard.TABLE;
  }

  /**
   * Those that apply to a piece of some material.
   *
   * @param material its name
   */
  public static List<Caution> forMaterial(String material) {
    return all().stream()
        .filter(caution -> caution.materials.isEmpty() || caution.materials.contains(material))
        .filter(caution -> !caution.printed || !Material.named(material).moulded())
        .map(caution -> caution.of(material))
        .toList();
  }

  /**
   * Those that apply to some material and not to all.
   *
   * @param material its name
   */
  public static List<Caution> limitedTo(String material) {
    return forMaterial(material).stream().filter(c -> !c.materials.isEmpty()).toList();
  }

  /** The same with the material's own figure in its text. */
  private Caution of(String material) {
    if (figure.isEmpty()) {
      return this;
    }
    Material own = Material.named(material);
    double value =
        code.equals(CREEP)
            ? 100 * own.overnight().map(Material.Creep::share).orElse(1.0)
            : own.softens();
    String told = String.format(Locale.ROOT, figure, value);
    return new Caution(code, text + " " + told, "", materials, printed);
  }

  private static List<Caution> load() {
    List<Caution> cautions = new ArrayList<>();
    for (TableRow row : SharedTable.rows(SharedTable.load(SharedData.CAUTIONS))) {
      String figure = row.optional("figure").orElse("");
      boolean printed = row.optional("printed").isPresent();
      cautions.add(
          new Caution(row.text("code"), row.text("text"), figure, materials(row), printed));
    }
    return List.copyOf(cautions);
  }

  private static List<String> materials(TableRow row) {
    if (row.optional("creeps").isPresent()) {
      return Material.all().stream()
          .filter(material -> material.overnight().isPresent())
          .map(Material::name)
          .toList();
    }
    return row.optional("softens-below")
        .map(Double::parseDouble)
        .map(
            limit ->
                Material.all().stream()
                    .filter(material -> material.softens() < limit)
                    .map(Material::name)
                    .toList())
        .orElse(row.list("materials"));
  }
}
