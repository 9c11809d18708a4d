package org.midlateral.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;

/**
 * Where a command writes.
 *
 * @param out results
 * @param err messages for a person
 */
record StandardStreams(PrintStream out, PrintStream err) {

  /** Those of the process, in UTF-8. */
  static StandardStreams ofProcess() {
    return new StandardStreams(open(FileDescriptor.out), open(FileDescriptor.err));
  }

  private static PrintStream open(FileDescriptor descriptor) {
    return new PrintStream(new FileOutputStream(descriptor), true, StandardCharsets.UTF_8);
  }
}
