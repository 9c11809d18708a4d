package org.midlateral.recipe.batch;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.midlateral.measurement.entry.Entry.NodeShape;
import org.midlateral.measurement.entry.EntryReader;
import org.midlateral.measurement.file.Orders;

/** A folder of measurement files, in the order of their names. */
final class FolderOrders implements OrderSource {
  private static final long LARGEST = 1 << 20;

  private final Iterator<Path> files;

  private FolderOrders(List<Path> files) {
    this.files = files.iterator();
  }

  static FolderOrders of(Path folder) throws IOException, SourceProblem {
    List<Path> files = files(folder);
    if (files.isEmpty()) {
      throw new SourceProblem(folder + ": there is no .yaml, .yml or .json file in this folder");
    }
    return new FolderOrders(files);
  }

  static long count(Path folder) throws IOException {
    return files(folder).size();
  }

  private static List<Path> files(Path folder) throws IOException {
    try (Stream<Path> all = Files.list(folder)) {
      return all.filter(FolderOrders::isMeasurementFile).sorted().toList();
    }
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
