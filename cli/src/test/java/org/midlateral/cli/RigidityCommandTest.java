package org.midlateral.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RigidityCommandTest {

  @TempDir Path directory;
  private String file;

  @BeforeEach
  void writeTheTemplate() throws Exception {
    Path path = directory.resolve("demo.yaml");
    Files.writeString(path, Run.of("template").out());
    file = path.toString();
  }

  @Test
  void printsTablesWithUnitsAndTheCaution() {
    Run run = Run.of("rigidity", file, "--wrap", "0.25,0.5", "--samples", "4", "--seed", "3");

    assertThat(run.status()).isZero();
    assertThat(run.out())
        .contains("N·mm²")
        .contains("Estimate, for comparison; does not clear a piece for use.")
        .contains("Ranges over 4 samples (seed 3)")
        .startsWith("Held ")
        .contains("the wrap needs", "In the morning", "What to change: ")
        .containsPattern("(?m)^ +0.25 +\\d+\\.\\d +\\d+\\.\\d +\\d+ +0.0\\d\\d ")
        .doesNotContain("closed", "NaN");
    assertThat(run.err()).contains("kPa").doesNotContain("\tat ");
  }

  /** This design's row first, then those that are pressed least, each within the angle. */
  @Test
  void listsDesignsThatHoldTheJoint() throws Exception {
    Run text = Run.of("rigidity", file, "--wrap=0.5", "--within=4");
    Run json = Run.of("rigidity", file, "--wrap=0.5", "--within=4", "--json");
    JsonNode better = new ObjectMapper().readTree(json.out()).at("/advice/better");

    assertThat(text.out()).contains("within 4 degrees").contains("this design");
    assertThat(better).hasSizeBetween(2, 5);
    double before = 0;
    for (JsonNode row : better) {
      assertThat(row.get("angleHeld").asDouble()).isLessThanOrEqualTo(4.0001);
      assertThat(row.get("peakPressure").asDouble()).isGreaterThanOrEqualTo(before);
      before = row.get("peakPressure").asDouble();
    }
  }

  /** A single draw with so bad a tape is of no finger; the rest is told all the same. */
  @Test
  void withoutASampleTheBandsAreLeftOut() {
    Run run = Run.of("rigidity", file, "--wrap=0.5", "--samples=1", "--seed=6", "--tape-error=10");

    assertThat(run.status()).isZero();
    assertThat(run.err()).contains("note: The ranges are left out: of 1 sets of readings");
    assertThat(run.out()).contains("N·mm²").doesNotContain("Bands of");
  }

  @Test
  void printsJsonAndNothingElse() throws Exception {
    Run run = Run.of("rigidity", file, "--json", "--wrap", "0.35,1");
    JsonNode report = new ObjectMapper().readTree(run.out());

    assertThat(run.status()).isZero();
    assertThat(run.err()).isEmpty();
    assertThat(report.at("/ok").asBoolean()).isTrue();
    assertThat(report.at("/rigidity/wraps/1/wrap").asDouble()).isEqualTo(1);
    assertThat(report.at("/rigidity/stations")).hasSizeGreaterThan(50);
  }

  @Test
  void writesThePictureOnceUnlessForced() throws Exception {
    Path picture = directory.resolve("rigidity.svg");
    String[] arguments = {"rigidity", file, "--wrap", "0.5", "--out", picture.toString()};

    assertThat(Run.of(arguments).status()).isZero();
    assertThat(Files.readString(picture)).contains("<svg");
    Run again = Run.of(arguments);
    assertThat(again.status()).isEqualTo(2);
    assertThat(again.err()).contains("--force");
  }

  @ParameterizedTest
  @CsvSource({
    "--wrap,0.9",
    "--wrap,NaN",
    "--samples,-1",
    "--tape-error,-2",
    "--wrap,half",
    "--within,40"
  })
  void wrongOptionsEndWith2(String option, String value) {
    Run run = Run.of("rigidity", file, option + "=" + value);

    assertThat(run.status()).isEqualTo(2);
    assertThat(run.err()).contains(option);
    assertThat(run.out()).isEmpty();
  }

  @Test
  void aRefusedDesignEndsWith3() {
    Run run =
        Run.of(
            "rigidity",
            file,
            "--set",
            "length.web-to-pip=8",
            "--set",
            "length.palmar-crease-to-web=5",
            "--set",
            "trough.web-clearance=8",
            "--set",
            "trough.proximal-margin=8",
            "--set",
            "trough.flare=0",
            "--set",
            "relief.make=no",
            "--set",
            "dorsal-shell.make=no");

    assertThat(run.status()).isEqualTo(3);
    assertThat(run.err()).contains("refusal: The trough is too short: past the closure");
    assertThat(run.out()).isEmpty();
  }
}
