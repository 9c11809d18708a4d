package org.midlateral.measurement.file;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.midlateral.measurement.InputError;
import org.midlateral.measurement.LengthUnit;
import org.midlateral.measurement.entry.Entry;
import org.midlateral.measurement.entry.Entry.NodeShape;
import org.midlateral.measurement.entry.Entry.Place;
import org.midlateral.measurement.entry.Setting;
import org.midlateral.measurement.key.InputKey;
import org.midlateral.measurement.key.KeyTable;
import org.midlateral.measurement.key.Shown;
import org.midlateral.measurement.key.ValueKind;

/** Checks every entry of a file on its own against the key table. */
final class EntryCheck {

  private static final int MOST_NAMES = 12;

  private final KeyTable table;
  private final List<Entry> entries;
  private final LengthUnit unit;
  private final boolean unitKnown;
  private final String file;
  private final Map<String, Setting> settings = new HashMap<>();
  private final List<InputError> errors = new ArrayList<>();
  private final Set<String> closed = new HashSet<>();

  /**
   * What came of it.
   *
   * @param settings by path; those that were refused are not among them
   * @param unit of the file; mm where it states none
   * @param unitKnown false where the file states one that does not exist
   * @param errors one for each value refused
   */
  record CheckedEntries(
      Map<String, Setting> settings, LengthUnit unit, boolean unitKnown, List<InputError> errors) {}

  private EntryCheck(
      List<Entry> entries, String file, KeyTable table, Optional<LengthUnit> stated) {
    this.entries = entries;
    this.file = file;
    this.table = table;
    this.unit = stated.orElse(LengthUnit.MM);
    this.unitKnown = stated.isPresent();
  }

  /**
   * Checks them.
   *
   * @param entries of the file with overrides laid over them
   * @param file as named to the user
   * @param complete whether the whole file could be read, so that what is missing is missing
   */
  static CheckedEntries check(List<Entry> entries, String file, boolean complete) {
    return check(entries, file, complete, KeyTable.standard(), unitOf(entries));
  }

  /**
   * The same by another table.
   *
   * @param stated unit of lengths that carry none of their own; empty where the file states one
   *     that does not exist
   */
  static CheckedEntries check(
      List<Entry> entries,
      String file,
      boolean complete,
      KeyTable table,
      Optional<LengthUnit> stated) {
    EntryCheck check = new EntryCheck(entries, file, table, stated);
    entries.forEach(check::entry);
    if (complete && check.closed.add("")) {
      check.missing();
    }
    return new CheckedEntries(check.settings, check.unit, check.unitKnown, check.errors);
  }

  /** The unit that entries state, mm where they state none; empty where there is none such. */
  static Optional<LengthUnit> unitOf(List<Entry> entries) {
    LengthUnit found = LengthUnit.MM;
    for (Entry entry : entries) {
      if (entry.path().equals("unit")) {
        found = null;
        for (LengthUnit unit : LengthUnit.values()) {
          found = entry.text().equals(unit.symbol()) ? unit : found;
        }
      }
    }
    return Optional.ofNullable(found);
  }

  private void entry(Entry entry) {
    if (isClosed(entry.path())) {
      return;
    }
    if (entry.path().isEmpty() || table.isSection(entry.path())) {
      section(entry);
      return;
    }
    Optional<InputKey> key = table.find(entry.path());
    if (key.isEmpty()) {
      unknown(entry);
    } else if (key.get().kind() == ValueKind.LIST && entry.shape() == NodeShape.SEQUENCE) {
      list(entry, key.get());
    } else {
      value(entry, key.get());
    }
  }

  private boolean isClosed(String path) {
    if (closed.isEmpty()) {
      return false;
    }
    if (closed.contains("")) {
      return true;
    }
    for (int at = 0; at < path.length(); at++) {
      boolean end = path.charAt(at) == '.' || path.charAt(at) == '[';
      if (end && closed.contains(path.substring(0, at))) {
        return true;
      }
    }
    return false;
  }

