package org.midlateral.recipe.batch;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.midlateral.measurement.InputError;
import org.midlateral.measurement.file.Orders;
import org.midlateral.measurement.key.Shown;

/**
 * A table by RFC 4180, its cells parted by commas or semicolons: the first row names keys by their
 * whole paths, every further row is an order, an empty cell leaves a key at its default. Rows
 * without a value are passed over.
 */
final class TableOrders implements OrderSource {
  /** What stands for a byte that is not UTF-8. */
  private static final char BAD_BYTE = '\uFFFD';

  /** Marks alone, as spreadsheets write below the last row. */
  private static final Pattern NOTHING = Pattern.compile("[\\s,;]*");

  private final Path file;
  private final String name;
  private final String stamp;
  private final TableLines lines;
  private final TableHeader header;
  private Optional<RawOrder> ahead;

  private TableOrders(Path file, String stamp, TableLines lines, TableHeader header)
      throws IOException {
    this.file = file;
    this.name = file.toString();
    this.stamp = stamp;
    this.lines = lines;
    this.header = header;
    this.ahead = read();
  }

  static TableOrders of(Path file, ColumnNames names) throws IOException, SourceProblem {
    if (!Files.isRegularFile(file)) {
      throw new SourceProblem(file + ": there is no such file or folder");
    }
    String stamp = stamp(file);
    char mark = mark(file, names);
    TableLines lines = new TableLines(file, mark);
    try {
      String first = lines.next();
      if (TableHeader.said(file, first).isPresent()) {
        first = lines.next();
      }
      if (first == null) {
        throw new SourceProblem(file + ": is empty; its first row must name keys");
      }
      TableHeader header = TableHeader.of(file, lines.line(), first, mark, names);
      TableOrders orders = new TableOrders(file, stamp, lines, header);
      if (orders.ahead.isEmpty()) {
        throw new SourceProblem(
            file + ": names keys and holds no order; every row under the first is one");
      }
      return orders;
    } catch (SourceProblem | IOException e) {
      lines.close();
      throw e;
    }
  }

  /** What parts the cells: as the first line says, or as makes most sense of it. */
  private static char mark(Path file, ColumnNames names) throws IOException, SourceProblem {
    try (TableLines lines = new TableLines(file, ',')) {
      String first = lines.nextLine();
      if (first == null) {
        throw new SourceProblem(file + ": is empty; its first row must name keys");
      }
      if (first.indexOf(BAD_BYTE) >= 0 || first.indexOf('\0') >= 0) {
        throw new SourceProblem(file + ":1: is not UTF-8; allowed: a table saved as CSV in UTF-8");
      }
      Optional<Character> said = TableHeader.said(file, first);
      return said.isPresent() ? said.get() : TableHeader.likely(first, names);
    }
  }

  /** Line ends, which is what there is to count without reading the table. */
  static long count(Path file) throws IOException {
    long count = 0;
    try (InputStream in = new BufferedInputStream(Files.newInputStream(file), 1 << 16)) {
      for (int c = in.read(); c >= 0; c = in.read()) {
        count += c == '\n' ? 1 : 0;
      }
    }
    return Math.max(0, count - 1);
  }

  @Override
  public Optional<RawOrder> next() throws IOException {
    Optional<RawOrder> next = ahead;
    ahead = next.isPresent() ? read() : next;
    return next;
  }

  private Optional<RawOrder> read() throws IOException {
    for (String text = lines.next(); text != null; text = lines.next()) {
      if (!NOTHING.matcher(text).matches()) {
        return Optional.of(order(text, lines.line()));
      }
    }
    return Optional.empty();
  }

  private RawOrder order(String text, int line) {
    Optional<List<String>> cells = TableHeader.cells(text, header.mark());
    if (cells.isEmpty()) {
      return broken(text, "", line, "the row is not one of a table (RFC 4180)");
    }
    List<String> row = cells.get();
    List<String> keys = header.keys();
    int place = keys.indexOf("reference");
    String reference = place < 0 || place >= row.size() ? "" : Shown.shown(row.get(place).strip());
    if (text.indexOf(BAD_BYTE) >= 0) {
      return broken(text, reference, line, "holds a byte that is not UTF-8; allowed: UTF-8");
    }
    if (row.size() < header.least() || !isBlank(row, keys.size())) {
      String counts = "the row has " + row.size() + " cells where the first row names ";
      return broken(text, reference, line, counts + keys.size() + " keys");
    }
    List<String> stated = new ArrayList<>();
    for (int i = 0; i < Math.min(keys.size(), row.size()); i++) {
      if (row.get(i).isBlank()) {
        continue;
      }
      if (header.nameless().get(i)) {
        String cell = Shown.shown(row.get(i));
        return broken(text, reference, line, cell + " is in a column without a name");
      }
      if (!keys.get(i).isEmpty()) {
        stated.add(keys.get(i) + "=" + header.value(i, row.get(i)));
      }
    }
    return new RawOrder(
        name + ":" + line,
        reference,
        String.join("\n", stated),
        stated,
        overrides -> Orders.row(stated, name, line, overrides));
  }

  /** Whether nothing stands in the cells from one on. */
  private static boolean isBlank(List<String> row, int from) {
    return row.subList(Math.min(from, row.size()), row.size()).stream().allMatch(String::isBlank);
  }

  private RawOrder broken(String text, String reference, int line, String why) {
    InputError error = new InputError(name, line, "", "", "a row by RFC 4180, in UTF-8", why);
    return new RawOrder(
        name + ":" + line,
        reference,
        text,
        List.of(),
        overrides -> new Orders.Result(null, List.of(error), List.of()));
  }

  @Override
  public List<String> notes() {
    return List.of();
  }

  @Override
  public void requireUnchanged() throws IOException, SourceProblem {
    if (!stamp.equals(stamp(file))) {
      throw new SourceProblem(
          file + ": was changed while it was read; run it again, when it is saved");
    }
  }

  /** What changes when somebody saves the file. */
  private static String stamp(Path file) throws IOException {
    return Files.exists(file) ? Files.size(file) + " " + Files.getLastModifiedTime(file) : "";
  }

  @Override
  public void close() throws IOException {
    lines.close();
  }
}
