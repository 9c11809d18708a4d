package org.midlateral.viewer;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.midlateral.viewer.window.OnDisplay;

/** How the program starts on a display, in a process of its own. */
@ExtendWith(OnDisplay.class)
class StartOnDisplayTest {

  @Test
  void withoutOpenGlItSaysSo() throws Exception {
    ProcessResult result =
        ProcessResult.run(
            builder -> {
              builder.environment().put("MESA_GL_VERSION_OVERRIDE", "2.1");
              builder.environment().put("LIBGL_ALWAYS_SOFTWARE", "1");
            },
            StartAndRead.class.getName());
    assertThat(result.status()).isEqualTo(4);
    assertThat(result.output())
        .contains("midlateral: the viewer cannot draw: OpenGL")
        .contains("dialog: the viewer cannot draw: OpenGL")
        .doesNotContain("\tat ");
  }

  @Test
  void aFileThatIsNoneIsRefusedBeforeTheWindowOpens(@TempDir Path folder) throws Exception {
    Path file = Files.writeString(folder.resolve("a.yaml"), "just words");
    ProcessResult result =
        ProcessResult.run(builder -> {}, StartAndRead.class.getName(), file.toString());
    assertThat(result.status()).isEqualTo(2);
    assertThat(result.output())
        .contains("midlateral: " + file + " holds no keys")
        .contains("dialog: " + file + " holds no keys");
  }

  /** Opened, left alone and closed it has nothing to say, on whatever stream. */
  @Test
  void aStartIsSilent(@TempDir Path folder) throws Exception {
    ProcessResult result =
        ProcessResult.run(
            builder -> {
              builder.environment().put("XDG_CONFIG_HOME", folder.toString());
              builder.environment().remove("XDG_RUNTIME_DIR");
            },
            StartAndClose.class.getName());
    assertThat(result.output()).isEmpty();
    assertThat(result.status()).isZero();
  }

  @Test
  void atTwiceTheScaleThePictureIsDrawnInTwiceThePixels(@TempDir Path folder) throws Exception {
    ProcessResult result =
        ProcessResult.run(
            builder -> builder.command().add(1, "-Dsun.java2d.uiScale=2"),
            "org.midlateral.viewer.window.ScaledWindow",
            folder.resolve("twice.png").toString());
    assertThat(result.status()).as(result.output()).isZero();
    String[] words =
        result
            .output()
            .lines()
            .filter(l -> l.startsWith("view "))
            .findFirst()
            .orElseThrow()
            .split(" ");
    assertThat(Integer.parseInt(words[3])).isEqualTo(2 * Integer.parseInt(words[1]));
  }
}
