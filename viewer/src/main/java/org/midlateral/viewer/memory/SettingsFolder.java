package org.midlateral.viewer.memory;

import java.awt.Rectangle;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.midlateral.viewer.draft.Draft;
import org.midlateral.viewer.draft.DraftText;

/**
 * The user's own folder for settings.
 *
 * @param path of the folder, which need not exist
 */
public record SettingsFolder(Path path) {
  private static final String FILE = "viewer.yaml";
  private static final int PARTS_OF_A_PLACE = 4;

  /** The one that the system has for its user's settings. */
  public static SettingsFolder ofUser() {
    return of(
        System.getProperty("os.name"), System.getenv(), Path.of(System.getProperty("user.home")));
  }

  /**
   * The same for some system: %APPDATA% on Windows, the library on macOS, and elsewhere as the XDG
   * base directory specification (0.8, freedesktop.org) has it.
   */
  static SettingsFolder of(String system, Map<String, String> environment, Path home) {
    String lower = system.toLowerCase(Locale.ROOT);
    Path folder;
    if (lower.startsWith("windows")) {
      folder = Path.of(environment.getOrDefault("APPDATA", home.toString()));
    } else if (lower.startsWith("mac")) {
      folder = home.resolve("Library").resolve("Application Support");
    } else {
      String xdg = environment.getOrDefault("XDG_CONFIG_HOME", "");
      // The specification has relative paths ignored.
      folder = xdg.startsWith("/") ? Path.of(xdg) : home.resolve(".config");
    }
    return new SettingsFolder(folder.resolve("midlateral"));
  }

  /** What is remembered; what cannot be read is as if it had never been. */
  public Settings read() {
    Draft text;
    try {
      text = DraftText.read(Files.readString(path.resolve(FILE), StandardCharsets.UTF_8));
    } catch (IOException | DraftText.NotADraft e) {
      return Settings.none();
    }
    List<Path> recent = new ArrayList<>();
    for (int i = 0; i < text.items("recent"); i++) {
      path(text.get(recent(i))).ifPresent(recent::add);
    }
    return new Settings(
        path(text.get("folder")),
        recent,
        text.get("dark").equals("true"),
        place(text.get("window")));
  }

  private static String recent(int number) {
    return "recent[" + number + "].file";
  }

  /** Remembers; where that cannot be, the next start begins anew. */
  public void write(Settings settings) {
    Map<String, String> values = new LinkedHashMap<>();
    settings.folder().ifPresent(folder -> values.put("folder", folder.toString()));
    for (int i = 0; i < settings.recent().size(); i++) {
      values.put(recent(i), settings.recent().get(i).toString());
    }
    values.put("dark", Boolean.toString(settings.dark()));
    settings
        .window()
        .ifPresent(r -> values.put("window", r.x + " " + r.y + " " + r.width + " " + r.height));
    try {
      put(path.resolve(FILE), DraftText.write(new Draft(values)));
    } catch (IOException e) {
      return;
    }
  }

  /** Writes a file whole or not at all. */
  static void put(Path file, String text) throws IOException {
    Files.createDirectories(file.getParent());
    Path beside = Files.createTempFile(file.getParent(), ".midlateral", ".part");
    try {
      Files.writeString(beside, text, StandardCharsets.UTF_8);
      Files.move(beside, file, StandardCopyOption.REPLACE_EXISTING);
    } finally {
      Files.deleteIfExists(beside);
    }
  }

  private static Optional<Path> path(String text) {
    try {
      return text.isBlank() ? Optional.empty() : Optional.of(Path.of(text));
    } catch (InvalidPathException e) {
      return Optional.empty();
    }
  }

  private static Optional<Rectangle> place(String text) {
    String[] parts = text.split(" ");
    if (parts.length != PARTS_OF_A_PLACE || !text.matches("(-?\\d{1,5} ?){4}")) {
      return Optional.empty();
    }
    return Optional.of(
        new Rectangle(
            Integer.parseInt(parts[0]),
            Integer.parseInt(parts[1]),
            Integer.parseInt(parts[2]),
            Integer.parseInt(parts[3])));
  }
}
