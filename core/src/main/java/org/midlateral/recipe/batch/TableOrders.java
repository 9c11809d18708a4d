package org.midlateral.recipe.batch;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.midlateral.measurement.InputError;
import org.midlateral.measurement.KeyTable;
import org.midlateral.measurement.Orders;

/**
 * A table by RFC 4180: the first row names keys by their whole paths, every further row is an
 * order, an empty cell leaves a key at its default. Empty rows are passed over.
 */
final class TableOrders implements OrderSource {
  private static final CSVFormat FORMAT =
      CSVFormat.RFC4180.builder().setIgnoreEmptyLines(false).get();

  private final String name;
  private final TableLines lines;
  private final List<String> keys;

  private TableOrders(String name, TableLines lines, List<String> keys) {
    this.name = name;
    this.lines = lines;
    this.keys = keys;
  }

  static TableOrders of(Path file) throws IOException, SourceProblem {
    if (!Files.isRegularFile(file)) {
      throw new SourceProblem(file + ": there is no such file or folder");
    }
    TableLines lines = new TableLines(file);
    try {
      String first = lines.next();
      if (first == null) {
        throw new SourceProblem(file + ": is empty; its first row must name keys");
      }
      return new TableOrders(file.toString(), lines, keys(file, first));
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
    Set<String> seen = new HashSet<>();
    for (String key : keys) {
      String shown = key.replaceAll("\\P{Print}", "?");
      shown = shown.length() > 60 ? shown.substring(0, 60) + "..." : shown;
      if (key.contains("[") || KeyTable.standard().find(key).isEmpty()) {
        String near =
            KeyTable.standard().nearest(key).map(k -> "; did you mean " + k + "?").orElse("");
        throw new SourceProblem(file + ":1: \"" + shown + "\" is not a key" + near);
      }
      if (!seen.add(key)) {
        throw new SourceProblem(file + ":1: " + shown + " names two columns");
      }
    }
    return keys;
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
    String text = lines.next();
    while (text != null && text.isBlank()) {
      text = lines.next();
    }
    if (text == null) {
      return Optional.empty();
    }
    int line = lines.line();
    List<String> row = cells(text);
    if (row == null) {
      return Optional.of(broken(text, line, "the row is not one of a table (RFC 4180)"));
    }
    if (row.size() != keys.size()) {
      String counts = "the row has " + row.size() + " cells where the first row names ";
      return Optional.of(broken(text, line, counts + keys.size() + " keys"));
    }
    List<String> stated = new ArrayList<>();
    for (int i = 0; i < row.size(); i++) {
      if (!row.get(i).isBlank()) {
        stated.add(keys.get(i) + "=" + row.get(i));
      }
    }
    return Optional.of(
        new RawOrder(
            name + ":" + line,
            String.join("\n", stated),
            overrides -> Orders.row(stated, name, line, overrides)));
  }

  /** Cells of one record; null where it is none. */
  private static List<String> cells(String text) throws IOException {
    try (CSVParser parser = CSVParser.parse(text, FORMAT)) {
      List<CSVRecord> records = parser.getRecords();
      return records.size() == 1 ? records.get(0).toList() : null;
    } catch (java.io.UncheckedIOException | IllegalStateException e) {
      return null;
    }
  }

  private RawOrder broken(String text, int line, String why) {
    InputError error = new InputError(name, line, "", "", "a row by RFC 4180", why);
    return new RawOrder(
        name + ":" + line, text, overrides -> new Orders.Result(null, List.of(error), List.of()));
  }

  @Override
  public void close() throws IOException {
    lines.close();
  }
}
