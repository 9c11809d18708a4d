package org.midlateral.measurement.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.midlateral.measurement.InputError;
import org.midlateral.measurement.key.Shown;

/**
 * Whatever a file holds, it is read or refused with errors, quickly and in little memory. A test
 * that hangs is given up.
 */
@Timeout(value = 60, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
class HostileFilesTest {

  private static final Path SAMPLES = Path.of("..", "samples");
  private static final long LONGEST_MS = 2000;

  @TempDir Path directory;

  @Test
  void isReadOrRefused() throws Exception {
    List<byte[]> hostile = HostileFiles.all(HostileFiles.valid(SAMPLES));
    assertThat(hostile.size()).isGreaterThan(2000);

    int read = 0;
    for (byte[] bytes : hostile) {
      read += isReadOrRefused(bytes, directory.resolve("hostile.yaml")) ? 1 : 0;
    }

    // Some mutations hit a comment; most must have been refused.
    assertThat(read).isBetween(hostile.size() / 50, hostile.size() / 2);
  }

  @Test
  void anyOverrideIsTakenOrRefused() {
    String plain = OrdersReadTest.PLAIN;
    for (String nasty : HostileFiles.NASTY) {
      for (String key :
          List.of("circumference.pip", "trough.wrap", "relief.bubbles", "hand", "x", "", "a.b[")) {
        for (String override : List.of(key + "=" + nasty, nasty, nasty + "=" + key)) {
          checkErrors(Orders.parse(plain, "demo.yaml", List.of(override)));
        }
      }
    }
  }

  @Test
  void littleMemoryIsEnough() throws Exception {
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xmx96m",
                "-XX:TieredStopAtLevel=1",
                "-cp",
                System.getProperty("java.class.path"),
                HostileFilesTest.class.getName(),
                directory.resolve("bomb.yaml").toString())
            .redirectErrorStream(true)
            .start();
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);

    assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
    assertThat(said).isEqualTo("all refused");
    assertThat(process.exitValue()).isZero();
  }

  /** Reads the files that ask for memory, in a process of little. */
  public static void main(String[] arguments) throws Exception {
    for (byte[] bytes : HostileFiles.bombs()) {
      if (isReadOrRefused(bytes, Path.of(arguments[0]))) {
        throw new AssertionError(
            "read: " + new String(bytes, 0, Math.min(80, bytes.length), StandardCharsets.UTF_8));
      }
    }
    System.out.print("all refused");
  }

  private static boolean isReadOrRefused(byte[] bytes, Path file) throws Exception {
    Files.write(file, bytes);
    String start =
        Shown.shown(new String(bytes, 0, Math.min(200, bytes.length), StandardCharsets.UTF_8));
    long from = System.nanoTime();
    Orders.Result result;
    try {
      result = Orders.read(file, List.of());
    } catch (RuntimeException | Error e) {
      throw new AssertionError("thrown for " + start, e);
    }
    long took = TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - from);
    assertThat(took).as(start).isLessThan(LONGEST_MS);
    checkErrors(result);
    return result.ok();
  }

  private static void checkErrors(Orders.Result result) {
    assertThat(result.ok()).isEqualTo(result.errors().isEmpty());
    assertThat(result.errors()).hasSizeLessThan(2500);
    for (InputError error : result.errors()) {
      assertThat(error.message().length()).as(error.message()).isLessThan(1000);
      assertThat(error.message().codePoints().noneMatch(Character::isISOControl))
          .as(error.message())
          .isTrue();
      assertThat(error.text()).isNotBlank();
    }
  }
}
