package org.midlateral.viewer.sample;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** An invented measurement file. */
public enum Sample {
  BULBOUS("bulbous-ring", "Ring finger with a bulbous PIP joint"),
  INCHES("middle-inches", "Middle finger measured in inches"),
  DEFICIT("left-deficit", "Left index finger that lacks 15° of extension"),
  COVERED("covered-tip", "Left ring finger with its tip covered"),
  SLIM("slim-little", "Slim little finger");

  private final String file;
  private final String title;

  Sample(String file, String title) {
    this.file = file;
    this.title = title;
  }

  /** Its file's name. */
  public String file() {
    return file + ".yaml";
  }

  /** What it is, for a menu. */
  public String title() {
    return title;
  }

  /** Its text. */
  public String text() {
    try (InputStream in = Sample.class.getResourceAsStream(file())) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
