package org.midlateral.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The main job by the command line, in process. */
class MakeCommandTest {
  private static final String SAMPLE = Path.of("..", "samples", "slim-little.yaml").toString();
  private static final ObjectMapper JSON = new ObjectMapper();

  @TempDir Path directory;

  private Path out() {
    return directory.resolve("made");
  }

  private Run make(String... more) {
    String[] plain = {"make", SAMPLE, "--out", out().toString()};
    return Run.of(Stream.concat(Stream.of(plain), Stream.of(more)).toArray(String[]::new));
  }

  private static Map<String, byte[]> files(Path folder) throws IOException {
    Map<String, byte[]> files = new TreeMap<>();
    try (Stream<Path> all = Files.list(folder)) {
      for (Path file : all.toList()) {
        files.put(file.getFileName().toString(), Files.readAllBytes(file));
      }
    }
    return files;
  }

  @Test
  void writesPartsAndReportAndSaysSo() throws Exception {
    Run run = make();

    assertThat(run.status()).isZero();
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).endsWith(out() + ": written\n");
    assertThat(files(out())).containsKeys("trough.stl", "orthosis.3mf", "report.json");
    JsonNode report = JSON.readTree(out().resolve("report.json").toFile());
    assertThat(report.get("ok").booleanValue()).isTrue();
    assertThat(report.get("reference").textValue()).isEqualTo("demo-little-slim");
    assertThat(report.at("/parts/trough/watertight").booleanValue()).isTrue();
    assertThat(report.at("/timing/geometryMs").doubleValue()).isPositive();
    // 84 bytes and 50 a triangle.
    assertThat(Files.size(out().resolve("trough.stl")))
        .isEqualTo(84 + 50L * report.at("/parts/trough/triangles").intValue());
  }

  /** Arrows, ticks and scripts that the typeface lacks, and the longest note there may be. */
  @Test
  void aNoteOfAnySignsIsMade() throws Exception {
    String signs = "\u2192 \u2713 \ud83d\ude00 שלום مرحبا 中文 ไทย \ud835\udd38\u0301 ";
    String note = signs + "中".repeat(120 - signs.length());

    Run run = make("--set", "note=" + note);

    assertThat(run.err()).doesNotContain("defect");
    assertThat(run.status()).isZero();
    assertThat(JSON.readTree(out().resolve("report.json").toFile()).get("note").textValue())
        .isEqualTo(note);
  }

  /** Line for line, but for the last, which tells what was done. */
  @Test
  void checkSaysWhatMakeSays() {
    List<String> made = make("--set", "closure.kind=strap").err().lines().toList();
    List<String> checked =
        Run.of("check", SAMPLE, "--set", "closure.kind=strap").err().lines().toList();

    assertThat(made).hasSizeGreaterThan(1);
    assertThat(checked.subList(0, checked.size() - 1)).isEqualTo(made.subList(0, made.size() - 1));
  }

  @Test
  void existingFilesAreLeftAloneWithoutForce() throws Exception {
    Files.createDirectories(out());
    Files.writeString(out().resolve("report.json"), "mine");

    Run refused = make();

    assertThat(refused.status()).isEqualTo(2);
    assertThat(refused.err()).contains("report.json", "--force");
    assertThat(files(out())).containsOnlyKeys("report.json");
    assertThat(Files.readString(out().resolve("report.json"))).isEqualTo("mine");

    assertThat(make("--force", "--parts-only").status()).isZero();
    assertThat(JSON.readTree(out().resolve("report.json").toFile()).get("ok").booleanValue())
        .isTrue();
  }

  /** A shell that was made for another trough would pass for this one's. */
  @Test
  void partsOfAnEarlierRunAreTold() throws Exception {
    make("--format", "stl", "--parts-only", "--set", "dorsal-shell.make=yes");
    Files.writeString(out().resolve("trough.gcode"), "mine");

    Run alone =
        make(
            "--format",
            "stl",
            "--parts-only",
            "--force",
            "--quiet",
            "--set",
            "dorsal-shell.make=no");

    assertThat(alone.status()).isZero();
    assertThat(alone.err())
        .isEqualTo(
            "caution: "
                + out().resolve("dorsal-shell.stl")
                + " is left from another run; delete it or move it away.\n");
    assertThat(out().resolve("dorsal-shell.stl")).exists();
    Run refused =
        make(
            "--force",
            "--set",
            "length.palmar-crease-to-web=12",
            "--set",
            "trough.proximal-margin=10");
    assertThat(refused.status()).isEqualTo(3);
    assertThat(refused.err())
        .contains(
            "trough.stl is left from another run", "dorsal-shell.stl is left from another run");
    assertThat(make("--format", "stl", "--parts-only", "--force").err())
        .doesNotContain("left from another run");
  }

  /** G12: same input, same bytes. */
  @Test
  void reproducibleRunsGiveTheSameBytes() throws Exception {
    assertThat(make("--reproducible").status()).isZero();
    Map<String, byte[]> first = files(out());
    assertThat(make("--reproducible", "--force").status()).isZero();
    Map<String, byte[]> second = files(out());

    assertThat(second.keySet()).isEqualTo(first.keySet());
    first.forEach((name, bytes) -> assertThat(second.get(name)).as(name).isEqualTo(bytes));
    assertThat(JSON.readTree(first.get("report.json")).has("timing")).isFalse();
  }

  @Test
  void jsonIsTheReportAndAllThereIs() throws Exception {
    Run run = make("--json", "--reproducible");

    assertThat(run.status()).isZero();
    assertThat(run.err()).isEmpty();
    assertThat(run.out()).isEqualTo(Files.readString(out().resolve("report.json")));
    assertThat(JSON.readTree(run.out()).get("reference").textValue()).isEqualTo("demo-little-slim");
  }

  @Test
  void quietSaysNothing() {
    assertThat(make("--quiet", "--set", "trough.wrap=0.44")).isEqualTo(new Run(0, "", ""));
  }

  @Test
  void setGoesBeforeTheFile() throws Exception {
    String[] sets = {"--set", "circumference.pip=50", "--set=trough.wall=2"};
    assertThat(make(sets[0], sets[1], sets[2], "--parts-only").status()).isZero();
    JsonNode report = JSON.readTree(out().resolve("report.json").toFile());

    assertThat(report.at("/levels/1/level").textValue()).isEqualTo("pip");
    assertThat(report.at("/levels/1/circumference").doubleValue()).isEqualTo(50);
    assertThat(report.at("/parts/trough/minWall").doubleValue()).isBetween(1.94, 2.0);
  }

  @Test
  void wrongInputEndsWith2AndWritesNothing() {
    Run run = make("--set", "circumference.pip=500");

    assertThat(run.status()).isEqualTo(2);
    assertThat(run.err()).contains("circumference.pip", "500");
    assertThat(out()).doesNotExist();
    assertThat(Run.of("make", SAMPLE).status()).isEqualTo(2);
    assertThat(Run.of("make", "nothing.yaml", "--out", out().toString()).status()).isEqualTo(2);
  }

  @Test
  void aDesignWithoutRoomEndsWith3AndWritesNoPart() throws Exception {
    String[] without = {"--set", "trough.proximal-margin=15", "--set", "trough.web-clearance=1"};
    Run run = make(without);

    assertThat(run.status()).isEqualTo(3);
    assertThat(run.err()).contains("trough.proximal-margin", "no part is written");
    assertThat(out()).doesNotExist();

    Run json = make("--json", without[0], without[1], without[2], without[3]);
    JsonNode report = JSON.readTree(json.out());
    assertThat(json.status()).isEqualTo(3);
    assertThat(report.get("ok").booleanValue()).isFalse();
    // Cautions about the values come first; the refusal ends the list.
    JsonNode last = report.get("findings").get(report.get("findings").size() - 1);
    assertThat(last.get("level").textValue()).isEqualTo("refusal");
    assertThat(last.get("code").textValue()).isEqualTo("tongue-short");
  }

  @Test
  void aFolderThatCannotBeWrittenEndsWith4() throws Exception {
    Path closed = Files.createDirectory(directory.resolve("closed"));
    Assumptions.assumeTrue(Files.getFileStore(closed).supportsFileAttributeView("posix"));
    Files.setPosixFilePermissions(closed, PosixFilePermissions.fromString("r-xr-xr-x"));
    Assumptions.assumeFalse(Files.isWritable(closed), "runs with all rights");

    assertThat(Run.of("make", SAMPLE, "--out", closed.toString()).status()).isEqualTo(4);
  }

  @Test
  void aFileInTheFoldersPlaceIsNotTouched() throws Exception {
    Files.writeString(out(), "mine");
    Run run = make("--quiet");

    assertThat(run.status()).isEqualTo(2);
    assertThat(run.err()).hasLineCount(1).contains("is no folder, and files are to be written");
    assertThat(Files.readString(out())).isEqualTo("mine");
  }
}
