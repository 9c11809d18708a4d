package org.midlateral.measurement.entry;

import org.midlateral.measurement.InputError;
import org.midlateral.measurement.key.Shown;

/**
 * One value of a file as it was written, before any meaning.
 *
 * @param path where it stands, as {@code relief.bubbles[0].height}
 * @param shape scalar, mapping or sequence
 * @param text of a scalar; empty otherwise
 * @param plain whether a scalar stands without quotes
 * @param items number of items of a sequence; 0 otherwise
 * @param place where in which file
 */
public record Entry(
    String path, NodeShape shape, String text, boolean plain, int items, Place place) {

  public enum NodeShape {
    SCALAR,
    MAPPING,
    SEQUENCE
  }

  /**
   * A line of a file.
   *
   * @param file as named to the user
   * @param line from 1; 0 for none
   */
  public record Place(String file, int line) {

    public InputError error(String key, String value, String allowed, String text) {
      return new InputError(file, line, key, Shown.shown(value), allowed, text);
    }
  }

  /** The same in another place. */
  public Entry at(Place other) {
    return new Entry(path, shape, text, plain, items, other);
  }

  /** Whether there is nothing: an empty value, or the word for none. */
  public boolean isNothing() {
    return shape == NodeShape.SCALAR
        && plain
        && (text.isEmpty() || text.equals("~") || text.equalsIgnoreCase("null"));
  }
}
