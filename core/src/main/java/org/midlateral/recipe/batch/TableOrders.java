package org.midlateral.recipe.batch;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.midlateral.measurement.InputError;
import org.midlateral.measurement.file.Orders;
import org.midlateral.measurement.key.KeyTable;
import org.midlateral.measurement.key.Shown;

/**
 * A table by RFC 4180: the first row names keys by their whole paths, every further row is an
 * order, an empty cell leaves a key at its default. Rows without a value are passed over.
 */
final class TableOrders implements OrderSource {
  private static final CSVFormat FORMAT =
      CSVFormat.RFC4180.builder().setIgnoreEmptyLines(false).get();

  /** What stands for a byte that is not UTF-8. */
  private static final char BAD_BYTE = '\uFFFD';

  /** Commas alone, as spreadsheets write below the last row. */
  private static final Pattern NOTHING = Pattern.compile("[\\s,]*");

  private final Path file;
  private final String name;
  private final String stamp;
  private final TableLines lines;
  private final List<String> keys;

  private TableOrders(Path file, String stamp, TableLines lines, List<String> keys) {
    this.file = file;
    this.name = file.toString();
    this.stamp = stamp;
    this.lines = lines;
    this.keys = keys;
  }

  static TableOrders of(Path file) throws IOException, SourceProblem {
    if (!Files.isRegularFile(file)) {
      throw new SourceProblem(file + ": there is no such file or folder");
    }
    String stamp = stamp(file);
    TableLines lines = new TableLines(file);
    try {
      String first = lines.next();
      if (first == null) {
        throw new SourceProblem(file + ": is empty; its first row must name keys");
      }
      if (first.indexOf(BAD_BYTE) >= 0 || first.indexOf('\0') >= 0) {
        throw new SourceProblem(file + ":1: is not UTF-8; allowed: a table saved as CSV in UTF-8");
      }
      return new TableOrders(file, stamp, lines, keys(file, first));
    } catch (SourceProblem | IOException e) {
      lines.close();
      throw e;
    }
  }

  private static List<String> keys(Path file, String header) throws IOException, SourceProblem {
    List<String> keys = cells(header);
    if (keys == null) {
      throw new SourceProblem(file + ":1: the first row is not a row of a table (RFC 4180)");
    }
    if (keys.size() == 1) {
      requireNoOtherMark(file, header, ";", "semicolons");
      requireNoOtherMark(file, header, "\t", "tabs");
    }
    Set<String> seen = new HashSet<>();
    for (String key : keys) {
      String shown = Shown.shown(key);
      if (key.contains("[") || KeyTable.standard().find(key).isEmpty()) {
        String why = KeyTable.standard().whyNoKey(key);
        throw new SourceProblem(file + ":1: the column \"" + shown + "\" " + why);
      }
      if (!seen.add(key)) {
        throw new SourceProblem(file + ":1: " + shown + " names two columns");
      }
    }
    return keys;
  }

  /** What a spreadsheet writes where a comma is its decimal mark. */
  private static void requireNoOtherMark(Path file, String header, String mark, String marks)
      throws SourceProblem {
    String first = header.split(mark, 2)[0];
    if (header.contains(mark) && KeyTable.standard().find(first).isPresent()) {
      throw new SourceProblem(
          file
              + ":1: the cells are parted by "
              + marks
              + "; allowed: commas between cells and a point in figures (RFC 4180)");
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
    for (String text = lines.next(); text != null; text = lines.next()) {
      if (!NOTHING.matcher(text).matches()) {
        return Optional.of(order(text, lines.line()));
      }
    }
    return Optional.empty();
  }

  private RawOrder order(String text, int line) throws IOException {
    List<String> row = cells(text);
    if (row == null) {
      return broken(text, "", line, "the row is not one of a table (RFC 4180)");
    }
    int place = keys.indexOf("reference");
    String reference = place < 0 || place >= row.size() ? "" : Shown.shown(row.get(place).strip());
    if (text.indexOf(BAD_BYTE) >= 0) {
      return broken(text, reference, line, "holds a byte that is not UTF-8; allowed: UTF-8");
    }
    if (row.size() != keys.size()) {
      String counts = "the row has " + row.size() + " cells where the first row names ";
      return broken(text, reference, line, counts + keys.size() + " keys");
    }
    List<String> stated = new ArrayList<>();
    for (int i = 0; i < row.size(); i++) {
      if (!row.get(i).isBlank()) {
        stated.add(keys.get(i) + "=" + row.get(i));
      }
    }
    return new RawOrder(
        name + ":" + line,
        reference,
        String.join("\n", stated),
        stated,
        overrides -> Orders.row(stated, name, line, overrides));
  }

  /** Cells of one record; null where it is none. */
  private static List<String> cells(String text) throws IOException {
    try (CSVParser parser = CSVParser.parse(text, FORMAT)) {
      List<CSVRecord> records = parser.getRecords();
      return records.size() == 1 ? records.get(0).toList() : null;
    } catch (UncheckedIOException e) {
      return null;
    }
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
