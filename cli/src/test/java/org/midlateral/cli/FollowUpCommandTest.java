package org.midlateral.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.midlateral.measurement.file.Courses;
import org.midlateral.measurement.file.Orders;

/** A course by the command line, in process: told, begun, added to, and the next order written. */
class FollowUpCommandTest {
  private static final Path SAMPLES = Path.of("..", "samples");
  private static final Path COURSE = SAMPLES.resolve("courses").resolve("ring-twelve-weeks.yaml");
  private static final ObjectMapper JSON = new ObjectMapper();

  @TempDir Path directory;

  private Path copy() throws IOException {
    return Files.copy(COURSE, directory.resolve("course.yaml"));
  }

  @Test
  void tellsTheVerdictTheVisitsAndWhatCounts() {
    Path out = directory.resolve("out");
    Run run = Run.of("follow-up", COURSE.toString(), "--out", out.toString());

    assertThat(run.status()).isZero();
    assertThat(run.out())
        .contains("Keep the piece.")
        .contains("- Extension is kept")
        .contains("2026-03-02")
        .contains("+14*")
        .contains("more than 9.7°")
        .contains("does not clear a piece for use");
    assertThat(out.resolve("follow-up.pdf")).isNotEmptyFile();
    assertThat(out.resolve("follow-up.csv"))
        .content()
        .startsWith("visit,when")
        .contains("ulnar-side");
  }

  @Test
  void writesTheNextOrderAndTheReport() throws Exception {
    Path next = directory.resolve("next.yaml");
    Run run = Run.of("follow-up", COURSE.toString(), "--json", "--next", next.toString());
    JsonNode report = JSON.readTree(run.out());

    assertThat(run.status()).isZero();
    assertThat(report.get("verdict").textValue()).isEqualTo("keep");
    assertThat(report.get("visits")).hasSize(10);
    assertThat(report.at("/reasons/0/source").textValue()).isNotBlank();
    assertThat(Orders.read(next, List.of()).ok()).isTrue();
    assertThat(Run.of("follow-up", COURSE.toString(), "--next", next.toString()).status())
        .isEqualTo(2);
  }

  /** Begun from an order, every line of which stays, and added to twice. */
  @Test
  void beginsFromAnOrderAndGrows() throws Exception {
    Path order = SAMPLES.resolve("left-deficit.yaml");
    Path course = directory.resolve("left.yaml");
    Run begun =
        Run.of("follow-up", course.toString(), "--begin", order.toString(), "--on", "2026-05-04");

    assertThat(begun.status()).as(begun.err()).isZero();
    assertThat(begun.out()).contains("1 visit, 2026-05-04").contains("Keep the piece.");
    assertThat(Files.readString(course)).startsWith(Files.readString(order));
    String before = Files.readString(course);

    Run added =
        Run.of(
            "follow-up",
            course.toString(),
            "--add",
            "date=2026-05-11",
            "--add",
            "pip-extension-deficit.passive=40",
            "--add",
            "note=from home, as told");
    assertThat(added.status()).as(added.err()).isZero();
    assertThat(added.err()).contains("one visit added");
    assertThat(added.out()).contains("Review the plan").contains("do not force the piece on");
    assertThat(Files.readString(course)).startsWith(before);
    assertThat(Courses.read(course).course().visits()).hasSize(2);
  }

  /** Whatever is wrong with what is added, the file stays as it was, byte by byte. */
  @Test
  void aWrongVisitChangesNothing() throws IOException {
    Path course = copy();
    byte[] before = Files.readAllBytes(course);
    for (String wrong :
        new String[] {
          "pip-flexion.active=999",
          "date=2026-04-06",
          "knuckles=3",
          "circumference.pip",
          "circumference.pip=66, dip: 50}",
          "note=\u0007",
          "hours-worn=8\n  - day: 3"
        }) {
      Run run = Run.of("follow-up", course.toString(), "--add", "date=2026-04-13", "--add", wrong);
      assertThat(run.status()).as(wrong).isEqualTo(2);
      assertThat(run.err()).as(wrong).isNotBlank().doesNotContain("Exception");
      assertThat(Files.readAllBytes(course)).as(wrong).isEqualTo(before);
    }
    assertThat(directory).isDirectoryNotContaining(file -> !file.equals(course));
  }

  /** A course that is no longer whole is refused, and never written over. */
  @Test
  void aDamagedCourseIsRefusedAndKept() throws IOException {
    Path course = copy();
    String text = Files.readString(course);
    Files.writeString(course, text.substring(0, text.length() / 2) + "\n  : {");
    byte[] damaged = Files.readAllBytes(course);

    Run run = Run.of("follow-up", course.toString(), "--add", "date=2026-04-13");
    assertThat(run.status()).isEqualTo(2);
    assertThat(run.err()).contains("course.yaml:").doesNotContain("Exception");
    assertThat(Files.readAllBytes(course)).isEqualTo(damaged);
    Run begun = Run.of("follow-up", course.toString(), "--begin", SAMPLES + "/slim-little.yaml");
    assertThat(begun.status()).isEqualTo(2);
    assertThat(begun.err()).contains("exists already and is not replaced");
    assertThat(Files.readAllBytes(course)).isEqualTo(damaged);
  }

  @Test
  void aKeyThatIsAlmostRightIsNamed() throws Exception {
    Run run = Run.of("follow-up", copy().toString(), "--add", "pip-extension.passive=17");

    assertThat(run.status()).isEqualTo(2);
    assertThat(run.err())
        .contains("pip-extension.passive")
        .contains("did you mean pip-extension-deficit.passive?");
  }

  /** Visits that do not stand last cannot be added to by a line at the end. */
  @Test
  void aCourseWhoseVisitsAreNotLastIsLeftToTheHand() throws IOException {
    Path course = directory.resolve("turned.yaml");
    String text = Files.readString(COURSE);
    int at = text.indexOf("visits:");
    Files.writeString(course, text.substring(at) + text.substring(0, at));

    assertThat(Run.of("follow-up", course.toString(), "--quiet").status()).isZero();
    Run run = Run.of("follow-up", course.toString(), "--add", "date=2026-04-13");
    assertThat(run.status()).isEqualTo(2);
    assertThat(run.err()).isNotBlank();
    assertThat(Courses.read(course).course().visits()).hasSize(10);
  }

  @Test
  void anOrderIsNoCourse() {
    Run run = Run.of("follow-up", SAMPLES + "/slim-little.yaml", "--json");

    assertThat(run.status()).isEqualTo(2);
    assertThat(run.out()).contains("visits").contains("is missing");
    assertThat(Run.of("follow-up", COURSE.toString(), "--on", "2026-01-01").status()).isEqualTo(2);
    assertThat(Run.of("follow-up", "x.yaml", "--begin", "y.yaml", "--on", "1.1.26").err())
        .contains("no day of the calendar");
  }
}
