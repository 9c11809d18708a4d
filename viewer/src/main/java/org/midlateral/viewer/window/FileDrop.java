package org.midlateral.viewer.window;

import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.TransferHandler;

/** A file dropped on the window is opened. */
final class FileDrop extends TransferHandler {
  private static final long serialVersionUID = 1;
  private final transient Consumer<Path> open;

  FileDrop(Consumer<Path> open) {
    this.open = open;
  }

  @Override
  public boolean canImport(TransferSupport what) {
    return what.isDataFlavorSupported(DataFlavor.javaFileListFlavor);
  }

  @Override
  public boolean importData(TransferSupport what) {
    try {
      Object files = what.getTransferable().getTransferData(DataFlavor.javaFileListFlavor);
      if (files instanceof List<?> list && list.size() == 1 && list.get(0) instanceof File file) {
        open.accept(file.toPath());
        return true;
      }
      return false;
    } catch (UnsupportedFlavorException | IOException e) {
      return false;
    }
  }
}
