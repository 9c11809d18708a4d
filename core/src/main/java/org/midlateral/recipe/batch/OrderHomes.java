package org.midlateral.recipe.batch;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.midlateral.recipe.record.MakingRecord;

/** Folders of orders, wherever a user points to. */
public final class OrderHomes {
  private OrderHomes() {}

  /**
   * The folder itself where it is an order's, else all in it where any is one; superseded makings
   * are left out.
   *
   * @return in the order of their names; empty where nothing was made there
   */
  public static List<Path> in(Path folder) throws IOException {
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    if (isOrder(folder)) {
      return List.of(folder);
    }
    try (Stream<Path> all = Files.list(folder)) {
      List<Path> found =
          all.filter(Files::isDirectory)
              .filter(path -> !path.getFileName().toString().startsWith("."))
              .filter(path -> !path.endsWith(Superseded.FOLDER))
              .sorted()
              .toList();
      // A folder with orders in it is a batch's; one without a record in it is strange there.
      return found.stream().anyMatch(OrderHomes::isOrder) ? found : List.of();
    }
  }

  private static boolean isOrder(Path folder) {
    return Files.exists(folder.resolve(MakingRecord.FILE));
  }
}
