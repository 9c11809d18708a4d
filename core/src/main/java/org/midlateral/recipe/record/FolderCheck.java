package org.midlateral.recipe.record;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.midlateral.document.Digest;

/**
 * What lies in an order's folder against its record.
 *
 * @param folder that was looked at
 * @param record of it; empty where there is none that is whole
 * @param files by name, those of the record and those that lie there
 */
public record FolderCheck(
    Path folder, Optional<MakingRecord> record, Map<String, FileState> files) {
  /** A file against the record. */
  public enum FileState {
    /** Byte for byte. */
    AS_MADE("as made"),
    /** Other bytes than were written. */
    CHANGED("changed"),
    /** Of the record, and not there. */
    MISSING("missing"),
    /** There, and not of the record. */
    STRANGE("strange");

    private final String words;

    FileState(String words) {
      this.words = words;
    }

    /** For a person. */
    public String words() {
      return words;
    }
  }

  public FolderCheck {
    files = java.util.Collections.unmodifiableMap(new TreeMap<>(files));
  }

  /** Whether all is as it was made. */
  public boolean ok() {
    return record.isPresent() && files.values().stream().allMatch(s -> s == FileState.AS_MADE);
  }

  /**
   * Looks at every byte of a folder.
   *
   * @throws IOException if a file cannot be read
   */
  public static FolderCheck of(Path folder) throws IOException {
    Optional<MakingRecord> record = MakingRecord.in(folder);
    Map<String, FileState> files = new TreeMap<>();
    try (Stream<Path> all = Files.list(folder)) {
      all.forEach(path -> files.put(path.getFileName().toString(), FileState.STRANGE));
    }
    if (files.containsKey(MakingRecord.FILE)) {
      files.put(MakingRecord.FILE, record.isPresent() ? FileState.AS_MADE : FileState.CHANGED);
    }
    for (Map.Entry<String, MadeFile> made :
        record.map(MakingRecord::files).orElse(Map.of()).entrySet()) {
      files.put(made.getKey(), state(folder.resolve(made.getKey()), made.getValue()));
    }
    return new FolderCheck(folder, record, files);
  }

  private static FileState state(Path file, MadeFile made) throws IOException {
    if (!Files.isRegularFile(file)) {
      return FileState.MISSING;
    }
    return isSame(file, made) ? FileState.AS_MADE : FileState.CHANGED;
  }

  private static boolean isSame(Path file, MadeFile made) throws IOException {
    return Files.size(file) == made.bytes()
        && Digest.of(Files.readAllBytes(file)).equals(made.sha256());
  }

  /**
   * Whether all files of a record stand in their folder, at a glance: by their sizes, and by their
   * dates, none of which may be later than the record's, which was written last. A file with a
   * later date is read.
   *
   * @param thorough reads every file
   */
  public static boolean stands(Path folder, MakingRecord record, boolean thorough) {
    try {
      FileTime sealed = Files.getLastModifiedTime(folder.resolve(MakingRecord.FILE));
      for (Map.Entry<String, MadeFile> made : record.files().entrySet()) {
        Path file = folder.resolve(made.getKey());
        boolean later = Files.getLastModifiedTime(file).compareTo(sealed) > 0;
        boolean same =
            thorough || later
                ? isSame(file, made.getValue())
                : Files.size(file) == made.getValue().bytes();
        if (!same) {
          return false;
        }
      }
      return true;
    } catch (IOException | InvalidPathException e) {
      // Missing, or not to be read: the order is made again.
      return false;
    }
  }
}
