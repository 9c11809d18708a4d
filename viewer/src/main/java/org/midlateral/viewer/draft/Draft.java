package org.midlateral.viewer.draft;

import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.midlateral.measurement.LengthUnit;
import org.midlateral.measurement.key.InputKey;
import org.midlateral.measurement.key.KeyTable;

/**
 * A measurement file as typed: text by key path, as {@code trough.wall} or {@code
 * relief.bubbles[0].height}. Immutable.
 *
 * @param values what stands at each path; a key of a list's item may be empty, any other is absent
 *     instead
 */
public record Draft(Map<String, String> values) {
  private static final Pattern NUMBER = Pattern.compile("\\[\\d+]");
  private static final Pattern ITEM = Pattern.compile("(.*)\\[(\\d+)]\\..*");

  public Draft {
    values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
  }

  /** The draft of a finger that nothing is known of yet but how its pieces will be made. */
  public static Draft fresh(String making) {
    return new Draft(Map.of("making", making));
  }

  /** The key that a path is of; empty where the table knows none. */
  public static Optional<InputKey> key(String path) {
    return KeyTable.standard().find(generic(path));
  }

  /** Paths that the key table does not know. */
  public List<String> unknown() {
    return values.keySet().stream().filter(path -> key(path).isEmpty()).toList();
  }

  /** Keys that must be filled in and are not, in the table's order. */
  public List<String> missing() {
    return KeyTable.standard().keys().stream()
        .filter(key -> key.required() && !key.isOfItem())
        .map(InputKey::path)
        .filter(path -> get(path).isEmpty())
        .toList();
  }

  /** The unit of lengths that carry none of their own; mm where it is not known. */
  public LengthUnit unit() {
    String symbol = get("unit").toLowerCase(Locale.ROOT);
    return Stream.of(LengthUnit.values())
        .filter(unit -> unit.symbol().equals(symbol))
        .findFirst()
        .orElse(LengthUnit.MM);
  }

  /** The draft without what stands at a path. */
  public Draft without(String path) {
    Map<String, String> changed = new LinkedHashMap<>(values);
    changed.remove(path);
    return new Draft(changed);
  }

  /** What stands at a path; empty where nothing does. */
  public String get(String path) {
    return values.getOrDefault(path, "");
  }

  /** The draft with another text at a path; an empty text takes the key out. */
  public Draft with(String path, String text) {
    Map<String, String> changed = new LinkedHashMap<>(values);
    if (text.isBlank() && !path.contains("[")) {
      changed.remove(path);
    } else {
      changed.put(path, text.strip());
    }
    return new Draft(changed);
  }

  /** Number of items of a list. */
  public int items(String list) {
    TreeSet<Integer> numbers = new TreeSet<>();
    for (String path : values.keySet()) {
      Matcher item = ITEM.matcher(path);
      if (item.matches() && item.group(1).equals(list)) {
        numbers.add(Integer.valueOf(item.group(2)));
      }
    }
    return numbers.isEmpty() ? 0 : numbers.last() + 1;
  }

  /** The draft without one item of a list; the later ones move up. */
  public Draft withoutItem(String list, int item) {
    Map<String, String> changed = new LinkedHashMap<>();
    values.forEach(
        (path, text) -> {
          Matcher found = ITEM.matcher(path);
          boolean inList = found.matches() && found.group(1).equals(list);
          int number = inList ? Integer.parseInt(found.group(2)) : -1;
          if (number > item) {
            String rest = path.substring(path.indexOf(']') + 1);
            changed.put(list + "[" + (number - 1) + "]" + rest, text);
          } else if (number != item) {
            changed.put(path, text);
          }
        });
    return new Draft(changed);
  }

  /** Paths of the key table's order first, then those it does not know. */
  List<String> orderedPaths() {
    Map<String, Integer> places = new HashMap<>();
    KeyTable.standard().keys().forEach(key -> places.put(key.path(), places.size()));
    return values.keySet().stream()
        .sorted(Comparator.comparing(path -> places.getOrDefault(generic(path), places.size())))
        .toList();
  }

  /** The path as the key table has it, for every item of a list. */
  private static String generic(String path) {
    return NUMBER.matcher(path).replaceAll("[]");
  }
}
