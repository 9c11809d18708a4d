package org.midlateral.recipe.batch;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/**
 * Keeps a folder for one run. The lock is the system's own, so that it ends with the process,
 * however that ends; the file it is held on stays.
 */
final class FolderLock implements AutoCloseable {
  private static final String FILE = ".batch.lock";

  private final FileChannel channel;

  private FolderLock(FileChannel channel) {
    this.channel = channel;
  }

  /**
   * Takes the folder.
   *
   * @throws FolderInUse if another run has it
   */
  static FolderLock take(Path folder) throws IOException, FolderInUse {
    FileChannel channel =
        FileChannel.open(folder.resolve(FILE), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
    try {
      FileLock lock = channel.tryLock();
      if (lock == null) {
        throw new FolderInUse(folder);
      }
      return new FolderLock(channel);
    } catch (OverlappingFileLockException e) {
      channel.close();
      throw new FolderInUse(folder);
    } catch (IOException | FolderInUse e) {
      channel.close();
      throw e;
    }
  }

  @Override
  public void close() throws IOException {
    channel.close();
  }
}
