package org.midlateral.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The launcher of the zip, on a Java that is none: it tells its version and what it was given. */
class LauncherTest {
  private static final Path LAUNCHER = Path.of("src", "assembly", "bin", "midlateral");

  @TempDir Path folder;

  @ParameterizedTest
  @CsvSource({"1.8.0_392, false", "11.0.21, false", "17, true", "17.0.15, true", "21-ea, true"})
  void anOldJavaIsToldInWords(String version, boolean runs) throws Exception {
    java("echo 'openjdk version \"" + version + "\" 2026-01-01' >&2");
    told(version, runs);
  }

  /** What a JDK says in its release file needs no start of it. */
  @ParameterizedTest
  @CsvSource({"11.0.21, false", "17.0.15, true"})
  void theReleaseFileIsEnough(String version, boolean runs) throws Exception {
    java("echo started >&2");
    Files.writeString(folder.resolve("release"), "JAVA_VERSION=\"" + version + "\"\n");
    told(version, runs);
  }

  @Test
  void withoutJavaItSaysSo() throws Exception {
    assertThat(run()).startsWith("4 midlateral: Java 17 or later is needed");
  }

  private void told(String version, boolean runs) throws Exception {
    if (runs) {
      assertThat(run()).startsWith("0 ").contains("-jar", "midlateral.jar check a b");
    } else {
      assertThat(run())
          .startsWith("4 midlateral: Java 17 or later is needed; ")
          .endsWith("is " + version + "\n");
    }
  }

  /** Asked for its version it does as told; else it says its arguments. */
  private void java(String version) throws IOException {
    Path java = Files.createDirectories(folder.resolve("bin")).resolve("java");
    Files.writeString(
        java, "#!/bin/sh\nif [ \"$1\" = -version ]; then " + version + "; else echo \"$@\"; fi\n");
    assertThat(java.toFile().setExecutable(true)).isTrue();
  }

  private String run() throws Exception {
    assumeTrue(
        Files.isExecutable(Path.of("/bin/sh")), "there is no shell: the launcher is left out");
    ProcessBuilder shell =
        new ProcessBuilder("/bin/sh", LAUNCHER.toString(), "check", "a", "b")
            .redirectErrorStream(true);
    shell.environment().put("JAVA_HOME", folder.toString());
    Process process = shell.start();
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    return process.waitFor() + " " + said;
  }
}
