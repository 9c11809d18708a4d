package org.midlateral.recipe.batch;

import java.io.BufferedReader;
import java.io.Closeable;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;

/**
 * Records of a table as text: a line, or several where a quoted cell goes on over line ends. A
 * quote that is not closed within {@value #MOST_LINES} lines spoils its own line only: the lines
 * after it are read again on their own. Lines longer than {@value #LONGEST} characters are cut.
 */
final class TableLines implements Closeable {
  static final int MOST_LINES = 20;
  static final int LONGEST = 1 << 15;

  private final char mark;
  private final BufferedReader in;
  private final Deque<String> ahead = new ArrayDeque<>();
  private int line;
  private boolean skipLineFeed;

  /** A bad byte becomes the sign for one, which no value may hold. */
  TableLines(Path file, char mark) throws IOException {
    this.mark = mark;
    this.in =
        new BufferedReader(
            new InputStreamReader(Files.newInputStream(file), StandardCharsets.UTF_8), 1 << 16);
    in.mark(1);
    if (in.read() != '\uFEFF') {
      in.reset();
    }
  }

  /** The line, from 1, that the last record began in. */
  int line() {
    return line;
  }

  /** The next record, or null at the end. */
  String next() throws IOException {
    String first = nextLine();
    if (first == null || ends(first, false) != Ends.IN_QUOTES) {
      return first;
    }
    int begin = line;
    StringBuilder record = new StringBuilder(first);
    Deque<String> taken = new ArrayDeque<>();
    while (taken.size() < MOST_LINES) {
      String more = nextLine();
      if (more == null) {
        break;
      }
      taken.add(more);
      record.append('\n').append(more);
      Ends ends = ends(more, true);
      if (ends == Ends.BROKEN) {
        break;
      }
      if (ends == Ends.RECORD) {
        int end = line;
        line = begin;
        pending = end - begin;
        return record.toString();
      }
    }
    while (!taken.isEmpty()) {
      ahead.addFirst(taken.removeLast());
    }
    line = begin;
    return first;
  }

  /** Lines that the last record took beyond its first. */
  private int pending;

  /** The next line, whether or not a record ends with it. */
  String nextLine() throws IOException {
    line += 1 + pending;
    pending = 0;
    return ahead.isEmpty() ? readLine() : ahead.removeFirst();
  }

  private String readLine() throws IOException {
    StringBuilder text = new StringBuilder(256);
    int c = in.read();
    if (c == '\n' && skipLineFeed) {
      c = in.read();
    }
    skipLineFeed = false;
    if (c < 0) {
      return null;
    }
    while (c >= 0 && c != '\n' && c != '\r') {
      if (text.length() < LONGEST) {
        text.append((char) c);
      }
      c = in.read();
    }
    skipLineFeed = c == '\r';
    return text.toString();
  }

  /** How a line ends. */
  private enum Ends {
    RECORD,
    IN_QUOTES,
    /** A quoted cell is followed by more than a mark: no record. */
    BROKEN
  }

  /**
   * How a line ends. A quote opens a cell only at the cell's beginning; elsewhere it is a slip of
   * its own line, which must not swallow the next.
   *
   * @param inQuotes whether the line begins within a quoted cell
   */
  private Ends ends(String text, boolean inQuotes) {
    boolean in = inQuotes;
    boolean begins = true;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (in && c == '"') {
        char after = i + 1 < text.length() ? text.charAt(i + 1) : mark;
        if (after == '"') {
          i++;
        } else if (after == mark) {
          in = false;
        } else {
          return Ends.BROKEN;
        }
      } else if (begins && c == '"') {
        in = true;
      }
      begins = c == mark && !in;
    }
    return in ? Ends.IN_QUOTES : Ends.RECORD;
  }

  @Override
  public void close() throws IOException {
    in.close();
  }
}
