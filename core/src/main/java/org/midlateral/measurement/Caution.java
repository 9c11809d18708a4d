package org.midlateral.measurement;

import java.util.ArrayList;
import java.util.List;
import org.midlateral.measurement.SharedTable.Row;
import org.midlateral.shared.SharedData;

/**
 * A text that warns the user of the finished piece.
 *
 * @param code a stable word for scripts
 * @param text one or two sentences for a person
 * @param materials the materials it is limited to, by name; empty where it always applies
 */
public record Caution(String code, String text, List<String> materials) {

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
        .toList();
  }

  private static List<Caution> load() {
    List<Caution> cautions = new ArrayList<>();
    for (Row row : SharedTable.rows(SharedTable.load(SharedData.CAUTIONS))) {
      cautions.add(new Caution(row.text("code"), row.text("text"), row.list("materials")));
    }
    return List.copyOf(cautions);
  }
}
