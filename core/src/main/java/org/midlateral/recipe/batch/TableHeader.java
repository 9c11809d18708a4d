package org.midlateral.recipe.batch;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.midlateral.measurement.key.KeyTable;
import org.midlateral.measurement.key.Shown;

/**
 * The first row of a table: what parts its cells, and the key of each column.
 *
 * @param mark between cells: a comma, or a semicolon, as spreadsheets write it where a comma is the
 *     decimal mark
 * @param keys of the columns; empty of a column that is ignored or has no name
 * @param nameless whether a column has no name, so that its cells must be empty
 */
record TableHeader(char mark, List<String> keys, List<Boolean> nameless) {
  private static final String MARKS = ",;";

  /** A line by which some spreadsheets tell what parts the cells. */
  private static final Pattern SAYS = Pattern.compile("(?i)\"?sep=(.?)\"?[,;]*");

  /** A number with a comma in it and nothing else that could mean another. */
  private static final Pattern DECIMAL_COMMA =
      Pattern.compile("(\\s*[-+]?\\d+),(\\d+(?:\\s*[^\\d.,;]*)?)");

  TableHeader {
    keys = List.copyOf(keys);
    nameless = List.copyOf(nameless);
  }

  /**
   * The mark that a first line tells of.
   *
   * @return empty where the line is the header itself
   * @throws SourceProblem where it is none that is read here
   */
  static Optional<Character> said(Path file, String line) throws SourceProblem {
    Matcher says = SAYS.matcher(line.strip());
    if (!says.matches()) {
      return Optional.empty();
    }
    String mark = says.group(1).isEmpty() ? line.strip().substring(4, 5) : says.group(1);
    if (!MARKS.contains(mark)) {
      throw new SourceProblem(
          file + ":1: cells are separated by " + Shown.shown(mark) + "; allowed: , or ;");
    }
    return Optional.of(mark.charAt(0));
  }

  /** The mark that parts a header into most keys; a comma where none does. */
  static char likely(String header, ColumnNames names) {
    char best = ',';
    for (char mark : MARKS.toCharArray()) {
      best = known(header, mark, names) > known(header, best, names) ? mark : best;
    }
    return best;
  }

  private static long known(String header, char mark, ColumnNames names) {
    List<String> cells = cells(header, mark).orElse(List.of());
    return cells.stream()
        .filter(c -> names.isIgnored(c) || KeyTable.standard().find(names.key(c)).isPresent())
        .count();
  }

  /**
   * Reads a header.
   *
   * @param line it stands in
   * @throws SourceProblem where a column is neither a key nor named by the user
   */
  static TableHeader of(Path file, int line, String header, char mark, ColumnNames names)
      throws SourceProblem {
    String place = file + ":" + line + ": ";
    List<String> columns =
        cells(header, mark)
            .orElseThrow(
                () ->
                    new SourceProblem(place + "the first row is not a row of a table (RFC 4180)"));
    if (columns.size() == 1 && header.contains("\t")) {
      throw new SourceProblem(
          place + "the cells are separated by tabs; allowed: commas, or semicolons (RFC 4180)");
    }
    requireUsed(place, columns, names);
    List<String> keys = new ArrayList<>();
    List<Boolean> nameless = new ArrayList<>();
    Set<String> seen = new HashSet<>();
    for (String column : columns) {
      boolean left = names.isIgnored(column) || column.isBlank() && columns.size() > 1;
      String key = left ? "" : names.key(column);
      if (!left && (key.contains("[") || KeyTable.standard().find(key).isEmpty())) {
        String why = KeyTable.standard().whyNoKey(key);
        throw new SourceProblem(place + "the column \"" + Shown.shown(key) + "\" " + why);
      }
      if (!left && !seen.add(key)) {
        throw new SourceProblem(place + Shown.shown(key) + " names two columns");
      }
      keys.add(key);
      nameless.add(column.isBlank());
    }
    return new TableHeader(mark, keys, nameless);
  }

  /** A name that no column has is a slip, and what it was meant for would be read otherwise. */
  private static void requireUsed(String place, List<String> columns, ColumnNames names)
      throws SourceProblem {
    List<String> folded = columns.stream().map(ColumnNames::folded).toList();
    List<String> asked = new ArrayList<>(names.keys().keySet());
    asked.addAll(names.ignored());
    for (String name : asked) {
      if (!folded.contains(name)) {
        throw new SourceProblem(
            place
                + "there is no column \""
                + Shown.shown(name)
                + "\"; it has "
                + Shown.shown(String.join(", ", columns)));
      }
    }
  }

  /** Cells of one record; empty where it is none. */
  static Optional<List<String>> cells(String text, char mark) {
    CSVFormat format =
        CSVFormat.RFC4180.builder().setDelimiter(mark).setIgnoreEmptyLines(false).get();
    try (CSVParser parser = CSVParser.parse(text, format)) {
      List<CSVRecord> records = parser.getRecords();
      return records.size() == 1 ? Optional.of(records.get(0).toList()) : Optional.empty();
    } catch (UncheckedIOException | IOException e) {
      return Optional.empty();
    }
  }

  /** Cells that a row needs: up to the last column with a name. */
  int least() {
    return nameless.lastIndexOf(false) + 1;
  }

  /** A cell as a file would state it: with a point where the table writes decimal commas. */
  String value(int column, String cell) {
    Matcher comma = DECIMAL_COMMA.matcher(cell);
    boolean number =
        KeyTable.standard().find(keys.get(column)).map(key -> key.kind().isNumeric()).orElse(false);
    return mark == ';' && number && comma.matches() ? comma.group(1) + "." + comma.group(2) : cell;
  }
}
