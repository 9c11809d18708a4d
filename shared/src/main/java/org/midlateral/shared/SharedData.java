package org.midlateral.shared;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Opens the data every module shares. */
public final class SharedData {

  /** Every key of a measurement file. */
  public static final String KEYS = "keys.yaml";

  /** Every key of the visits in a course. */
  public static final String VISIT_KEYS = "visit-keys.yaml";

  /** Materials by generic name. */
  public static final String MATERIALS = "materials.yaml";

  /** Texts that warn. */
  public static final String CAUTIONS = "cautions.yaml";

  /** What the messages mean: a page of the walk-through. */
  public static final String MESSAGES = "walk-through/messages.md";

  /** The walk-through's pages, in the order of reading. */
  public static final List<String> WALK_THROUGH =
      List.of(
          "walk-through/first-finger.md",
          "walk-through/closed-shell.md",
          "walk-through/swollen-joint.md",
          "walk-through/twelve-weeks.md",
          "walk-through/batch.md",
          "walk-through/laboratory.md",
          "walk-through/lesson.md",
          MESSAGES);

  /** Words that are no one's name. */
  public static final String ORDINARY_WORDS = "ordinary-words.yaml";

  /** Names of months and days. */
  public static final String CALENDAR = "calendar.yaml";

  /** Printing processes and their limits. */
  public static final String PROCESSES = "print-processes.yaml";

  /** JSON Schema (draft 2020-12) of a measurement file. */
  public static final String SCHEMA = "measurement-file.schema.json";

  /** JSON Schema (draft 2020-12) of a record of making. */
  public static final String RECORD_SCHEMA = "making-record.schema.json";

  /** A sans-serif face, TrueType, Apache License 2.0. */
  public static final String FONT_REGULAR = "font/Roboto-Regular.ttf";

  /** The same face, bold. */
  public static final String FONT_BOLD = "font/Roboto-Bold.ttf";

  /** Outlines of the bold face's letters, digits and the signs of a reference, as WKT. */
  public static final String LETTERS = "font/letters.txt";

  private SharedData() {}

  /**
   * Opens one of the resources named above.
   *
   * @throws IllegalArgumentException where there is none of that name
   */
  public static InputStream open(String name) {
    InputStream in = SharedData.class.getResourceAsStream(name);
    if (in == null) {
      throw new IllegalArgumentException("no shared data named " + name);
    }
    return in;
  }

  /**
   * Text of one of the resources named above.
   *
   * @param name of the resource
   * @return its text
   * @throws IllegalArgumentException where there is none of that name
   */
  public static String text(String name) {
    try (InputStream in = open(name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Version of this build, for reports and {@code --version}. */
  public static String version() {
    return text("version.txt").strip();
  }

  /**
   * Mark of this build, for {@code --version}: its commit, or {@code dev}. A batch makes anew what
   * another build has made.
   */
  public static String build() {
    return text("build.txt").strip();
  }
}
