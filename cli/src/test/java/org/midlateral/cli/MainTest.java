package org.midlateral.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.midlateral.LongRun;
import org.midlateral.measurement.file.Orders;

class MainTest {
  /** Hostile files that can be read and are checked all the same. */
  private static final int READABLE = LongRun.count(4, 20);

  @TempDir Path directory;
  private Path file;

  @BeforeEach
  void writeTheTemplate() throws Exception {
    file = directory.resolve("demo.yaml");
    Files.writeString(file, Run.of("template").out());
  }

  @ParameterizedTest
  @ValueSource(strings = {"mm", "cm", "in", "IN"})
  void theTemplatePassesTheCheck(String unit) throws Exception {
    Run template = Run.of("template", "--unit", unit);
    Files.writeString(file, template.out());

    Run check = Run.of("check", file.toString());

    assertThat(template.status()).isZero();
    assertThat(template.err()).isEmpty();
    assertThat(check.status()).isZero();
    assertThat(check.out()).isEmpty();
    // Of the load there is something to say, of the measurements nothing.
    assertThat(check.err())
        .contains(" kPa press on 1 cm²", file + ": in order")
        .doesNotContain("unusual", "looks ", "refus");
  }

  @ParameterizedTest
  @ValueSource(strings = {"mm", "in"})
  void theMeasuringFormIsWrittenWhole(String unit) throws Exception {
    Path form = file.resolveSibling("form.pdf");
    String[] line = {"template", "--sheet", "--unit", unit, "--out", form.toString()};

    assertThat(Run.of(line)).isEqualTo(new Run(0, "", ""));
    assertThat(Files.readAllBytes(form)).startsWith('%', 'P', 'D', 'F');
    assertThat(Run.of(line).status()).isEqualTo(2);
    assertThat(Run.of("template", "--sheet").status()).isEqualTo(2);
  }

  /** A name with a character that ends names in every system stands for one the locale lacks. */
  @Test
  void aPathThatCannotBeIsToldInWords() {
    Run run = Run.of("check", "a\0b.yaml");
    assertThat(run.status()).isEqualTo(2);
    assertThat(run.err()).contains("FILE", "is no path here", "UTF-8").doesNotContain("java.nio");
  }

  @Test
  void anEmptyPathIsToldInWords() {
    for (String command : List.of("make", "batch")) {
      Run run = Run.of(command, file.toString(), "--out", "");
      assertThat(run.status()).isEqualTo(2);
      assertThat(run.err()).contains("--out", "names no file or folder");
    }
    assertThat(Run.of("check", "").err()).contains("FILE", "names no file or folder");
  }

