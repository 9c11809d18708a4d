package org.midlateral.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

/**
 * An outside program that judges our files; without it the test is skipped, save where CI is set.
 */
public final class Program {
  private Program() {}

  /** Runs a program and returns what it says. */
  public static String run(String... command) throws IOException, InterruptedException {
    boolean there =
        Stream.of(System.getenv("PATH").split(File.pathSeparator))
            .anyMatch(folder -> Files.isExecutable(Path.of(folder, command[0])));
    if (System.getenv("CI") == null) {
      assumeTrue(there, command[0] + " is not installed: this outside check is left out");
    }
    assertThat(there).as("%s is installed", command[0]).isTrue();
    Path said = Files.createTempFile("said", ".txt");
    List<String> words = Arrays.asList(command);
    Process process =
        new ProcessBuilder(words).redirectErrorStream(true).redirectOutput(said.toFile()).start();
    int status = process.waitFor();
    String text = Files.readString(said, StandardCharsets.UTF_8);
    Files.delete(said);
    assertThat(status).as(text).isZero();
    return text;
  }

  /** Demands a module of node's, under the same rule as a program. */
  public static void requireModule(String name) throws IOException, InterruptedException {
    boolean there;
    try {
      there = new ProcessBuilder("node", "-e", "require('" + name + "')").start().waitFor() == 0;
    } catch (IOException e) {
      there = false;
    }
    if (System.getenv("CI") == null) {
      assumeTrue(there, name + " is not installed: this outside check is left out");
    }
    assertThat(there).as("%s is installed", name).isTrue();
  }
}
