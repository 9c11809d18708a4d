package org.midlateral.recipe.product;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.midlateral.document.bench.BenchDocuments;
import org.midlateral.document.format.SolidFormat;
import org.midlateral.shell.DorsalShell;
import org.midlateral.trough.Trough;

/**
 * Parts, and pages of a pattern, of an earlier making that no new ones replace: beside those of
 * another finger they would pass for its own.
 */
public final class FormerParts {
  /** More than a pattern has. */
  private static final int MOST_PAGES = 12;

  private FormerParts() {}

  /**
   * Files in a folder that have a part's name, or a further page's. What else lies there, as a
   * printer's file, is the user's own.
   *
   * @param folder need not exist
   * @param made names of the files just written, or about to be
   */
  public static List<Path> in(Path folder, Collection<String> made) {
    List<Path> former = new ArrayList<>();
    for (SolidFormat format : SolidFormat.values()) {
      for (String part : List.of(Trough.NAME, DorsalShell.NAME)) {
        Path file = folder.resolve(format.fileOf(part));
        boolean other = !made.contains(format.fileOf(part)) && !former.contains(file);
        if (other && Files.isRegularFile(file)) {
          former.add(file);
        }
      }
    }
    for (int page = 2; page <= MOST_PAGES && made.contains(BenchDocuments.svg(1)); page++) {
      Path file = folder.resolve(BenchDocuments.svg(page));
      if (!made.contains(BenchDocuments.svg(page)) && Files.isRegularFile(file)) {
        former.add(file);
      }
    }
    return former;
  }
}
