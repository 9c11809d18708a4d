package org.midlateral.recipe.batch;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Where orders come from: a table, or a folder of measurement files. */
public final class OrderSources {
  private OrderSources() {}

  /**
   * Opens a table whose columns are named after keys, or a folder.
   *
   * @throws SourceProblem if it cannot be read, with one sentence for a person
   */
  public static OrderSource open(Path path) throws IOException, SourceProblem {
    return open(path, ColumnNames.PLAIN);
  }

  /**
   * Opens a table or a folder.
   *
   * @param names of a table's columns
   * @throws SourceProblem if it cannot be read, with one sentence for a person
   */
  public static OrderSource open(Path path, ColumnNames names) throws IOException, SourceProblem {
    if (!Files.isDirectory(path)) {
      return TableOrders.of(path, names);
    }
    if (!names.isPlain()) {
      throw new SourceProblem(path + ": is a folder; columns are named or ignored in a table only");
    }
    return FolderOrders.of(path);
  }

  /** How many orders there are, roughly where they stand in a table. */
  public static long count(Path path) throws IOException {
    return Files.isDirectory(path) ? FolderOrders.count(path) : TableOrders.count(path);
  }
}
