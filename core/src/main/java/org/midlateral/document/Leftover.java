package org.midlateral.document;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.concurrent.atomic.AtomicLong;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Names of files not yet whole: {@code .trough.stl.4711-1767225600000-1.part}, with the number of
 * the process that writes it and the moment that process began (ms since 1970). Whoever finds such
 * a file can tell from them whether its writer still lives.
 */
final class Leftover {
  private static final Pattern NAME = Pattern.compile("\\..+\\.(\\d+)-(\\d+)-\\d+\\.part");
  private static final AtomicLong COUNT = new AtomicLong();

  private Leftover() {}

  /** A temporary name beside a file, never given twice. */
  static Path beside(Path file) {
    ProcessHandle own = ProcessHandle.current();
    String name =
        "."
            + file.getFileName()
            + "."
            + own.pid()
            + "-"
            + begun(own)
            + "-"
            + COUNT.incrementAndGet();
    return file.resolveSibling(name + ".part");
  }

  /** Deletes what writers that are no more have left in a folder; what cannot go, stays. */
  static void sweep(Path folder) {
    try (DirectoryStream<Path> found = Files.newDirectoryStream(folder, ".*.part")) {
      for (Path file : found) {
        Matcher name = NAME.matcher(file.getFileName().toString());
        if (name.matches() && !alive(name.group(1), name.group(2))) {
          Files.deleteIfExists(file);
        }
      }
    } catch (IOException | UncheckedIOException e) {
      // A folder that cannot be read or cleaned will say so when the file itself is written.
      return;
    }
  }

  private static boolean alive(String pid, String begun) {
    try {
      return ProcessHandle.of(Long.parseLong(pid))
          .filter(process -> begun(process) == Long.parseLong(begun))
          .isPresent();
    } catch (NumberFormatException e) {
      return false;
    }
  }

  /** 0 where the platform does not tell. */
  private static long begun(ProcessHandle process) {
    return process.info().startInstant().map(Instant::toEpochMilli).orElse(0L);
  }
}
