package org.midlateral.viewer.memory;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.midlateral.viewer.draft.Draft;
import org.midlateral.viewer.draft.DraftText;

/**
 * Values that were typed in and not saved, kept in a file for as long as they are: a process that
 * is killed leaves it behind, and the next start finds it.
 *
 * @param folder for settings
 * @param process whose values they are
 */
public record Unsaved(SettingsFolder folder, long process) {
  private static final Pattern NAME = Pattern.compile("unsaved-(\\d{1,18})\\.yaml");
  private static final String OF = "# Not saved yet, of ";

  /**
   * What was found.
   *
   * @param draft as it was typed
   * @param of the file it was opened from; empty for none
   */
  public record Left(Draft draft, Optional<Path> of) {}

  /** The file of this process. */
  public static Unsaved ofThisProcess(SettingsFolder folder) {
    return new Unsaved(folder, ProcessHandle.current().pid());
  }

  private Path file() {
    return folder.path().resolve("unsaved-" + process + ".yaml");
  }

  /** Keeps what is not saved; where that cannot be, nobody is kept from working. */
  public void keep(Draft draft, Optional<Path> of) {
    String head = of.map(path -> OF + path.toAbsolutePath() + "\n").orElse("");
    try {
      SettingsFolder.put(file(), head + DraftText.write(draft));
    } catch (IOException e) {
      return;
    }
  }

  /** All is saved, or given up. */
  public void clear() {
    try {
      Files.deleteIfExists(file());
    } catch (IOException e) {
      return;
    }
  }

  /** What it holds; empty where there is nothing that can be read. */
  public Optional<Left> read() {
    try {
      String text = Files.readString(file(), StandardCharsets.UTF_8);
      String first = text.lines().findFirst().orElse("");
      Optional<Path> of =
          first.startsWith(OF)
              ? Optional.of(Path.of(first.substring(OF.length())))
              : Optional.empty();
      return Optional.of(new Left(DraftText.read(text), of));
    } catch (IOException | DraftText.NotADraft | java.nio.file.InvalidPathException e) {
      return Optional.empty();
    }
  }

  /** The newest that a process left which is no more. */
  public static Optional<Unsaved> abandoned(SettingsFolder folder) {
    if (!Files.isDirectory(folder.path())) {
      return Optional.empty();
    }
    try (Stream<Path> files = Files.list(folder.path())) {
      List<Path> byAge = files.sorted(Comparator.comparingLong(Unsaved::age).reversed()).toList();
      for (Path file : byAge) {
        Matcher name = NAME.matcher(file.getFileName().toString());
        if (name.matches() && ProcessHandle.of(Long.parseLong(name.group(1))).isEmpty()) {
          Unsaved unsaved = new Unsaved(folder, Long.parseLong(name.group(1)));
          if (unsaved.read().isPresent()) {
            return Optional.of(unsaved);
          }
        }
      }
    } catch (IOException e) {
      return Optional.empty();
    }
    return Optional.empty();
  }

  private static long age(Path file) {
    return file.toFile().lastModified();
  }
}
