package org.midlateral.recipe.batch;

import java.util.List;
import java.util.function.Function;
import org.midlateral.measurement.file.Orders;

/**
 * One order as it stands in its source.
 *
 * @param place for messages: the file, and the line where it is one of many
 * @param reference as it was written, whether or not the order can be read; empty where that is not
 *     known
 * @param text all that was written, for telling whether it changed
 * @param stated what it states, each {@code KEY=VALUE}, as far as it can be read
 * @param read reads it, with overrides laid over it
 */
public record RawOrder(
    String place,
    String reference,
    String text,
    List<String> stated,
    Function<List<String>, Orders.Result> read) {
  public RawOrder {
    stated = List.copyOf(stated);
  }

  /** Whether it is a file of its own, and no row of a table. */
  boolean isFile() {
    return !place.matches("(?s).*:\\d+");
  }

  /** Whether it says something of a key itself. */
  boolean states(String key) {
    return stated.stream().anyMatch(one -> one.startsWith(key + "="));
  }

  /** The place without the folders above it, which may name people. */
  String placeAlone() {
    return place.substring(Math.max(place.lastIndexOf('/'), place.lastIndexOf('\\')) + 1);
  }
}
