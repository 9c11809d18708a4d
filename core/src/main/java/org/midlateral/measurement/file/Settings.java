package org.midlateral.measurement.file;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.midlateral.measurement.LengthUnit;
import org.midlateral.measurement.entry.Entry;
import org.midlateral.measurement.entry.Entry.NodeShape;
import org.midlateral.measurement.entry.Entry.Place;
import org.midlateral.measurement.entry.Setting;
import org.midlateral.measurement.key.InputKey;
import org.midlateral.measurement.key.KeyTable;

/** The checked values of a file by path, and behind them the defaults of the key table. */
final class Settings {

  private final Map<String, Setting> given;

  Settings(Map<String, Setting> given) {
    this.given = new HashMap<>(given);
  }

  /** What the file states. */
  Optional<Setting> given(String path) {
    return Optional.ofNullable(given.get(path));
  }

  /** A number the file states. */
  OptionalDouble givenNumber(String path) {
    Setting setting = given.get(path);
    return setting == null || Double.isNaN(setting.number())
        ? OptionalDouble.empty()
        : OptionalDouble.of(setting.number());
  }

  /** A number the file states or the table defaults to; empty for a word or neither. */
  OptionalDouble number(String path) {
    Setting setting = either(path);
    return setting == null || Double.isNaN(setting.number())
        ? OptionalDouble.empty()
        : OptionalDouble.of(setting.number());
  }

  /** A word the file states or the table defaults to. */
  String word(String path) {
    return either(path).word();
  }

  private Setting either(String path) {
    Setting setting = given.get(path);
    return setting != null ? setting : standard(path);
  }

  /** Whether the file says that the pieces are moulded by hand. */
  private boolean byHand() {
    Setting making = given.get("making");
    return making != null && making.word().equals("hand");
  }

  private Setting standard(String path) {
    InputKey key = KeyTable.standard().find(path).orElseThrow();
    Optional<String> standard = byHand() ? key.byHand().or(key::standard) : key.standard();
    if (standard.isEmpty()) {
      return null;
    }
    Place place = new Place("the key table", 0);
    Entry entry = new Entry(path, NodeShape.SCALAR, standard.get(), true, 0, place);
    try {
      return ValueCheck.check(entry, key, LengthUnit.MM);
    } catch (ValueCheck.Refused e) {
      throw new IllegalStateException("default of " + path, e);
    }
  }
}
