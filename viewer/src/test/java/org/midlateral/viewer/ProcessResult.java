package org.midlateral.viewer;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;

/**
 * A process that was started and has ended.
 *
 * @param status its exit status
 * @param output what it wrote
 */
record ProcessResult(int status, String output) {
  static ProcessResult run(Consumer<ProcessBuilder> setUp, String mainClass, String... args)
      throws IOException, InterruptedException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    // As the launcher starts it: the first compiler is enough for so short a run.
    command.add("-XX:TieredStopAtLevel=1");
    command.add("-cp");
    command.add(System.getProperty("java.class.path"));
    command.add(mainClass);
    command.addAll(List.of(args));
    ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true);
    setUp.accept(builder);
    Process process = builder.start();
    if (!process.waitFor(60, TimeUnit.SECONDS)) {
      process.destroyForcibly();
      throw new AssertionError("it did not end by itself");
    }
    return new ProcessResult(
        process.exitValue(),
        new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8));
  }

  static ProcessResult viewer(Consumer<ProcessBuilder> setUp, String... args)
      throws IOException, InterruptedException {
    return run(setUp, Viewer.class.getName(), args);
  }
}
