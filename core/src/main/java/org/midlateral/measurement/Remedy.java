package org.midlateral.measurement;

import java.util.List;

/**
 * Another value of one key, with which an order that was refused can be made. It was tried.
 *
 * @param key of the file, list items numbered as in {@code relief.bubbles[0].height}
 * @param value as the file would have it
 * @param alone whether the trough passes by itself: the dorsal shell that was asked for is left out
 *     as well
 */
public record Remedy(String key, String value, boolean alone) {
  private static final String ALONE = "dorsal-shell.make";

  /** What is to be set, as {@code --set} takes it. */
  public List<String> entries() {
    String entry = key + "=" + value;
    return alone ? List.of(entry, ALONE + "=no") : List.of(entry);
  }

  /** As {@code dorsal-shell.overlap=3.9}, or two such where the shell is left out as well. */
  String told() {
    return String.join(" with ", entries());
  }
}
