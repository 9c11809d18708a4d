package org.midlateral.recipe.batch;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.midlateral.document.FileProblem;

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
            .setHeader("place", "reference", "folder", "state", "text", "former")
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
    try {
      out.printRecord(
          inert(outcome.place()),
          inert(outcome.reference()),
          outcome.folder(),
          outcome.state().word(),
          inert(outcome.text()),
          outcome.former());
    } catch (IOException e) {
      throw FileProblem.of(aside, e);
    }
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

  /** A cell that a spreadsheet would take for a formula is given a space in front. */
  private static String inert(String cell) {
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
