package org.midlateral.recipe.batch;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.midlateral.measurement.key.KeyTable;
import org.midlateral.measurement.key.Shown;

/**
 * What a table's columns mean where they are not named after keys. Names are compared without
 * regard to capitals and blanks around them.
 *
 * @param keys by a column's name
 * @param ignored names of columns that mean nothing here
 */
public record ColumnNames(Map<String, String> keys, List<String> ignored) {
  /** Columns that are all named after keys. */
  public static final ColumnNames PLAIN = new ColumnNames(Map.of(), List.of());

  public ColumnNames {
    Map<String, String> folded = new LinkedHashMap<>();
    keys.forEach((column, key) -> folded.put(folded(column), key));
    keys = Collections.unmodifiableMap(folded);
    ignored = ignored.stream().map(ColumnNames::folded).toList();
  }

  /**
   * From the words of a user.
   *
   * @param maps each {@code COLUMN=KEY}
   * @param ignored names of columns
   * @throws SourceProblem where a word is none, or names no key
   */
  public static ColumnNames of(List<String> maps, List<String> ignored) throws SourceProblem {
    Map<String, String> keys = new LinkedHashMap<>();
    for (String map : maps) {
      int equals = map.lastIndexOf('=');
      String key = map.substring(equals + 1).strip();
      if (equals < 1 || KeyTable.standard().find(key).isEmpty() || key.contains("[")) {
        String why =
            equals < 1 ? "is not COLUMN=KEY" : key + " " + KeyTable.standard().whyNoKey(key);
        throw new SourceProblem("--map " + Shown.shown(map) + ": " + why);
      }
      if (keys.put(folded(map.substring(0, equals)), key) != null) {
        throw new SourceProblem("--map " + Shown.shown(map) + ": the column is mapped twice");
      }
    }
    return new ColumnNames(keys, ignored);
  }

  /** Whether there are none but plain ones. */
  boolean isPlain() {
    return keys.isEmpty() && ignored.isEmpty();
  }

  boolean isIgnored(String column) {
    return ignored.contains(folded(column));
  }

  /** The key that a column stands for; as it is named where it stands for none. */
  String key(String column) {
    String folded = folded(column);
    if (keys.containsKey(folded)) {
      return keys.get(folded);
    }
    boolean known = KeyTable.standard().find(folded).isPresent();
    return known ? folded : column.strip();
  }

  static String folded(String column) {
    return column.strip().toLowerCase(Locale.ROOT);
  }
}
