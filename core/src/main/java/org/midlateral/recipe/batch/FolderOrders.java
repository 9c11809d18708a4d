package org.midlateral.recipe.batch;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.midlateral.measurement.entry.Entry.NodeShape;
import org.midlateral.measurement.entry.EntryReader;
import org.midlateral.measurement.file.Orders;
import org.midlateral.recipe.record.MakingRecord;

/** A folder of measurement files, in the order of their names. */
final class FolderOrders implements OrderSource {
  private static final long LARGEST = 1 << 20;

  private final Iterator<Path> files;
  private final List<String> notes;

  private FolderOrders(List<Path> files, List<String> notes) {
    this.files = files.iterator();
    this.notes = notes;
  }

  static FolderOrders of(Path folder) throws IOException, SourceProblem {
    List<Path> files = files(folder);
    List<String> notes = unread(folder);
    if (files.isEmpty()) {
      String why = ": there is no .yaml, .yml or .json file in this folder";
      throw new SourceProblem(String.join("; ", prepended(folder + why, notes)));
    }
    return new FolderOrders(files, notes);
  }

  static long count(Path folder) throws IOException {
    return files(folder).size();
  }

  private static List<Path> files(Path folder) throws IOException {
    try (Stream<Path> all = Files.list(folder)) {
      return all.filter(FolderOrders::isMeasurementFile).sorted().toList();
    }
  }

  private static List<String> prepended(String first, List<String> rest) {
    List<String> all = new ArrayList<>(List.of(first));
    all.addAll(rest);
    return all;
  }

  /** Folders in the folder that hold measurement files, but for what a batch has written. */
  private static List<String> unread(Path folder) throws IOException {
    List<String> notes = new ArrayList<>();
    try (Stream<Path> all = Files.list(folder)) {
      for (Path inner : all.filter(Files::isDirectory).sorted().toList()) {
        boolean hidden = inner.getFileName().toString().startsWith(".");
        if (!hidden && !Files.exists(inner.resolve(BatchReport.FILE))) {
          int count = files(inner).size();
          if (count > 0 && !Files.exists(inner.resolve(MakingRecord.FILE))) {
            notes.add(inner + ": a folder of its own, whose orders are not read: " + count);
          }
        }
      }
    }
    return notes;
  }

  private static boolean isMeasurementFile(Path file) {
    return file.getFileName().toString().matches("(?i)[^.].*\\.(ya?ml|json)");
  }

  @Override
  public Optional<RawOrder> next() {
    if (!files.hasNext()) {
      return Optional.empty();
    }
    Path file = files.next();
    String text = text(file);
    return Optional.of(
        new RawOrder(
            file.toString(), "", text, stated(text), overrides -> Orders.read(file, overrides)));
  }

  private static List<String> stated(String text) {
    return EntryReader.read(text, "", "").entries().stream()
        .filter(entry -> entry.shape() == NodeShape.SCALAR)
        .map(entry -> entry.path() + "=" + entry.text())
        .toList();
  }

  /** Empty for a file that cannot be read; reading the order says why. */
  private static String text(Path file) {
    try {
      return Files.size(file) > LARGEST
          ? ""
          : new String(Files.readAllBytes(file), StandardCharsets.UTF_8);
    } catch (IOException e) {
      return "";
    }
  }

  @Override
  public List<String> notes() {
    return notes;
  }

  /** A file that came meanwhile, or was changed, is the next run's. */
  @Override
  public void requireUnchanged() {
    // Each file was read once and as a whole.
  }

  @Override
  public void close() {
    // Nothing is held open.
  }
}
