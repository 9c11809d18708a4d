package org.midlateral.document;

import java.io.IOException;
import java.io.OutputStream;

/** What a file is to hold. */
@FunctionalInterface
public interface Content {
  /** Writes all of it; the caller closes the stream. */
  void writeTo(OutputStream out) throws IOException;
}
