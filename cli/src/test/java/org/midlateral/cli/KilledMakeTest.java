package org.midlateral.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.midlateral.LongRun;

/**
 * Kills {@code make} at random moments: whatever stands under a final name is whole, and what was
 * left behind is gone after the next run.
 */
class KilledMakeTest {
  private static final int KILLS = LongRun.count(4, 50);
  private static final Path SAMPLE = Path.of("..", "samples", "slim-little.yaml");

  private static final List<String> PARTS_ONLY = List.of("--parts-only");

  @TempDir Path directory;

  @Test
  @Tag(LongRun.TAG)
  void noPartialFileEverStandsUnderAFinalName() throws Exception {
    Path out = Files.createDirectory(directory.resolve("made"));
    long documents = whole(out, List.of());
    long parts = whole(out, PARTS_ONLY);
    Random random = new Random(4711);
    int killed = 0;
    int leftovers = 0;
    int runs = 0;
    while (killed < KILLS && runs < 3 * KILLS) {
      if (runs++ % 2 == 0) {
        // Half of the runs find an empty folder, half replace what is there.
        empty(out);
      }
      // Every other pair of runs makes the parts alone: less to compute before the writing.
      boolean quick = runs / 2 % 2 == 0;
      long whole = quick ? parts : documents;
      long start = System.nanoTime();
      Process process = start(out, quick ? PARTS_ONLY : List.of());
      // Most kills fall where the files are written: toward the end.
      double moment = runs % 5 == 0 ? random.nextDouble() : 0.5 + 0.5 * random.nextDouble();
      if (!process.waitFor((long) (whole * moment), TimeUnit.NANOSECONDS)) {
        process.destroyForcibly().waitFor();
        killed++;
      } else if (quick) {
        // The machine has less to do than it had: the next one is killed earlier.
        parts = System.nanoTime() - start;
      } else {
        documents = System.nanoTime() - start;
      }
      leftovers += checked(out);
    }
    assertThat(start(out, List.of()).waitFor()).isZero();

    System.out.printf("make killed %d times in %d runs, %d leftovers%n", killed, runs, leftovers);
    assertThat(killed).isEqualTo(KILLS);
    assertThat(checked(out)).as("leftovers after a whole run").isZero();
  }

  /** Time of a whole run (ns). */
  private static long whole(Path out, List<String> options) throws Exception {
    long start = System.nanoTime();
    assertThat(start(out, options).waitFor()).isZero();
    return System.nanoTime() - start;
  }

  private static Process start(Path out, List<String> options) throws IOException {
    List<String> command = new ArrayList<>();
    Collections.addAll(
        command,
        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
        "-XX:TieredStopAtLevel=1",
        "-XX:+UseSerialGC",
        "-cp",
        System.getProperty("java.class.path"),
        Main.class.getName(),
        "make",
        SAMPLE.toString(),
        "--out",
        out.toString(),
        "--force",
        "--quiet");
    command.addAll(options);
    return new ProcessBuilder(command)
        .redirectErrorStream(true)
        .redirectOutput(ProcessBuilder.Redirect.DISCARD)
        .start();
  }

  /** Checks that every file under a final name is whole; gives the number of the others. */
  private static int checked(Path out) throws IOException {
    int leftovers = 0;
    for (Path file : list(out)) {
      String name = file.getFileName().toString();
      if (name.startsWith(".")) {
        leftovers++;
      } else if (name.endsWith(".stl")) {
        ByteBuffer bytes = ByteBuffer.wrap(Files.readAllBytes(file)).order(ByteOrder.LITTLE_ENDIAN);
        assertThat(bytes.capacity()).isEqualTo(84 + 50 * bytes.getInt(80));
      } else if (name.endsWith(".3mf")) {
        try (ZipFile zip = new ZipFile(file.toFile())) {
          assertThat(zip.getEntry("3D/3dmodel.model")).isNotNull();
        }
      } else if (name.endsWith(".json")) {
        JsonNode json = new ObjectMapper().readTree(file.toFile());
        // The record beside the report says nothing of ok.
        assertThat(name.equals("record.json") ? json.has("files") : json.get("ok").booleanValue())
            .isTrue();
      } else {
        assertThat(Files.size(file)).as(name).isPositive();
      }
    }
    return leftovers;
  }

  private static void empty(Path out) throws IOException {
    for (Path file : list(out)) {
      if (!file.getFileName().toString().startsWith(".")) {
        Files.delete(file);
      }
    }
  }

  private static List<Path> list(Path folder) throws IOException {
    try (Stream<Path> all = Files.list(folder)) {
      return all.toList();
    }
  }
}
