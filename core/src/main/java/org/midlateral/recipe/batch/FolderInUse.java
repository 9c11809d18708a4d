package org.midlateral.recipe.batch;

import java.nio.file.Path;

/** Another run is writing into a folder. */
public final class FolderInUse extends Exception {
  private static final long serialVersionUID = 1L;

  FolderInUse(Path folder) {
    super(folder + ": another batch is writing into this folder; wait for it or choose another");
  }
}
