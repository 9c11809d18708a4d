package org.midlateral.recipe.batch;

import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.midlateral.document.Digest;
import org.midlateral.document.SafeName;

/** Gives every reference a folder name of its own, and knows the references seen before. */
final class Names {
  private final LongSet references = new LongSet();
  private final LongSet folders = new LongSet();

  Names() {
    // No order's folder may stand where the batch keeps a file or folder of its own.
    folders.add(number(SafeName.folded(BatchReport.FILE)));
    folders.add(number(Superseded.FOLDER));
  }

  /** The folder's name for a reference; nothing where the reference was seen before. */
  Optional<String> folder(String reference) {
    if (!references.add(number(reference))) {
      return Optional.empty();
    }
    String plain = SafeName.of(reference);
    if (folders.add(number(SafeName.folded(plain)))) {
      return Optional.of(plain);
    }
    String apart = SafeName.apart(reference);
    while (!folders.add(number(SafeName.folded(apart)))) {
      // Another order's reference reads like this one's name.
      apart = SafeName.apart(apart);
    }
    return Optional.of(apart);
  }

  /** Whether an order of this run has a folder. */
  boolean isTaken(String folder) {
    return folders.contains(number(SafeName.folded(folder)));
  }

  private static long number(String text) {
    return Long.parseUnsignedLong(
        Digest.of(text.getBytes(StandardCharsets.UTF_8)).substring(0, 16), 16);
  }
}