  private void section(Entry entry) {
    if (entry.shape() == NodeShape.MAPPING || (entry.isNothing() && !entry.path().isEmpty())) {
      return;
    }
    closed.add(entry.path());
    String names = names(entry.path());
    String what = entry.path().isEmpty() ? "this is not a measurement file" : "is not a section";
    String text = what + "; allowed under it: " + names;
    errors.add(entry.place().error(entry.path(), entry.text(), names, text));
  }

  private void list(Entry entry, InputKey key) {
    if (!key.refused().orElseThrow().contains(entry.items())) {
      closed.add(entry.path());
      String allowed = Shown.allowed(key, unit);
      String text = "has " + entry.items() + " items; allowed: " + allowed;
      errors.add(entry.place().error(entry.path(), "" + entry.items(), allowed, text));
      return;
    }
    settings.put(
        entry.path(), new Setting(key, entry.items(), "", "" + entry.items(), entry.place()));
  }

  private void value(Entry entry, InputKey key) {
    try {
      settings.put(entry.path(), ValueCheck.check(entry, key, unit));
    } catch (ValueCheck.Refused e) {
      closed.add(entry.path());
      // A range says nothing of a length whose unit is not known.
      if (unitKnown || key.kind() != ValueKind.LENGTH) {
        errors.add(e.error());
      }
    }
  }

  private void unknown(Entry entry) {
    closed.add(entry.path());
    String section =
        entry.path().contains(".") ? entry.path().substring(0, entry.path().lastIndexOf('.')) : "";
    String names = names(section);
    if (table != KeyTable.visits() && KeyTable.visits().find(entry.path()).isPresent()) {
      String text = "is of a course, which `midlateral follow-up` reads; allowed here: " + names;
      errors.add(entry.place().error(entry.path(), entry.text(), names, text));
      return;
    }
    String near =
        table.nearest(entry.path()).map(path -> "; did you mean " + path + "?").orElse("");
    String allowed = near.isEmpty() ? "; allowed here: " : " Allowed here: ";
    String text = "is not a key" + near + allowed + names;
    errors.add(entry.place().error(entry.path(), entry.text(), names, text));
  }

  private String names(String section) {
    List<String> names = table.namesIn(section);
    String more = names.size() > MOST_NAMES ? ", ..." : "";
    return String.join(", ", names.subList(0, Math.min(MOST_NAMES, names.size()))) + more;
  }

  private void missing() {
    Map<String, Place> places = new HashMap<>();
    Set<String> present = new HashSet<>();
    for (Entry entry : entries) {
      places.put(entry.path(), entry.place());
      present.add(entry.path());
    }
    for (InputKey key : table.keys()) {
      if (!key.required()) {
        continue;
      }
      for (String path : paths(key)) {
        if (!present.contains(path)) {
          missing(key, path, places);
        }
      }
    }
  }

  private void missing(InputKey key, String path, Map<String, Place> places) {
    String section = path.contains(".") ? path.substring(0, path.lastIndexOf('.')) : "";
    if (closed.contains(section) && !section.isEmpty()) {
      return;
    }
    Place place = section.isEmpty() ? new Place(file, 0) : places.get(section);
    String allowed = Shown.allowed(key, unit);
    errors.add(
        (place == null ? new Place(file, 0) : place)
            .error(path, "", allowed, "is missing; allowed: " + allowed));
  }

  /** Where a key may stand in this file: once, or once for each item of its list. */
  private List<String> paths(InputKey key) {
    if (!key.isOfItem()) {
      return List.of(key.path());
    }
    String list = key.path().substring(0, key.path().indexOf('['));
    List<String> paths = new ArrayList<>();
    int items = settings.containsKey(list) ? (int) settings.get(list).number() : 0;
    for (int i = 0; i < items; i++) {
      paths.add(key.path().replace("[]", "[" + i + "]"));
    }
    return paths;
  }
}
