package org.midlateral.measurement.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.midlateral.measurement.Finding;
import org.midlateral.measurement.HoldingDesign.GaugeReading;
import org.midlateral.measurement.InputError;
import org.midlateral.measurement.Level;
import org.midlateral.measurement.Order;
import org.midlateral.measurement.course.Course;
import org.midlateral.measurement.course.RandomCourses;
import org.midlateral.measurement.key.InputKey;
import org.midlateral.measurement.key.KeyTable;

/** Courses are read strictly: what is wrong is told by line and key, and nothing is half read. */
class CoursesTest {
  private static final Path SAMPLE = Path.of("..", "samples", "courses", "ring-twelve-weeks.yaml");

  /** An invented little finger with two visits; the lines below are counted from its first. */
  private static final String TWO_VISITS =
      """
      reference: demo-course
      hand: left
      digit: little
      unit: mm
      circumference: {proximal-phalanx: 47, pip: 48, middle-phalanx: 42, tip: 37}
      length: {palmar-crease-to-web: 17, web-to-pip: 18, pip-to-dip: 17, dip-to-tip: 21}
      visits:
        - date: 2026-01-12
          pip-extension-deficit: {passive: 8}
        - date: 2026-01-19
          pip-flexion: {active: 80, passive: 85}
      """;

  private static List<InputError> errors(String from, String to) {
    assertThat(TWO_VISITS).contains(from);
    Courses.CourseRead read = Courses.parse(TWO_VISITS.replace(from, to), "demo.yaml");
    assertThat(read.ok()).isFalse();
    return read.errors();
  }

  @Test
  void theSampleIsInOrderAndComesBackEqualFromItsText() throws IOException {
    Courses.CourseRead read = Courses.read(SAMPLE);

    assertThat(Files.readString(SAMPLE)).startsWith("# Invented").contains("No real person");

    assertThat(read.errors()).isEmpty();
    assertThat(read.cautions()).isEmpty();
    assertThat(read.course().visits()).hasSize(10);
    assertThat(read.course().last().time().day()).isEqualTo(84);
    assertThat(read.course().presentPiece()).isEqualTo(3);
    Courses.CourseRead again = Courses.parse(CourseText.write(read.course()), "again.yaml");
    assertThat(again.errors()).isEmpty();
    assertThat(again.course()).isEqualTo(read.course());
  }

  @ParameterizedTest
  @ValueSource(strings = {"bulbous-ring", "middle-inches", "left-deficit", "slim-little"})
  void randomCoursesComeBackEqualFromTheirText(String sample) {
    Order order = Orders.read(Path.of("..", "samples", sample + ".yaml"), List.of()).order();
    for (int seed = 0; seed < 25; seed++) {
      Course course = new RandomCourses(seed).course(order);
      Courses.CourseRead again = Courses.parse(CourseText.write(course), "again.yaml");

      assertThat(again.errors()).as("seed " + seed).isEmpty();
      assertThat(again.course()).as("seed " + seed).isEqualTo(course);
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "date: 2026-01-19|date: 2026-02-30|10|visits[1].date|2026-02-30|calendar",
        "date: 2026-01-19|date: 19.1.2026|10|visits[1].date|19.1.2026|ISO 8601",
        "pip-flexion: {active: 80, passive: 85}|time: noon|11|visits[1].time|noon|morning or evening",
        "date: 2026-01-19|date: 2026-01-12|10|visits[1].date|2026-01-12|one visit a day",
        "date: 2026-01-19|day: 7|10|visits[1].day|7 days|a date at every visit",
        "{passive: 8}|{passive: 200}|9|visits[0].pip-extension-deficit.passive|200°|-40 to 110°",
        "{passive: 8}|{pasive: 8}|9|visits[0].pip-extension-deficit.pasive|8|active, passive",
        "{active: 80, passive: 85}|{passive: 8}\\n    pip-extension-deficit: {passive: 9}|11|visits[1].pip-flexion.passive|8°|no less than",
        "pip-flexion: {active: 80, passive: 85}|hours-worn: 25|11|visits[1].hours-worn|25 h|0 to 24 h",
        "pip-flexion: {active: 80, passive: 85}|gauge: {force: 1}|11|visits[1].gauge.force|1 N|gauge.distance",
        "pip-flexion: {active: 80, passive: 85}|circumference: {pip: 80}|11|visits[1].circumference.pip|80 mm|1.6",
        "pip-flexion: {active: 80, passive: 85}|choices: trough.liner=1|11|visits[1].choices|trough.liner=1|piece: new",
      })
  void aWrongReadingIsToldByLineKeyValueAndWhatIsAllowed(
      String from, String to, int line, String key, String value, String allowed) {
    List<InputError> errors = errors(from, to.replace("\\n", "\n"));

    assertThat(errors).hasSize(1);
    InputError error = errors.get(0);
    assertThat(error.file()).isEqualTo("demo.yaml");
    assertThat(error.line()).isEqualTo(line);
    assertThat(error.key()).isEqualTo(key);
    assertThat(error.value()).isEqualTo(value);
    assertThat(error.allowed()).contains(allowed);
    assertThat(error.text()).contains(allowed);
  }

