package org.midlateral.measurement;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.midlateral.shared.SharedData;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;

/** Rows of a table in the shared data; our own files, so what is amiss in one is a defect. */
public final class SharedTable {

  /**
   * One row.
   *
   * @param fields value by field name, as YAML gives it
   */
  public record TableRow(Map<?, ?> fields) {

    public boolean has(String field) {
      return fields.containsKey(field);
    }

    public String text(String field) {
      return optional(field)
          .orElseThrow(() -> new IllegalStateException("no " + field + " in " + fields));
    }

    public Optional<String> optional(String field) {
      return Optional.ofNullable(fields.get(field)).map(Object::toString);
    }

    /** A mapping under a field; an empty one where there is none. */
    public TableRow row(String field) {
      return new TableRow(fields.get(field) instanceof Map<?, ?> under ? under : Map.of());
    }

    public List<String> list(String field) {
      List<String> list = new ArrayList<>();
      if (fields.get(field) instanceof List<?> values) {
        values.forEach(value -> list.add(value.toString()));
      }
      return list;
    }
  }

  private SharedTable() {}

  /** The whole of a resource. */
  public static Object load(String resource) {
    return new Load(LoadSettings.builder().setLabel(resource).build())
        .loadFromString(SharedData.text(resource));
  }

  /** Rows of a list of mappings. */
  public static List<TableRow> rows(Object list) {
    List<TableRow> rows = new ArrayList<>();
    for (Object row : (List<?>) list) {
      rows.add(new TableRow((Map<?, ?>) row));
    }
    return rows;
  }
}
