package org.midlateral.measurement.key;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.midlateral.measurement.Digit;

/**
 * One key of a measurement file, as the key table has it.
 *
 * @param path as {@code trough.wrap}; {@code []} stands for any item of a list
 * @param kind what it takes
 * @param unit of its number ("mm", "°", "N", ...), empty where it has none
 * @param required whether the file must state it
 * @param standard the default as a file would write it in mm; empty where there is none
 * @param byHand the default of a file that says {@code making: hand}; empty where it is the same
 * @param making {@code print} where only who prints a piece needs it; empty where all do
 * @param letter of the reading on the measuring form; empty where it has none
 * @param example an invented value for the template (mm); empty where there is none
 * @param refused a value outside is an error; for a list, its number of items
 * @param usual a value outside gets a caution
 * @param usualOf the same by finger, where fingers differ; else empty
 * @param or values allowed beside the range, as written
 * @param choices the words a choice allows
 * @param pattern regular expression of a text; empty where any is allowed
 * @param form the pattern in words
 * @param comment one sentence for the user
 * @param source where ranges and default come from
 */
public record InputKey(
    String path,
    ValueKind kind,
    String unit,
    boolean required,
    Optional<String> standard,
    Optional<String> byHand,
    Optional<String> making,
    Optional<String> letter,
    Optional<String> example,
    Optional<AllowedRange> refused,
    Optional<AllowedRange> usual,
    Map<Digit, AllowedRange> usualOf,
    List<String> or,
    List<String> choices,
    String pattern,
    String form,
    String comment,
    String source) {

  public InputKey {
    // In the fingers' order, whoever asks.
    usualOf = Collections.unmodifiableMap(new TreeMap<>(usualOf));
    or = List.copyOf(or);
    choices = List.copyOf(choices);
  }

  /** The same key with what is usual for one finger; as it is where the finger is not known. */
  public InputKey of(Optional<Digit> digit) {
    return digit
        .map(usualOf::get)
        .map(
            range ->
                new InputKey(
                    path,
                    kind,
                    unit,
                    required,
                    standard,
                    byHand,
                    making,
                    letter,
                    example,
                    refused,
                    Optional.of(range),
                    Map.of(),
                    or,
                    choices,
                    pattern,
                    form,
                    comment,
                    source))
        .orElse(this);
  }

  /**
   * Whether it is of use for a way of making.
   *
   * @param way {@code hand} or {@code print}
   */
  public boolean isFor(String way) {
    return making.isEmpty() || making.get().equals(way);
  }

  /** The section it stands in: {@code trough.vents} of {@code trough.vents.diameter}, or empty. */
  public String section() {
    return path.contains(".") ? path.substring(0, path.lastIndexOf('.')) : "";
  }

  /** Its own name within the section. */
  public String name() {
    return path.substring(path.lastIndexOf('.') + 1);
  }

  /** Whether it is a key of a list's items. */
  public boolean isOfItem() {
    return path.contains("[]");
  }
}
