package org.midlateral.recipe.batch;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/** Where orders come from, one after the other. */
public interface OrderSource extends AutoCloseable {
  /** The next order, or nothing where there is none. */
  Optional<RawOrder> next() throws IOException;

  @Override
  void close() throws IOException;

  /**
   * Opens a table or a folder.
   *
   * @throws SourceProblem if it cannot be read, with one sentence for a person
   */
  static OrderSource open(Path path) throws IOException, SourceProblem {
    return Files.isDirectory(path) ? FolderOrders.of(path) : TableOrders.of(path);
  }

  /** How many orders there are, roughly where they stand in a table. */
  static long count(Path path) throws IOException {
    return Files.isDirectory(path) ? FolderOrders.count(path) : TableOrders.count(path);
  }
}
