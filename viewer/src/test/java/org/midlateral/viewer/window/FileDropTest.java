package org.midlateral.viewer.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.StringSelection;
import java.awt.datatransfer.Transferable;
import java.io.File;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JPanel;
import javax.swing.TransferHandler.TransferSupport;
import org.junit.jupiter.api.Test;

class FileDropTest {
  private record Files(List<File> files) implements Transferable {
    @Override
    public DataFlavor[] getTransferDataFlavors() {
      return new DataFlavor[] {DataFlavor.javaFileListFlavor};
    }

    @Override
    public boolean isDataFlavorSupported(DataFlavor flavor) {
      return flavor.equals(DataFlavor.javaFileListFlavor);
    }

    @Override
    public Object getTransferData(DataFlavor flavor) {
      return files;
    }
  }

  @Test
  void oneFileIsOpenedAndNothingElseIs() {
    List<Path> opened = new ArrayList<>();
    FileDrop drop = new FileDrop(opened::add);
    TransferSupport one = new TransferSupport(new JPanel(), new Files(List.of(new File("a.yaml"))));
    assertThat(drop.canImport(one)).isTrue();
    assertThat(drop.importData(one)).isTrue();
    assertThat(opened).containsExactly(Path.of("a.yaml"));
    Files two = new Files(List.of(new File("b"), new File("c")));
    assertThat(drop.importData(new TransferSupport(new JPanel(), two))).isFalse();
    StringSelection words = new StringSelection("a.yaml");
    assertThat(drop.canImport(new TransferSupport(new JPanel(), words))).isFalse();
    assertThat(opened).hasSize(1);
  }
}
