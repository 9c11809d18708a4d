package org.midlateral.viewer.memory;

import java.awt.Rectangle;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What is remembered from one start to the next.
 *
 * @param folder that files were last opened from or saved to
 * @param recent files, the newest first
 * @param dark whether the appearance is the dark one
 * @param window where it stood on the screen (px)
 */
public record Settings(
    Optional<Path> folder, List<Path> recent, boolean dark, Optional<Rectangle> window) {
  private static final int MOST_RECENT = 8;

  public Settings {
    recent = List.copyOf(recent);
  }

  /** Before the first start. */
  public static Settings none() {
    return new Settings(Optional.empty(), List.of(), false, Optional.empty());
  }

  /** After a file was opened or saved. */
  public Settings with(Path file) {
    Path whole = file.toAbsolutePath().normalize();
    List<Path> files = new ArrayList<>(recent);
    files.remove(whole);
    files.add(0, whole);
    return new Settings(
        Optional.ofNullable(whole.getParent()),
        files.subList(0, Math.min(MOST_RECENT, files.size())),
        dark,
        window);
  }

  public Settings withDark(boolean other) {
    return new Settings(folder, recent, other, window);
  }

  public Settings withWindow(Rectangle place) {
    return new Settings(folder, recent, dark, Optional.of(place));
  }
}
