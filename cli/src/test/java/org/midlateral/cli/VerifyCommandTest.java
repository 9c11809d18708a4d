package org.midlateral.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What was made is known again byte for byte. */
class VerifyCommandTest {
  private static final String SAMPLE = Path.of("..", "samples", "slim-little.yaml").toString();

  @TempDir Path folder;

  private Path made(String name) {
    Path out = folder.resolve(name);
    Run run =
        Run.of(
            "make",
            SAMPLE,
            "--out",
            out.toString(),
            "--parts-only",
            "--reproducible",
            "--set",
            "print.edge-length=1.2");
    assertThat(run.status()).as(run.err()).isZero();
    return out;
  }

  @Test
  void aFlippedByteEndsWith3AndIsNamed() throws IOException {
    Path out = made("a");
    Run whole = Run.of("verify", out.toString());
    assertThat(whole.status()).as(whole.err()).isZero();
    assertThat(whole.out()).contains("trough.stl: as made", "record.json: as made");
    byte[] bytes = Files.readAllBytes(out.resolve("trough.stl"));
    bytes[bytes.length / 2] ^= 1;
    Files.write(out.resolve("trough.stl"), bytes);
    Files.delete(out.resolve("report.json"));
    Files.writeString(out.resolve("other.stl"), "");
    Run run = Run.of("verify", out.toString(), "--quiet");
    assertThat(run.status()).isEqualTo(3);
    assertThat(run.out().lines().map(line -> line.substring(line.lastIndexOf('/') + 1)))
        .containsExactly("other.stl: strange", "report.json: missing", "trough.stl: changed");
    JsonNode json = new ObjectMapper().readTree(Run.of("verify", out.toString(), "--json").out());
    assertThat(json.get("ok").asBoolean()).isFalse();
    assertThat(json.at("/orders/0/files/trough.stl").asText()).isEqualTo("changed");
  }

  @Test
  void aFolderOfOrdersIsLookedAtWhole() throws IOException {
    made("a");
    Path strange = Files.createDirectory(folder.resolve("b"));
    Run run = Run.of("verify", folder.toString());
    assertThat(run.status()).isEqualTo(3);
    assertThat(run.out()).contains(strange + ": no complete record");
    Files.delete(strange);
    assertThat(Run.of("verify", folder.toString()).status()).isZero();
  }

  @Test
  void aFolderWithoutARecordIsNoneOfOurs() {
    Run run = Run.of("verify", folder.toString());
    assertThat(run.status()).isEqualTo(2);
    assertThat(run.err()).contains(folder.toString(), "record.json");
    assertThat(Run.of("verify", folder.resolve("none").toString()).status()).isEqualTo(2);
  }

  /** What is there already is told before anything is computed. */
  @Test
  void makeTellsAtOnceWhatIsThereAlready() throws IOException {
    Files.writeString(folder.resolve("record.json"), "mine");
    Run run = Run.of("make", SAMPLE, "--out", folder.toString(), "--set", "trough.wrap=0.5");
    assertThat(run.status()).isEqualTo(2);
    assertThat(run.err()).contains("record.json exists already").doesNotContain("caution:");
  }
}
