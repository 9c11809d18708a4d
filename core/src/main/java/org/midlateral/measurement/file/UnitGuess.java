package org.midlateral.measurement.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.midlateral.measurement.InputError;
import org.midlateral.measurement.LengthUnit;
import org.midlateral.measurement.entry.Entry;
import org.midlateral.measurement.entry.Entry.NodeShape;
import org.midlateral.measurement.entry.Entry.Place;
import org.midlateral.measurement.entry.LengthText;
import org.midlateral.measurement.key.InputKey;
import org.midlateral.measurement.key.KeyTable;

/** Notices circumferences that were written in another unit than the file says. */
final class UnitGuess {

  private UnitGuess() {}

  /**
   * Looks at the circumferences as written.
   *
   * @param entries of the file
   * @param unit the file says it is in
   * @param file as named to the user
   * @return an error where none of them fits that unit and all of them fit another
   */
  static Optional<InputError> check(List<Entry> entries, LengthUnit unit, String file) {
    List<Entry> bare = new ArrayList<>();
    Place place = new Place(file, 0);
    for (Entry entry : entries) {
      if (entry.path().equals("unit")) {
        place = entry.place();
      } else if (entry.path().startsWith("circumference.") && entry.shape() == NodeShape.SCALAR) {
        bare.add(entry);
      }
    }
    if (bare.size() < 2 || bare.stream().anyMatch(entry -> fits(entry, unit, true))) {
      return Optional.empty();
    }
    for (LengthUnit other : LengthUnit.values()) {
      if (bare.stream().allMatch(entry -> fits(entry, other, false))) {
        String text =
            unit.symbol()
                + " does not fit: the circumferences look like "
                + other.symbol()
                + "; write unit: "
                + other.symbol()
                + ", or each value with its own unit";
        return Optional.of(place.error("unit", unit.symbol(), other.symbol(), text));
      }
    }
    return Optional.empty();
  }

  /** Whether a circumference is possible, or usual, if it was written in some unit. */
  private static boolean fits(Entry entry, LengthUnit unit, boolean possible) {
    Optional<InputKey> key = KeyTable.standard().find(entry.path());
    try {
      LengthText length = LengthText.parse(entry.text(), unit);
      return key.flatMap(possible ? InputKey::refused : InputKey::usual)
          .map(range -> range.contains(length.millimetres()))
          .orElse(false);
    } catch (LengthText.NotALength e) {
      return false;
    }
  }
}
