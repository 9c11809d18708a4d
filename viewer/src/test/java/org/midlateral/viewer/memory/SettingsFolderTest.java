package org.midlateral.viewer.memory;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Rectangle;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.midlateral.viewer.draft.Draft;

/** What is remembered is read again; what is damaged is as if it had never been. */
class SettingsFolderTest {
  @TempDir Path folder;

  @Test
  void whatIsWrittenIsReadAgain() {
    SettingsFolder kept = new SettingsFolder(folder.resolve("new").resolve("one"));
    assertThat(kept.read()).isEqualTo(Settings.none());
    Settings settings =
        Settings.none()
            .with(folder.resolve("a = b.yaml"))
            .with(folder.resolve("ü.yaml"))
            .withDark(true)
            .withWindow(new Rectangle(-5, 7, 1366, 768));
    kept.write(settings);
    assertThat(kept.read()).isEqualTo(settings);
    assertThat(kept.read().folder()).contains(folder.toAbsolutePath());
  }

  @Test
  void theNewestOfRecentFilesComesFirstAndOnce() {
    Settings settings = Settings.none();
    for (int i = 0; i < 12; i++) {
      settings = settings.with(folder.resolve(i + ".yaml"));
    }
    settings = settings.with(folder.resolve("7.yaml"));
    assertThat(settings.recent()).hasSize(8).doesNotHaveDuplicates();
    assertThat(settings.recent().get(0)).isEqualTo(folder.resolve("7.yaml").toAbsolutePath());
  }

  @Test
  void whatIsDamagedIsAsIfItHadNeverBeen() throws Exception {
    Path file = folder.resolve("viewer.yaml");
    Files.writeString(file, "window: 1 2 x 4\nrecent: [unclosed");
    assertThat(new SettingsFolder(folder).read()).isEqualTo(Settings.none());
    Files.writeString(file, "window: 1 2 3\nfolder:\ndark: perhaps");
    assertThat(new SettingsFolder(folder).read()).isEqualTo(Settings.none());
  }

  /** XDG base directory specification, version 0.8: $XDG_CONFIG_HOME, else ~/.config. */
  @Test
  void eachSystemHasItsPlace() {
    Path home = Path.of("/home/x");
    assertThat(SettingsFolder.of("Linux", Map.of(), home).path())
        .isEqualTo(Path.of("/home/x/.config/midlateral"));
    assertThat(SettingsFolder.of("Linux", Map.of("XDG_CONFIG_HOME", "/etc/x"), home).path())
        .isEqualTo(Path.of("/etc/x/midlateral"));
    assertThat(SettingsFolder.of("Linux", Map.of("XDG_CONFIG_HOME", "not/whole"), home).path())
        .isEqualTo(Path.of("/home/x/.config/midlateral"));
    assertThat(SettingsFolder.of("Windows 11", Map.of("APPDATA", "/roaming"), home).path())
        .isEqualTo(Path.of("/roaming/midlateral"));
  }

  @Test
  void whatAKilledProcessLeftIsFoundAndWhatALivingOneKeepsIsNot() throws Exception {
    SettingsFolder kept = new SettingsFolder(folder);
    Draft draft = Draft.fresh("hand").with("reference", "inv-7").with("circumference.pip", "6?");
    Unsaved own = Unsaved.ofThisProcess(kept);
    own.keep(draft, Optional.empty());
    assertThat(Unsaved.abandoned(kept)).isEmpty();

    Process ended = new ProcessBuilder("java", "-version").start();
    ended.waitFor();
    Unsaved other = new Unsaved(kept, ended.pid());
    other.keep(draft, Optional.of(folder.resolve("of.yaml")));
    Unsaved.Left left = Unsaved.abandoned(kept).orElseThrow().read().orElseThrow();
    assertThat(left.draft()).isEqualTo(draft);
    assertThat(left.of()).contains(folder.resolve("of.yaml").toAbsolutePath());
    other.clear();
    assertThat(Unsaved.abandoned(kept)).isEmpty();
    own.clear();
    assertThat(folder).isEmptyDirectory();
  }
}
