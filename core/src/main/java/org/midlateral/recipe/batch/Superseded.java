package org.midlateral.recipe.batch;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Optional;
import org.midlateral.document.Defect;
import org.midlateral.document.FileProblem;
import org.midlateral.document.WholeFile;
import org.midlateral.recipe.record.MakingRecord;

/**
 * Where former makings go, so that no part lies in an order's folder but what the order says now:
 * {@code superseded/FOLDER/REVISION}, moved there as a whole and in one step.
 *
 * @param run the run's folder
 * @param delete the parts instead; the record stays, which tells that they were there
 */
record Superseded(Path run, boolean delete) {
  /** Name of the folder of former makings, in the run's folder. */
  static final String FOLDER = "superseded";

  /** The highest revision of an order that was set aside; 0 where there is none. */
  int highest(String folder) {
    int highest = 0;
    try (DirectoryStream<Path> all =
        Files.newDirectoryStream(run.resolve(FOLDER).resolve(folder), "[1-9]*")) {
      for (Path path : all) {
        String name = path.getFileName().toString();
        if (name.matches("\\d{1,9}")) {
          highest = Math.max(highest, Integer.parseInt(name));
        }
      }
      return highest;
    } catch (NoSuchFileException e) {
      return 0;
    } catch (IOException e) {
      throw FileProblem.of(run.resolve(FOLDER).resolve(folder), e);
    }
  }

  /** The revision of what lies in an order's folder; 0 where nothing was made there. */
  int standing(String folder) {
    Path home = run.resolve(folder);
    if (!holdsAny(home)) {
      return 0;
    }
    return Math.max(
        MakingRecord.in(home).map(MakingRecord::revision).orElse(1), highest(folder) + 1);
  }

  /** Where a former revision of an order lies, beside the orders' folders. */
  static String place(String folder, int revision) {
    return FOLDER + "/" + folder + "/" + revision;
  }

  /**
   * Moves away what lies in an order's folder.
   *
   * @return where to, beside the orders' folders; empty where nothing was made there
   * @throws FileProblem if it cannot be moved
   */
  Optional<String> take(String folder) {
    Path home = run.resolve(folder);
    int revision = standing(folder);
    try {
      if (revision == 0) {
        deleteAll(home);
        return Optional.empty();
      }
      String place = place(folder, revision);
      Path aside = run.resolve(place);
      WholeFile.makeFolder(aside.getParent());
      Files.move(home, aside, StandardCopyOption.ATOMIC_MOVE);
      if (delete) {
        deleteFiles(aside);
      }
      return Optional.of(place);
    } catch (IOException e) {
      throw FileProblem.of(home, e);
    }
  }

  /**
   * Whether there is more in a folder than a record, or a defect's file, of why there is nothing.
   */
  private static boolean holdsAny(Path home) {
    if (!Files.isDirectory(home)) {
      return false;
    }
    try (DirectoryStream<Path> all = Files.newDirectoryStream(home)) {
      for (Path path : all) {
        if (!path.endsWith(MakingRecord.FILE) && !path.endsWith(Defect.FILE)) {
          return true;
        }
      }
      return MakingRecord.in(home).map(record -> record.revision() > 0).orElse(false);
    } catch (IOException e) {
      throw FileProblem.of(home, e);
    }
  }

  /**
   * What its record names; what else lies there is the user's own and stays, as the record does.
   */
  private static void deleteFiles(Path aside) throws IOException {
    Optional<MakingRecord> made = MakingRecord.in(aside);
    if (made.isPresent()) {
      for (String name : made.get().files().keySet()) {
        Files.deleteIfExists(aside.resolve(name));
      }
    }
  }

  /** Deletes a folder of files that are nobody's. */
  static void deleteAll(Path folder) throws IOException {
    if (!Files.isDirectory(folder)) {
      return;
    }
    try (DirectoryStream<Path> all = Files.newDirectoryStream(folder)) {
      for (Path path : all) {
        Files.deleteIfExists(path);
      }
    }
    Files.deleteIfExists(folder);
  }
}
