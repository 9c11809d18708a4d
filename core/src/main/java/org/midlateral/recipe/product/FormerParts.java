package org.midlateral.recipe.product;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.midlateral.document.format.SolidFormat;
import org.midlateral.shell.DorsalShell;
import org.midlateral.trough.Trough;

/**
 * Parts of an earlier making that no new ones replace: beside those of another finger they would
 * pass for its own.
 */
public final class FormerParts {
  private FormerParts() {}

  /**
   * Files in a folder that have a part's name. What else lies there, as a printer's file, is the
   * user's own.
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
    return former;
  }
}
