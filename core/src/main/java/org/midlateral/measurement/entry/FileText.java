package org.midlateral.measurement.entry;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Locale;
import org.midlateral.measurement.InputError;
import org.midlateral.measurement.entry.Entry.Place;

/** Reads a measurement file's bytes into text: at most 1 MiB, UTF-8. */
public final class FileText {

  private static final int LARGEST = 1 << 20;

  /** A file that cannot be taken for text; carries what to tell. */
  public static final class Unreadable extends Exception {
    private static final long serialVersionUID = 1;
    private final transient InputError error;

    Unreadable(String file, int line, String allowed, String text) {
      super(text);
      this.error = new Place(file, line).error("", "", allowed, text);
    }

    public InputError error() {
      return error;
    }
  }

  private FileText() {}

  /**
   * Text of a file.
   *
   * @throws Unreadable with the error to report
   */
  public static String read(Path file) throws Unreadable {
    String name = file.toString();
    try {
      if (Files.exists(file) && !Files.isRegularFile(file)) {
        throw new Unreadable(name, 0, "a file", "is not a file");
      }
      if (Files.size(file) > LARGEST) {
        throw tooLarge(name);
      }
      try (InputStream in = Files.newInputStream(file)) {
        return decode(in.readNBytes(LARGEST + 1), name);
      }
    } catch (NoSuchFileException e) {
      throw new Unreadable(name, 0, "a file that exists", "there is no such file");
    } catch (IOException e) {
      throw new Unreadable(name, 0, "a file that can be read", "cannot be read");
    }
  }

  /** Text of bytes; a byte order mark of UTF-8 is dropped. */
  static String decode(byte[] bytes, String name) throws Unreadable {
    if (bytes.length > LARGEST) {
      throw tooLarge(name);
    }
    if (startsWith(bytes, 0xFE, 0xFF) || startsWith(bytes, 0xFF, 0xFE)) {
      throw new Unreadable(name, 1, "UTF-8", "is written in UTF-16 or UTF-32; allowed: UTF-8");
    }
    int start = startsWith(bytes, 0xEF, 0xBB, 0xBF) ? 3 : 0;
    ByteBuffer in = ByteBuffer.wrap(bytes, start, bytes.length - start);
    CharBuffer out = CharBuffer.allocate(bytes.length + 1);
    CoderResult result =
        StandardCharsets.UTF_8
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT)
            .decode(in, out, true);
    out.flip();
    if (result.isError()) {
      int line = 1 + (int) out.chars().filter(c -> c == '\n').count();
      String text =
          String.format(
              Locale.ROOT,
              "the byte 0x%02X is not UTF-8; allowed: a text saved as UTF-8",
              bytes[in.position()] & 0xFF);
      throw new Unreadable(name, line, "UTF-8", text);
    }
    return out.toString();
  }

  private static boolean startsWith(byte[] bytes, int... first) {
    for (int i = 0; i < first.length; i++) {
      if (i >= bytes.length || (bytes[i] & 0xFF) != first[i]) {
        return false;
      }
    }
    return true;
  }

  private static Unreadable tooLarge(String name) {
    return new Unreadable(name, 0, "at most 1 MiB", "is too large; allowed: at most 1 MiB");
  }
}
