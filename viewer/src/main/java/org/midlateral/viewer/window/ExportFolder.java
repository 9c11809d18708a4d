package org.midlateral.viewer.window;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.midlateral.recipe.product.FormerParts;
import org.midlateral.viewer.draft.DraftText;

/**
 * Where an export goes: a folder named after the order, so that two fingers never share one.
 *
 * @param path of the folder, which need not exist
 */
record ExportFolder(Path path) {
  private static final String REPORT = "report.json";

  /** The one in a folder that was chosen, or that folder where it has the name already. */
  static ExportFolder in(Path chosen, String reference) {
    boolean named = chosen.getFileName() != null && chosen.endsWith(reference);
    return new ExportFolder(named ? chosen : chosen.resolve(reference));
  }

  /** What is to be asked before files of an earlier export are replaced; empty for nothing. */
  Optional<String> question() {
    if (!Files.exists(path.resolve(REPORT)) && FormerParts.in(path, List.of()).isEmpty()) {
      return Optional.empty();
    }
    String whose = reported().map(name -> "an earlier export of " + name).orElse("parts");
    return Optional.of(path + " holds " + whose + ". Replace its files?");
  }

  /** The reference in the report that lies there. */
  private Optional<String> reported() {
    try {
      String reference = DraftText.read(Files.readString(path.resolve(REPORT))).get("reference");
      return Optional.of(reference).filter(name -> !name.isEmpty());
    } catch (IOException | DraftText.NotADraft e) {
      return Optional.empty();
    }
  }
}
