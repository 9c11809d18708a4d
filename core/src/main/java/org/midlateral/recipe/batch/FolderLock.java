package org.midlateral.recipe.batch;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import org.midlateral.document.FileProblem;

/**
 * Keeps a folder for one run. The lock is the system's own, so that it ends with the process,
 * however that ends; the file it is held on stays.
 */
final class FolderLock implements AutoCloseable {
  private static final String FILE = ".batch.lock";

  private final Path folder;
  private final FileChannel channel;

  private FolderLock(Path folder, FileChannel channel) {
    this.folder = folder;
    this.channel = channel;
  }

  /** The folder that is kept. */
  Path folder() {
    return folder;
  }

  /**
   * Takes the folder.
   *
   * @throws FolderInUse if another run has it
   */
  static FolderLock take(Path folder) throws FolderInUse {
    Path file = folder.resolve(FILE);
    try {
      FileChannel channel =
          FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
      if (!locked(channel)) {
        channel.close();
        throw new FolderInUse(folder);
      }
      return new FolderLock(folder, channel);
    } catch (IOException e) {
      throw FileProblem.of(file, e);
    }
  }

  /** Another process's lock gives no lock; another run's in this process is an exception. */
  private static boolean locked(FileChannel channel) throws IOException {
    try {
      return channel.tryLock() != null;
    } catch (OverlappingFileLockException e) {
      return false;
    }
  }

  @Override
  public void close() throws IOException {
    channel.close();
  }
}
