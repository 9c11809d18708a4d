package org.midlateral.viewer.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ExportFolderTest {
  @TempDir Path folder;

  @Test
  void itIsNamedAfterTheOrderOnce() {
    Path named = folder.resolve("inv-7");
    assertThat(ExportFolder.in(folder, "inv-7").path()).isEqualTo(named);
    assertThat(ExportFolder.in(named, "inv-7").path()).isEqualTo(named);
  }

  @Test
  void whoseFilesWouldBeReplacedIsAsked() throws Exception {
    ExportFolder export = ExportFolder.in(folder, "inv-7");
    assertThat(export.question()).isEmpty();
    Files.createDirectory(export.path());
    Files.writeString(export.path().resolve("printer.cfg"), "the user's own");
    assertThat(export.question()).isEmpty();
    Files.writeString(export.path().resolve("trough.stl"), "");
    assertThat(export.question()).contains(export.path() + " holds parts. Replace its files?");
    Files.writeString(export.path().resolve("report.json"), "{\"reference\": \"inv-6\"}");
    assertThat(export.question().orElseThrow()).contains("holds an earlier export of inv-6.");
  }
}
