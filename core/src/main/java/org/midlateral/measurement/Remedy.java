package org.midlateral.measurement;

/**
 * Another value of one key, with which an order that was refused can be made. It was tried.
 *
 * @param key of the file, list items numbered as in {@code relief.bubbles[0].height}
 * @param value as the file would have it
 */
public record Remedy(String key, String value) {

  /** As {@code --set} takes it. */
  public String entry() {
    return key + "=" + value;
  }

  /** As {@code dorsal-shell.overlap 3.9 passes}. */
  String told() {
    return key + " " + value + " passes";
  }
}