  @Test
  void everyErrorIsToldAtOnceThoseOfTheOrderToo() {
    String text =
        TWO_VISITS
            .replace("pip: 48", "pip: 480")
            .replace("date: 2026-01-19", "date: 2026-13-01")
            .replace("{passive: 8}", "{passive: straight}");

    assertThat(Courses.parse(text, "demo.yaml").errors())
        .extracting(InputError::key)
        .containsExactly(
            "circumference.pip", "visits[0].pip-extension-deficit.passive", "visits[1].date");
  }

  @Test
  void aFileWithoutVisitsSaysWhatIsMissing() {
    String text = TWO_VISITS.substring(0, TWO_VISITS.indexOf("visits:"));

    assertThat(Courses.parse(text, "demo.yaml").errors())
        .singleElement()
        .satisfies(error -> assertThat(error.key()).isEqualTo("visits"))
        .satisfies(error -> assertThat(error.text()).contains("a list of 1 to 60 visits"));
  }

  @Test
  void aNewPieceThatCannotBeMadeIsToldAtItsVisit() {
    String liner = "    piece: new\n    choices: trough.liner=40\n";
    assertThat(Courses.parse(TWO_VISITS + liner, "demo.yaml").errors())
        .singleElement()
        .satisfies(error -> assertThat(error.line()).isEqualTo(12))
        .satisfies(error -> assertThat(error.key()).isEqualTo("visits[1].piece"))
        .satisfies(error -> assertThat(error.text()).contains("trough.liner").contains("0 to 4"));

    String tape = "    piece: new\n    choices: circumference.pip=40\n";
    assertThat(Courses.parse(TWO_VISITS + tape, "demo.yaml").errors())
        .singleElement()
        .satisfies(error -> assertThat(error.key()).isEqualTo("visits[1].choices"));
  }

  @Test
  void whatIsUnusualIsCautioned() {
    String text =
        TWO_VISITS.replace("{passive: 8}", "{active: 5, passive: 25}")
            + "    circumference: {pip: 58}\n    note: \"Ada Example\"\n";
    Courses.CourseRead read = Courses.parse(text, "demo.yaml");

    assertThat(read.ok()).as(read.errors().toString()).isTrue();
    assertThat(read.cautions())
        .extracting(Finding::code)
        .containsExactlyInAnyOrder("active-beyond-passive", "unusual-step", "personal-data");
  }

  /** A new piece has the last readings, its width follows the girth, and the rest stays. */
  @Test
  void theOrderOfALaterPieceHasTheLastReadings() {
    Course course = Courses.read(SAMPLE).course();
    Order later = CourseOrders.at(course, 8).order();

    assertThat(Math.toDegrees(later.measurements().pipExtensionDeficit()))
        .isCloseTo(6, within(1e-9));
    assertThat(later.measurements().circumference())
        .containsEntry(Level.PIP, 68.0)
        .containsEntry(Level.TIP, 50.0);
    assertThat(later.design()).isEqualTo(course.order().design());
    assertThat(CourseOrders.present(course)).isEqualTo(CourseOrders.at(course, 3).order());
  }

