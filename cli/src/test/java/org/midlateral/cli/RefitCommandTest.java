package org.midlateral.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The comparison with a later finger by the command line, in process. */
class RefitCommandTest {
  private static final Path SAMPLE = Path.of("..", "samples", "slim-little.yaml");
  private static final ObjectMapper JSON = new ObjectMapper();

  @TempDir Path directory;

  private Path later(String from, String to) throws IOException {
    Path file = directory.resolve("later.yaml");
    String text = Files.readString(SAMPLE);
    assertThat(text).contains(from);
    return Files.writeString(file, text.replace(from, to));
  }

  private static Run refit(Path against, String... more) {
    String[] plain = {
      "refit", SAMPLE.toString(), "--against", against.toString(), "--set", "print.edge-length=1.2"
    };
    return Run.of(
        java.util.stream.Stream.concat(
                java.util.Arrays.stream(plain), java.util.Arrays.stream(more))
            .toArray(String[]::new));
  }

  @Test
  void tablesBothPiecesByLevelWithTheCaution() {
    Run run = refit(SAMPLE);

    assertThat(run.status()).isZero();
    assertThat(run.out())
        .contains("trough: fits.")
        .contains("dorsal-shell: fits.")
        .contains("least mm")
        .contains("pip ")
        .contains("does not clear a piece for use");
    assertThat(run.out().lines()).noneMatch(line -> line.contains("NaN"));
  }

  @Test
  void theReportSaysTightAndWhere() throws Exception {
    Run run = refit(later("pip: 48", "pip: 53"), "--json");
    JsonNode report = JSON.readTree(run.out());
    JsonNode trough = report.at("/pieces/0");

    assertThat(run.status()).isZero();
    assertThat(report.get("reference").textValue()).isEqualTo("demo-little-slim");
    assertThat(trough.get("piece").textValue()).isEqualTo("trough");
    assertThat(trough.get("verdict").textValue()).isEqualToIgnoringCase("tight");
    assertThat(trough.get("min").doubleValue()).isNegative();
    assertThat(trough.get("pressedShare").doubleValue()).isBetween(0.02, 1.0);
    assertThat(trough.get("minStation").doubleValue()).isCloseTo(20.5, within(5.0));
    assertThat(trough.get("levels")).hasSizeGreaterThanOrEqualTo(3);
  }

  @Test
  void anotherFingerIsRemarkedOn() throws Exception {
    Run run = refit(later("digit: little", "digit: ring"));

    assertThat(run.status()).isZero();
    assertThat(run.err()).contains("different fingers");
  }

  @Test
  void aLaterFileThatIsWrongIsRefusedByItsName() throws Exception {
    Path later = later("pip: 48", "pip: 480");
    Run run = refit(later);

    assertThat(run.status()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).contains(later.toString()).contains("circumference.pip");
  }

  @Test
  void aFileThatIsMissingIsSaid() {
    Run run = refit(directory.resolve("none.yaml"), "--json");

    assertThat(run.status()).isEqualTo(2);
    assertThat(run.out()).contains("none.yaml");
  }

  @Test
  void withoutALaterFileThereIsNothingToCompare() {
    Run run = Run.of("refit", SAMPLE.toString());

    assertThat(run.status()).isEqualTo(2);
    assertThat(run.err()).contains("--against");
  }
}
