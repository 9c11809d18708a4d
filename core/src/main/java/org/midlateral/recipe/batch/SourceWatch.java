package org.midlateral.recipe.batch;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/**
 * Looks now and then whether a table or a folder of orders has changed. It looks at names, sizes
 * and dates, as every file system has them, those of other machines too.
 */
public final class SourceWatch {
  private final Path source;
  private String seen = "";

  /** A watch over a table or a folder, which need not be there yet. */
  public SourceWatch(Path source) {
    this.source = source;
  }

  /** Takes what is there now as seen. */
  public void look() {
    seen = stamp();
  }

  /**
   * Waits until something is there that was not seen, and until it rests from one look to the next:
   * a file that is still being written is not read by halves.
   *
   * @param millis between two looks
   */
  public void await(long millis) throws InterruptedException {
    String before = seen;
    String now = seen;
    while (now.equals(seen) || !now.equals(before)) {
      Thread.sleep(millis);
      before = now;
      now = stamp();
    }
  }

  private String stamp() {
    try {
      if (!Files.isDirectory(source)) {
        return stamp(source);
      }
      try (Stream<Path> files = Files.list(source)) {
        List<String> stamps = files.filter(Files::isRegularFile).sorted().map(this::stamp).toList();
        return String.join("\n", stamps);
      }
    } catch (IOException e) {
      return "";
    }
  }

  private String stamp(Path file) {
    try {
      return file + " " + Files.size(file) + " " + Files.getLastModifiedTime(file);
    } catch (IOException e) {
      // Gone in the meantime, or not there yet.
      return "";
    }
  }
}
