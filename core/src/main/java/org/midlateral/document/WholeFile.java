package org.midlateral.document;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ForkJoinTask;

/**
 * Writes files whole or not at all: a file is written beside its name under a temporary one that
 * begins with a dot, flushed to the disk and only then given its name, in one step. What a killed
 * run left behind is deleted by the next run that writes to the folder.
 */
public final class WholeFile {
  private WholeFile() {}

  /**
   * Sees to it that nothing else stands where a folder is to be.
   *
   * @throws FileProblem if something does
   */
  public static void requireFolder(Path folder) {
    if (Files.exists(folder) && !Files.isDirectory(folder)) {
      throw FileProblem.notAFolder(folder);
    }
  }

  /**
   * Sees to it that names are not taken.
   *
   * @throws FileProblem about the first that is
   */
  public static void requireNone(Collection<Path> files) {
    for (Path file : files) {
      if (Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
        throw FileProblem.exists(file);
      }
    }
  }

  /**
   * Makes a folder, and those above it, where they are missing.
   *
   * @throws FileProblem if that cannot be
   */
  public static void makeFolder(Path folder) {
    requireFolder(folder);
    try {
      Files.createDirectories(folder);
    } catch (FileAlreadyExistsException e) {
      throw FileProblem.notAFolder(Path.of(e.getFile()));
    } catch (IOException e) {
      throw FileProblem.of(folder, e);
    }
  }

  /**
   * Makes the folder of a file, where it is missing.
   *
   * @throws FileProblem if that cannot be
   */
  public static void makeFolderOf(Path file) {
    Path folder = file.toAbsolutePath().getParent();
    if (folder != null) {
      makeFolder(folder);
    }
  }

  /**
   * Writes one file.
   *
   * @param force whether a file of that name may be replaced
   * @throws FileProblem if it cannot be written; then nothing has changed
   */
  public static void write(Path file, Content content, boolean force) {
    writeAll(Map.of(file, content), force);
  }

  /**
   * Writes several files. All are written to the disk before the first gets its name, and if one of
   * the names is taken none is written. Contents are asked for on several threads.
   *
   * @param files contents by path, in folders that exist; at least one
   * @param force whether files of those names may be replaced
   * @throws FileProblem about the first file, in the map's order, that cannot be written; then
   *     nothing has changed, save that with force some of the files may already be replaced if the
   *     very last step fails
   */
  public static void writeAll(Map<Path, Content> files, boolean force) {
    writeAll(files, Map.of(), force);
  }

  /**
   * Writes several files, as {@link #writeAll(Map, boolean)} does, some of which tell of the
   * others: when those are written their contents are asked for, one after the other.
   *
   * @param together contents by path
   * @param after contents by path, in their order
   * @param force whether files of those names may be replaced
   */
  public static void writeAll(
      Map<Path, Content> together, Map<Path, Content> after, boolean force) {
    Map<Path, Content> files = new LinkedHashMap<>(together);
    files.putAll(after);
    if (!force) {
      requireNone(files.keySet());
    }
    files.keySet().stream().map(WholeFile::folder).distinct().forEach(Leftover::sweep);
    List<Draft> drafts = files.entrySet().stream().map(Draft::new).toList();
    try {
      ForkJoinTask.invokeAll(
          drafts.subList(0, together.size()).stream()
              .map(draft -> ForkJoinTask.adapt(draft::write))
              .toList());
      drafts.subList(together.size(), drafts.size()).forEach(Draft::write);
      drafts.forEach(Draft::demand);
      place(drafts, force);
    } finally {
      drafts.forEach(Draft::discard);
    }
  }

  private static void place(List<Draft> drafts, boolean force) {
    List<Draft> placed = new ArrayList<>();
    try {
      for (Draft draft : drafts) {
        draft.place(force);
        placed.add(draft);
      }
    } catch (FileProblem e) {
      if (!force) {
        placed.forEach(Draft::takeBack);
      }
      throw e;
    }
  }

  private static Path folder(Path file) {
    return file.toAbsolutePath().getParent();
  }

  /** One file on its way. */
  private static final class Draft {
    private final Path file;
    private final Content content;
    private final Path temporary;
    private RuntimeException problem;

    Draft(Map.Entry<Path, Content> entry) {
      this.file = entry.getKey();
      this.content = entry.getValue();
      this.temporary = Leftover.beside(file.toAbsolutePath());
    }

    /** Writes the temporary file; a problem is kept for later, so that the others can finish. */
    void write() {
      try (FileChannel channel =
              FileChannel.open(temporary, StandardOpenOption.WRITE, StandardOpenOption.CREATE_NEW);
          OutputStream out = new BufferedOutputStream(Channels.newOutputStream(channel), 1 << 16)) {
        content.writeTo(out);
        out.flush();
        channel.force(true);
      } catch (IOException e) {
        problem = FileProblem.of(file, e);
      } catch (RuntimeException e) {
        problem = e;
      }
    }

    void demand() {
      if (problem != null) {
        throw problem;
      }
    }

    void place(boolean force) {
      try {
        if (!force) {
          placeNew();
        } else if (Files.isDirectory(file)) {
          throw FileProblem.isFolder(file);
        } else {
          Files.move(temporary, file, StandardCopyOption.ATOMIC_MOVE);
        }
      } catch (IOException e) {
        throw FileProblem.of(file, e);
      }
    }

    /** A link, unlike a move, fails in one step where the name is taken. */
    private void placeNew() throws IOException {
      try {
        Files.createLink(file, temporary);
      } catch (FileAlreadyExistsException | NoSuchFileException e) {
        throw e;
      } catch (IOException | UnsupportedOperationException e) {
        moveNew();
      }
    }

    /** For file systems without links: a check and a move, which is two steps. */
    private void moveNew() throws IOException {
      if (Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
        throw new FileAlreadyExistsException(file.toString());
      }
      try {
        Files.move(temporary, file, StandardCopyOption.ATOMIC_MOVE);
      } catch (AtomicMoveNotSupportedException e) {
        Files.move(temporary, file);
      }
    }

    void takeBack() {
      delete(file);
    }

    void discard() {
      delete(temporary);
    }

    private static void delete(Path path) {
      try {
        Files.deleteIfExists(path);
      } catch (IOException e) {
        // The next run in this folder sweeps what could not be deleted now.
        return;
      }
    }
  }
}
