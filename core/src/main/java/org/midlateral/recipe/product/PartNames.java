package org.midlateral.recipe.product;

import java.util.Locale;
import org.midlateral.measurement.Measurements;
import org.midlateral.measurement.Order;
import org.midlateral.shared.SharedData;

/**
 * What parts and their files are called, so that a part that has left its folder is still told
 * whose it is.
 *
 * @param order they are made for
 * @param revision of its making, from 1
 * @param inFull whether files of solids are named in full too, instead of after their part alone
 */
public record PartNames(Order order, int revision, boolean inFull) {
  /** The names of a first making, files named after their part. */
  public static PartNames first(Order order) {
    return new PartNames(order, 1, false);
  }

  /** Reference, hand and digit, as {@code inv-a right ring}. */
  private String whose() {
    Measurements measured = order.measurements();
    return measured.reference()
        + " "
        + measured.hand().name().toLowerCase(Locale.ROOT)
        + " "
        + measured.digit().name().toLowerCase(Locale.ROOT);
  }

  /** Of the whole: reference, hand, digit and revision. */
  String title() {
    return whose() + " r" + revision;
  }

  /**
   * Of a part: reference, hand, digit, part, revision and the program's commit.
   *
   * @param part as {@code trough}
   */
  String title(String part) {
    return whose() + " " + part + " r" + revision + " " + SharedData.build();
  }

  /**
   * Of a file of solids.
   *
   * @param plain its usual name, as {@code trough.stl}
   */
  String file(String plain) {
    int dot = plain.indexOf('.');
    return inFull ? title(plain.substring(0, dot)).replace(' ', '_') + plain.substring(dot) : plain;
  }
}
