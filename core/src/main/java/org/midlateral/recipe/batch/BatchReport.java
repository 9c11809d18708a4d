package org.midlateral.recipe.batch;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.midlateral.document.FileProblem;
import org.midlateral.recipe.record.MakingFigures;
import org.midlateral.recipe.record.MakingRecord;

/**
 * The table of what became of each order, {@code batch-report.csv} by RFC 4180: written aside while
 * the run goes on, and given its name at the end. A former run's is taken away at the beginning: it
 * would tell of orders that are being made anew.
 */
final class BatchReport implements AutoCloseable {
  static final String FILE = "batch-report.csv";

  private final Path aside;
  private final Path file;
  private final CSVPrinter out;

  BatchReport(Path folder) {
    this.aside = folder.resolve("." + FILE + ".part");
    this.file = folder.resolve(FILE);
    CSVFormat format =
        CSVFormat.RFC4180
            .builder()
            .setHeader(
                "place",
                "reference",
                "folder",
                "state",
                "text",
                "former",
                "revision",
                "label",
                "material",
                "mass g",
                "volume mm3",
                "height mm",
                "support mm2",
                "notes")
            .get();
    try {
      Files.deleteIfExists(file);
    } catch (IOException e) {
      throw FileProblem.of(file, e);
    }
    try {
      this.out = new CSVPrinter(Files.newBufferedWriter(aside, StandardCharsets.UTF_8), format);
    } catch (IOException e) {
      throw FileProblem.of(aside, e);
    }
  }

  void add(Outcome outcome) {
    List<Object> cells = new ArrayList<>();
    cells.add(inert(outcome.place()));
    cells.add(inert(outcome.reference()));
    cells.add(outcome.folder());
    cells.add(outcome.state().word());
    cells.add(inert(outcome.text()));
    cells.add(outcome.former());
    Optional<MakingRecord> record = outcome.record();
    cells.add(record.map(made -> "" + made.revision()).orElse(""));
    cells.add(record.map(made -> labels(made.labels())).orElse(""));
    Optional<MakingFigures> figures = record.map(MakingRecord::figures);
    cells.add(figures.map(MakingFigures::material).orElse(""));
    cells.add(figures.map(f -> "" + f.mass()).orElse(""));
    cells.add(figures.map(f -> "" + f.volume()).orElse(""));
    cells.add(figures.map(f -> "" + f.height()).orElse(""));
    cells.add(figures.map(f -> "" + f.support()).orElse(""));
    cells.add(record.map(made -> inert(made.notes())).orElse(""));
    try {
      out.printRecord(cells);
    } catch (IOException e) {
      throw FileProblem.of(aside, e);
    }
  }

  /** One label where all parts bear the same, else each with its part. */
  private static String labels(Map<String, String> labels) {
    List<String> texts = labels.values().stream().distinct().toList();
    return texts.size() == 1
        ? inert(texts.get(0))
        : labels.entrySet().stream()
            .map(label -> label.getKey() + " " + label.getValue())
            .collect(Collectors.joining(", "));
  }

  /** Gives the table its name, once the run is through. */
  void finish() {
    try {
      out.close();
      Files.move(aside, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    } catch (IOException e) {
      throw FileProblem.of(file, e);
    }
  }

  /**
   * A cell in one line; one that a spreadsheet would take for a formula is given a space in front.
   */
  private static String inert(String text) {
    String cell = text.replaceAll("\\s*\\R\\s*", "; ");
    return !cell.isEmpty() && "=+-@\t\r".indexOf(cell.charAt(0)) >= 0 ? " " + cell : cell;
  }

  @Override
  public void close() {
    try {
      out.close();
    } catch (IOException e) {
      // The table was not finished, and what made it so has been told.
      return;
    }
  }
}
