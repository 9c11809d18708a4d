package org.midlateral.viewer.draft;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.midlateral.measurement.LengthUnit;
import org.midlateral.measurement.entry.LengthText;
import org.midlateral.measurement.key.ValueKind;

/**
 * Another unit for the lengths of a draft that carry none of their own. A number can be converted,
 * or read in the new unit as it stands: only who measured knows which.
 *
 * @param draft before it
 * @param to the new unit
 */
public record UnitChange(Draft draft, LengthUnit to) {
  /** A converted inch keeps four places, some thousandths of a millimetre. */
  private static final int PLACES = 4;

  /** Whether there is a number that would change its meaning. */
  public boolean isToBeAsked() {
    return to != draft.unit()
        && draft.values().keySet().stream().anyMatch(path -> bare(path).isPresent());
  }

  /** The same lengths in the new unit. */
  public Draft converted() {
    Map<String, String> changed = new LinkedHashMap<>(draft.values());
    changed.replaceAll((path, text) -> bare(path).map(this::written).orElse(text));
    return new Draft(changed).with("unit", symbol());
  }

  /** The same numbers in the new unit. */
  public Draft readAnew() {
    return draft.with("unit", symbol());
  }

  /** As the file has it; mm goes without saying. */
  private String symbol() {
    return to == LengthUnit.MM ? "" : to.symbol();
  }

  private String written(double millimetres) {
    return BigDecimal.valueOf(millimetres)
        .divide(BigDecimal.valueOf(to.millimetres()), PLACES, RoundingMode.HALF_EVEN)
        .stripTrailingZeros()
        .toPlainString();
  }

  /** A length without a unit of its own (mm); empty for anything else. */
  private Optional<Double> bare(String path) {
    if (Draft.key(path).filter(key -> key.kind() == ValueKind.LENGTH).isEmpty()) {
      return Optional.empty();
    }
    try {
      LengthText length = LengthText.parse(draft.get(path), draft.unit());
      boolean bare = !length.ownUnit() && length.millimetres() != 0;
      return bare ? Optional.of(length.millimetres()) : Optional.empty();
    } catch (LengthText.NotALength e) {
      return Optional.empty();
    }
  }
}
