package org.midlateral.measurement;

/**
 * One thing that is wrong with an input.
 *
 * @param file the file, or {@code --set} for an override
 * @param line in the file, from 1; 0 where no line is to blame
 * @param key the path of the key, or empty
 * @param value as it was written, shortened; or empty
 * @param allowed what is allowed instead; or empty
 * @param text what is wrong, with the value and what is allowed, in words
 */
public record InputError(
    String file, int line, String key, String value, String allowed, String text) {

  /** In one line: {@code demo.yaml:12: circumference.pip: 660 mm is out of range; allowed ...}. */
  public String message() {
    return file + (line > 0 ? ":" + line : "") + ": " + (key.isEmpty() ? "" : key + ": ") + text;
  }
}
