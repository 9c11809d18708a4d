package org.midlateral.measurement.file;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.midlateral.measurement.InputError;
import org.midlateral.measurement.entry.Entry;
import org.midlateral.measurement.entry.Entry.NodeShape;
import org.midlateral.measurement.entry.Entry.Place;
import org.midlateral.measurement.entry.EntryReader;
import org.midlateral.measurement.key.InputKey;
import org.midlateral.measurement.key.KeyTable;
import org.midlateral.measurement.key.Shown;
import org.midlateral.measurement.key.ValueKind;

/** Lays {@code KEY=VALUE} overrides over the entries of a file. */
final class Overrides {

  private static final Place OPTION = new Place("--set", 0);

  private final KeyTable table = KeyTable.standard();
  private final List<Entry> entries;
  private final Place place;
  private final List<InputError> errors = new ArrayList<>();
  private final Set<String> laid = new HashSet<>();

  private Overrides(List<Entry> entries, Place place) {
    this.entries = new ArrayList<>(entries);
    this.place = place;
  }

  /**
   * Lays them over.
   *
   * @param entries of the file
   * @param overrides each {@code KEY=VALUE}, no key twice
   */
  static EntryReader.Reading over(List<Entry> entries, List<String> overrides) {
    return over(entries, overrides, OPTION);
  }

  /** The same, of values that stand in some place of a file. */
  static EntryReader.Reading over(List<Entry> entries, List<String> overrides, Place place) {
    Overrides over = new Overrides(entries, place);
    overrides.forEach(over::apply);
    return new EntryReader.Reading(List.copyOf(over.entries), List.copyOf(over.errors), true);
  }

  private void apply(String override) {
    int equals = override.indexOf('=');
    if (equals < 1) {
      errors.add(
          place.error("", override, "KEY=VALUE", Shown.shown(override) + " is not KEY=VALUE"));
      return;
    }
    String path = override.substring(0, equals).strip();
    String value = override.substring(equals + 1).strip();
    Optional<InputKey> key =
        path.contains("[") && !isOfGivenItem(path) ? Optional.empty() : table.find(path);
    if (key.isEmpty()) {
      errors.add(place.error(Shown.shown(path), value, "a key", table.whyNoKey(path)));
      return;
    }
    if (!laid.add(path)) {
      errors.add(place.error(path, value, "once", "is set twice; allowed: once"));
      return;
    }
    entries.removeIf(old -> old.path().equals(path) || old.path().startsWith(path + "["));
    if (key.get().kind() == ValueKind.LIST) {
      list(path, value);
    } else {
      entries.add(new Entry(path, NodeShape.SCALAR, value, true, 0, place));
    }
  }

  /** Whether it is a key of a list's item that the file has. */
  private boolean isOfGivenItem(String path) {
    String item = path.substring(0, path.lastIndexOf(']') + 1);
    return item.matches(".*\\[\\d+]")
        && entries.stream().anyMatch(e -> e.path().startsWith(item + "."));
  }

  private void list(String path, String value) {
    EntryReader.Reading reading = EntryReader.read(value, place.file(), path);
    reading.entries().stream().map(entry -> entry.at(place)).forEach(entries::add);
    for (InputError error : reading.errors()) {
      errors.add(place.error(path, value, error.allowed(), error.text()));
    }
  }
}