  /** A file cut off anywhere is refused or says less, and never stops the program. */
  @Test
  void aFileCutOffAnywhereIsReadOrRefused() throws IOException {
    String text = Files.readString(SAMPLE);
    Random random = new Random(3);
    int refused = 0;
    for (int i = 0; i < 60; i++) {
      String cut = text.substring(0, random.nextInt(text.length()));
      Courses.CourseRead read = Courses.parse(cut, "cut.yaml");
      assertThat(read.ok()).isEqualTo(read.errors().isEmpty());
      refused += read.ok() ? 0 : 1;
    }
    assertThat(refused).isBetween(15, 59);
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    for (int i = 0; i < 60; i++) {
      byte[] damaged = bytes.clone();
      damaged[random.nextInt(bytes.length)] = (byte) (32 + random.nextInt(95));
      Courses.CourseRead read =
          Courses.parse(new String(damaged, StandardCharsets.UTF_8), "damaged.yaml");
      assertThat(read.ok()).isEqualTo(read.errors().isEmpty());
    }
  }

  @Test
  void readingsAreAddedAtTheEnd() throws IOException {
    String text = Files.readString(SAMPLE);
    String more =
        CourseText.with(
            text,
            List.of(
                "date=2026-04-13",
                "pip-extension-deficit.passive=4",
                "circumference.pip = 2 5/8 in",
                "note=a \"soft\" liner: #2",
                "pip-extension-deficit.active=9"));
    Courses.CourseRead read = Courses.parse(more, "more.yaml");

    assertThat(more).startsWith(text);
    assertThat(read.errors()).isEmpty();
    assertThat(read.course().visits()).hasSize(11);
    assertThat(read.course().last().note()).contains("a \"soft\" liner: #2");
    assertThat(read.course().last().circumference()).containsEntry(Level.PIP, 66.675);
    assertThat(read.course().last().deficit().active()).hasValue(9);
  }

  /** What is read at a visit is refused where the order's own key would be. */
  @Test
  void rangesAreThoseOfTheMeasurementFile() {
    for (InputKey key : KeyTable.visits().keys()) {
      String own = key.path().replace("visits[].", "").replaceFirst("^gauge", "joint.gauge");
      KeyTable.standard()
          .find(own)
          .filter(same -> same.kind().isNumeric())
          .ifPresent(same -> assertThat(key.refused()).as(own).isEqualTo(same.refused()));
      assertThat(key.comment()).as(key.path()).endsWith(".");
      assertThat(key.source()).as(key.path()).isNotBlank();
    }
  }

  /** An angle that belongs to an earlier reading of the gauge is not taken for this one's. */
  @Test
  void aGaugeReadingBringsItsOwnAngle() {
    String text =
        TWO_VISITS.replace(
                "visits:", "joint: {gauge: {force: 1, distance: 25, angle: 30}}\nvisits:")
            + "    gauge: {force: 0.6, distance: 24}\n    pip-extension-deficit: {passive: 6}\n";
    Course course = Courses.parse(text, "demo.yaml").course();

    GaugeReading before = CourseOrders.at(course, 0).order().design().holding().joint().gauge();
    GaugeReading after = CourseOrders.at(course, 1).order().design().holding().joint().gauge();
    assertThat(Math.toDegrees(before.angle().orElseThrow())).isCloseTo(30, within(1e-9));
    assertThat(after.force()).hasValue(0.6);
    assertThat(Math.toDegrees(after.angle().orElseThrow())).isCloseTo(6, within(1e-9));
  }

  /** Whoever reads a course as a measurement file is told what it is. */
  @Test
  void aCourseIsNoMeasurementFile() {
    assertThat(Orders.parse(TWO_VISITS, "demo.yaml", List.of()).errors())
        .singleElement()
        .satisfies(error -> assertThat(error.key()).isEqualTo("visits"))
        .satisfies(error -> assertThat(error.text()).contains("midlateral follow-up"));
  }
}
