package org.midlateral.recipe.batch;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.midlateral.document.Content;
import org.midlateral.document.FileProblem;
import org.midlateral.document.WholeFile;
import org.midlateral.recipe.record.MakingRecord;

/**
 * Puts an order's files where they belong, all in one step: they are written into a folder aside,
 * the former making is moved away, and the new folder gets the order's name.
 *
 * @param run the run's folder
 * @param superseded where former makings go
 */
record OrderFolder(Path run, Superseded superseded) {
  private static final String ASIDE = ".making-";

  /** Takes away what a killed run left. Nobody else writes there: the run's folder is locked. */
  static void sweep(Path run) {
    try (DirectoryStream<Path> left = Files.newDirectoryStream(run, ASIDE + "*")) {
      for (Path folder : left) {
        Superseded.deleteAll(folder);
      }
    } catch (IOException e) {
      throw FileProblem.of(run, e);
    }
  }

  /**
   * Places a making.
   *
   * @param folder the order's
   * @param files by name
   * @param record of them
   * @return where the former making was moved to; empty where there was none
   */
  Optional<String> place(String folder, Map<String, byte[]> files, MakingRecord record) {
    Path home = run.resolve(folder);
    WholeFile.requireFolder(home);
    Path aside = run.resolve(ASIDE + folder);
    WholeFile.makeFolder(aside);
    try {
      write(aside, files, record);
      Optional<String> moved = superseded.take(folder);
      Files.move(aside, home, StandardCopyOption.ATOMIC_MOVE);
      return moved;
    } catch (IOException e) {
      throw FileProblem.of(home, e);
    } finally {
      discard(aside);
    }
  }

  /** Writes a making again over itself, where a file of it was lost or changed. */
  void mend(String folder, Map<String, byte[]> files, MakingRecord record) {
    write(run.resolve(folder), files, record);
  }

  private static void write(Path folder, Map<String, byte[]> files, MakingRecord making) {
    Map<Path, Content> all = new LinkedHashMap<>();
    files.forEach((name, bytes) -> all.put(folder.resolve(name), out -> out.write(bytes)));
    byte[] last = making.json().getBytes(StandardCharsets.UTF_8);
    Content record = out -> out.write(last);
    WholeFile.writeAll(all, Map.of(folder.resolve(MakingRecord.FILE), record), true);
  }

  private static void discard(Path aside) {
    try {
      Superseded.deleteAll(aside);
    } catch (IOException e) {
      // The next run sweeps what could not be deleted now.
      return;
    }
  }
}
