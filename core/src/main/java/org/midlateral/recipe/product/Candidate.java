package org.midlateral.recipe.product;

import org.midlateral.measurement.LengthUnit;
import org.midlateral.measurement.Remedy;
import org.midlateral.measurement.key.AllowedRange;
import org.midlateral.measurement.key.InputKey;
import org.midlateral.measurement.key.KeyTable;
import org.midlateral.measurement.key.Shown;
import org.midlateral.measurement.key.ValueKind;

/**
 * A change of one key that a refused order may be tried with.
 *
 * @param key of the file
 * @param now its number in the order; NaN where there is nothing between that and the other
 * @param end its other number, the farthest that is tried; NaN for a word
 * @param word its other value where that is a word; else null
 * @param far how far the change is from what was asked for, in usual ranges of the key
 */
record Candidate(String key, double now, double end, String word, double far) {
  /** Words change more than numbers do: whether there is a thing at all, or what kind of thing. */
  private static final double WORD = 2;

  /** A change to a word. */
  static Candidate word(String key, String word) {
    return new Candidate(key, Double.NaN, Double.NaN, word, WORD);
  }

  /** A change to a number, in mm where it is a length. */
  static Candidate number(String key, double now, double end) {
    AllowedRange usual = row(key).usual().or(row(key)::refused).orElseThrow();
    return new Candidate(key, now, end, null, Math.abs(end - now) / (usual.high() - usual.low()));
  }

  /** A change to the nearest number that may pass. */
  static Candidate nearest(String key, double now, double end) {
    return new Candidate(key, Double.NaN, end, null, number(key, now, end).far);
  }

  private static InputKey row(String key) {
    return KeyTable.standard().find(key).orElseThrow();
  }

  /** Whether it changes anything, to a number that a file may have. */
  boolean isChange() {
    return word != null || (end != now && row(key).refused().orElseThrow().contains(end));
  }

  /** Half as far a change, to a round number; none where it would be no other. */
  Candidate halved(double from) {
    double grain = row(key).kind() == ValueKind.LENGTH ? 10 : 100;
    double middle = Math.rint((from + end) / 2 * grain) / grain;
    boolean between = (middle - from) * (end - middle) > 1e-9;
    return between ? number(key, now, middle) : this;
  }

  /**
   * As a file has it.
   *
   * @param unit of the file
   * @param alone whether the dorsal shell is left out as well
   */
  Remedy remedy(LengthUnit unit, boolean alone) {
    if (word != null) {
      return new Remedy(key, word, alone);
    }
    String number = Shown.number(end);
    boolean length = row(key).kind() == ValueKind.LENGTH;
    return new Remedy(key, length && unit != LengthUnit.MM ? number + " mm" : number, alone);
  }
}
