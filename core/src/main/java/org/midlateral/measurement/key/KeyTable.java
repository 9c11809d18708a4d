package org.midlateral.measurement.key;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.midlateral.measurement.Digit;
import org.midlateral.measurement.SharedTable;
import org.midlateral.measurement.SharedTable.TableRow;
import org.midlateral.shared.SharedData;

/** Every key of a measurement file, in the order of the table. */
public final class KeyTable {

  /** Longer words are not looked up among the keys; none is as long. */
  private static final int LONGEST_WORD = 60;

  private final Map<String, InputKey> keys = new LinkedHashMap<>();
  private final Map<String, String> sectionComments = new LinkedHashMap<>();

  /** The sections that keys stand in, without the keys that are lists. */
  private final Set<String> sections = new LinkedHashSet<>();

  private KeyTable(Map<?, ?> table) {
    for (TableRow row : SharedTable.rows(table.get("sections"))) {
      sectionComments.put(row.text("path"), row.text("comment"));
    }
    for (TableRow row : SharedTable.rows(table.get("keys"))) {
      InputKey key = key(row);
      keys.put(key.path(), key);
      for (String at = key.section(); !at.isEmpty(); at = sectionOf(at)) {
        sections.add(at);
      }
    }
    sections.removeAll(keys.keySet());
  }

  private static final class Standard {
    static final KeyTable TABLE = new KeyTable((Map<?, ?>) SharedTable.load(SharedData.KEYS));
  }

  /** The table in the shared data. */
  public static KeyTable standard() {
    return Standard.TABLE;
  }

  private static final class Visits {
    static final KeyTable TABLE = new KeyTable((Map<?, ?>) SharedTable.load(SharedData.VISIT_KEYS));
  }

  /** The table of what is read at the visits of a course. */
  public static KeyTable visits() {
    return Visits.TABLE;
  }

  /** All keys, in order. */
  public List<InputKey> keys() {
    return List.copyOf(keys.values());
  }

  /** One sentence on a section; empty where the table has none. */
  public String sectionComment(String section) {
    return sectionComments.getOrDefault(section, "");
  }

  /**
   * The key at a path of a file.
   *
   * @param path where list items may be numbered, as in {@code relief.bubbles[2].height}
   */
  public Optional<InputKey> find(String path) {
    return Optional.ofNullable(keys.get(generic(path)));
  }

  /** Whether a path of a file names a section. */
  public boolean isSection(String path) {
    return sections.contains(generic(path));
  }

  /** The names that may stand directly in a section; the root is the empty path. */
  public List<String> namesIn(String section) {
    String prefix = section.isEmpty() ? "" : generic(section) + ".";
    Set<String> names = new LinkedHashSet<>();
    for (String path : keys.keySet()) {
      if (path.startsWith(prefix)) {
        String rest = path.substring(prefix.length());
        int end = rest.indexOf('.');
        names.add((end < 0 ? rest : rest.substring(0, end)).replace("[]", ""));
      }
    }
    return new ArrayList<>(names);
  }

  /**
   * The key or section whose path is written most like an unknown one; empty where none is near.
   */
  public Optional<String> nearest(String path) {
    String asked = generic(path);
    if (asked.length() > LONGEST_WORD) {
      return Optional.empty();
    }
    String last = asked.substring(asked.lastIndexOf('.') + 1);
    Set<String> candidates = new LinkedHashSet<>(sections);
    candidates.addAll(keys.keySet());
    String best = null;
    double least = Double.POSITIVE_INFINITY;
    for (String candidate : candidates) {
      boolean sameName = candidate.substring(candidate.lastIndexOf('.') + 1).equals(last);
      double distance = sameName ? 0.5 : EditDistance.between(asked, candidate);
      if (distance < least) {
        least = distance;
        best = candidate;
      }
    }
    return least <= Math.max(2, asked.length() / 4.0) ? Optional.of(best) : Optional.empty();
  }

  /** Why nothing can be set at a path that is not a key's, and what may be meant by it. */
  public String whyNoKey(String path) {
    String list = path.replaceFirst("\\[.*", "");
    if (!list.equals(path) && keys.containsKey(list)) {
      return "is of a list's items; allowed: the whole list, " + list;
    }
    if (isSection(path)) {
      return "is a section; allowed: a key in it, as " + firstIn(path);
    }
    return "is not a key" + nearest(path).map(near -> "; did you mean " + near + "?").orElse("");
  }

  private String firstIn(String section) {
    return keys.keySet().stream()
        .filter(p -> p.startsWith(section + "."))
        .findFirst()
        .orElseThrow();
  }

  private static String generic(String path) {
    return path.indexOf('[') < 0 ? path : path.replaceAll("\\[\\d*]", "[]");
  }

  private static String sectionOf(String path) {
    if (path.endsWith("[]")) {
      return path.substring(0, path.length() - 2);
    }
    return path.contains(".") ? path.substring(0, path.lastIndexOf('.')) : "";
  }

  private static InputKey key(TableRow row) {
    ValueKind kind = ValueKind.of(row.text("kind"));
    String unit =
        switch (kind) {
          case LENGTH -> "mm";
          case ANGLE -> "°";
          default -> row.optional("unit").orElse("");
        };
    return new InputKey(
        row.text("key"),
        kind,
        unit,
        row.has("required"),
        row.optional("default"),
        row.optional("by-hand"),
        row.optional("making"),
        row.optional("letter"),
        row.optional("example"),
        range(row, "refused"),
        range(row, "usual"),
        usualOf(row),
        row.list("or"),
        row.list("choices"),
        row.optional("pattern").orElse(""),
        row.optional("form").orElse(""),
        row.text("comment"),
        row.text("source"));
  }

  private static Map<Digit, AllowedRange> usualOf(TableRow row) {
    Map<Digit, AllowedRange> ranges = new EnumMap<>(Digit.class);
    TableRow byFinger = row.row("usual-of");
    for (Digit digit : Digit.values()) {
      range(byFinger, digit.key()).ifPresent(range -> ranges.put(digit, range));
    }
    return ranges;
  }

  private static Optional<AllowedRange> range(TableRow row, String field) {
    if (!row.has(field)) {
      return Optional.empty();
    }
    List<String> ends = row.list(field);
    return Optional.of(
        new AllowedRange(Double.parseDouble(ends.get(0)), Double.parseDouble(ends.get(1))));
  }
}