  @Test
  void aKeySetTwiceIsRefused() {
    Run run =
        Run.of("check", file.toString(), "--set", "trough.wall=2", "--set", "trough.wall=2.4");
    assertThat(run.status()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
    assertThat(run.err())
        .isEqualTo(
            """
            --set: trough.wall: is set twice; allowed: once
            To read more: midlateral explain input
            """);
  }

  @Test
  void wrongInputEndsWith2AndNamesFileLineAndKey() throws Exception {
    Files.writeString(file, Files.readString(file).replace("pip: 66 ", "pip: 660 "));

    Run run = Run.of("check", file.toString(), "--set", "trough.wrap=9");

    assertThat(run.status()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
    assertThat(run.err().lines())
        .hasSize(3)
        .anyMatch(line -> line.matches(".*demo.yaml:\\d+: circumference.pip: 660 mm is out .*"))
        .anyMatch(line -> line.startsWith("--set: trough.wrap: 9 is out of range"));
  }

  @Test
  void cautionsAreSaidUnlessQuiet() {
    String[] loud = {"check", file.toString(), "--set", "trough.wrap=0.4"};
    String[] quiet = Arrays.copyOf(loud, 5);
    quiet[4] = "--quiet";

    assertThat(Run.of(loud).err())
        .startsWith("caution: trough.wrap: 0.4 is unusual")
        .contains("in order, cautions: ");
    assertThat(Run.of(quiet)).isEqualTo(new Run(0, "", ""));
  }

  @Test
  void jsonIsAllThereIsOnStandardOutput() throws Exception {
    Run good = Run.of("check", "--json", file.toString(), "--set=trough.wrap=0.4");
    JsonNode report = new ObjectMapper().readTree(good.out());

    assertThat(good.status()).isZero();
    assertThat(good.err()).isEmpty();
    assertThat(report.get("ok").booleanValue()).isTrue();
    JsonNode finding = report.get("findings").get(0);
    assertThat(finding.get("level").textValue()).isEqualTo("caution");
    assertThat(finding.get("code").textValue()).isEqualTo("unusual-value");
    assertThat(finding.get("value").doubleValue()).isEqualTo(0.4);
    assertThat(finding.get("limit").doubleValue()).isEqualTo(0.45);

    Run bad = Run.of("check", "--json", file.toString(), "--set=circumference.pip=\"x");
    report = new ObjectMapper().readTree(bad.out());

    assertThat(bad.status()).isEqualTo(2);
    assertThat(report.get("ok").booleanValue()).isFalse();
    assertThat(report.get("findings").get(0).get("key").textValue()).isEqualTo("circumference.pip");
    assertThat(report.get("findings").get(0).get("file").textValue()).isEqualTo("--set");
  }

  @Test
  void checkRefusesWhatMakeWouldRefuse() throws Exception {
    Run run = Run.of("check", file.toString(), "--set", "dorsal-shell.length=60");

    assertThat(run.status()).isEqualTo(3);
    assertThat(run.err()).contains("refusal: ").contains("dorsal-shell.length");
  }

  @Test
  void aWrongCommandLineEndsWith2InTwoLines() {
    for (List<String> line :
        List.of(
            List.of("chek"),
            List.of("check"),
            List.of("check", "a", "b"),
            List.of("check", "a", "--nonsense"),
            List.of("check", "a", "--set"),
            List.of("check", "\0"),
            List.of("template", "--unit", "furlong"),
            List.of("@nothing"))) {
      Run run = Run.of(line.toArray(String[]::new));

      assertThat(run.status()).as("%s", line).isEqualTo(2);
      assertThat(run.out()).as("%s", line).isEmpty();
      assertThat(run.err().lines()).as("%s", line).hasSizeBetween(1, 2);
    }
  }

  @Test
  void helpAndVersionGoToStandardOutput() {
    assertThat(Run.of("--version").out()).matches("midlateral \\d+\\.\\d+\\.\\d+\\S*\\s+");
    assertThat(Run.of("--help").out()).contains("template", "check", "clears nothing for use");
    assertThat(Run.of("check", "--help").status()).isZero();
  }

  @Test
  void aFullDiskEndsWith4() {
    OutputStream full =
        new OutputStream() {
          @Override
          public void write(int b) throws java.io.IOException {
            throw new java.io.IOException("no space left");
          }
        };
    StandardStreams streams =
        new StandardStreams(
            new PrintStream(full), new PrintStream(OutputStream.nullOutputStream()));

    assertThat(Main.run(new String[] {"template"}, streams)).isEqualTo(4);
  }

  /** Standard output that no program foresees: every command that prints meets a defect. */
  private static final class Broken extends PrintStream {
    Broken() {
      super(OutputStream.nullOutputStream());
    }

    @Override
    public void print(String text) {
      throw new IllegalStateException("broken on purpose, for inv-defect");
    }
  }

  /** What a command says where it meets a defect: one line, that names a file. */
  private static Path fileOfDefect(String... arguments) {
    java.io.ByteArrayOutputStream err = new java.io.ByteArrayOutputStream();
    StandardStreams streams =
        new StandardStreams(new Broken(), new PrintStream(err, true, StandardCharsets.UTF_8));

    assertThat(Main.run(arguments, streams)).isEqualTo(1);
    String said = err.toString(StandardCharsets.UTF_8);
    assertThat(said.lines().filter(line -> line.startsWith("midlateral: "))).hasSize(1);
    assertThat(said)
        .contains("midlateral: a defect of this program, please report it with ")
        .contains(": IllegalStateException at org.midlateral.cli.MainTest$Broken.print(")
        .doesNotContain("\tat ");
    return Path.of(said.replaceAll("(?s).*report it with (.*\\.txt): Illegal.*", "$1"));
  }

  @Test
  void aDefectEndsWith1InOneSentenceThatNamesAFile() throws Exception {
    Path told = fileOfDefect("template", "--unit", "cm");

    assertThat(told).hasParent(Path.of(System.getProperty("java.io.tmpdir")));
    assertThat(Files.readString(told))
        .contains("# java.lang.IllegalStateException: broken on purpose")
        .contains("#     at org.midlateral.cli.TemplateCommand.call(TemplateCommand.java:")
        .contains("# Command: midlateral template --unit cm\n")
        .endsWith("# No measurements had been read.\n");
    Files.delete(told);
  }

  @Test
  void theFileOfADefectLiesBesideTheOutputAndNamesNobody() throws Exception {
    Path out = directory.resolve("out");
    Path told =
        fileOfDefect(
            "make",
            file.toString(),
            "--out=" + out,
            "--json",
            "--parts-only",
            "--format=stl",
            "--set=reference=inv-defect",
            "--set=note=of no one",
            "--set=dorsal-shell.make=no",
            "--set=trough.wall=1.7");

    assertThat(told).isEqualTo(out.resolve("midlateral-defect.txt"));
    String text = Files.readString(told);
    assertThat(text)
        .contains("#     at org.midlateral.cli.MakeCommand.")
        .contains("\n  wall: 1.7\n", "\ncircumference:\n  proximal-phalanx: 62")
        .doesNotContain("inv-defect", "of no one", directory.toString());
    assertThat(text.lines().filter(line -> line.startsWith("# Command: ")))
        .containsExactly(
            "# Command: midlateral make FILE --out DIR --json --parts-only --format stl --set"
                + " KEY=VALUE");
    assertThat(Run.of("check", told.toString()).status()).isZero();
  }

  @Test
  void theFileOfADefectKnowsBothFingers() throws Exception {
    Path later = directory.resolve("later.yaml");
    Files.writeString(later, Files.readString(file).replace("pip: 66 ", "pip: 67.5 "));
    Path told = fileOfDefect("refit", file.toString(), "--against", later.toString());

    assertThat(Files.readString(told))
        .contains("# Command: midlateral refit FILE --against FILE\n")
        .contains("\n  pip: 66\n", "\n#   pip: 67.5\n");
    Files.delete(told);
  }

  @Test
  @Tag(LongRun.TAG)
  void hostileFilesEndWith2OrPass() throws Exception {
    byte[] valid = Files.readAllBytes(file);
    Random random = new Random(7);
    int refused = 0;
    int passed = 0;
    for (int i = 0; i < 300; i++) {
      byte[] bytes =
          Arrays.copyOf(
              valid, random.nextInt(4) == 0 ? random.nextInt(valid.length) : valid.length);
      for (int j = 0; j < i % 7; j++) {
        if (bytes.length > 0) {
          bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(128);
        }
      }
      Files.write(file, bytes);
      // What can be read is made and its mechanics computed: a few of those tell as much as all.
      if (Orders.read(file, List.of()).ok() && passed++ >= READABLE) {
        continue;
      }

      Run run = Run.of("check", file.toString());

      assertThat(run.status()).isIn(0, 2);
      assertThat(run.status() == 0).isEqualTo(run.err().contains("in order"));
      assertThat(run.err()).doesNotContain("\tat ", "Exception");
      refused += run.status() == 2 ? 1 : 0;
    }
    assertThat(refused).isBetween(50, 299);
  }
}
