package org.midlateral.recipe.course;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.midlateral.measurement.Level;
import org.midlateral.measurement.Order;
import org.midlateral.measurement.course.Course;
import org.midlateral.measurement.course.Visit;
import org.midlateral.measurement.course.VisitTime;
import org.midlateral.measurement.file.Courses;
import org.midlateral.measurement.file.OrderText;
import org.midlateral.measurement.file.Orders;

/** The sample course, an invented ring finger over twelve weeks, read as it grows. */
class FollowUpTest {
  private static final Path SAMPLE = Path.of("..", "samples", "courses", "ring-twelve-weeks.yaml");
  private static Course course;
  private static FollowUp told;

  @BeforeAll
  static void read() {
    course = Courses.read(SAMPLE).course();
    told = FollowUp.of(course);
  }

  private static Course until(int visits) {
    return new Course(course.order(), course.visits().subList(0, visits));
  }

  /** What would have been told at each visit, before anything was done at it. */
  @ParameterizedTest
  @CsvSource({
    "1, KEEP, KEPT",
    "2, KEEP, KEPT",
    "3, KEEP, KEPT",
    "5, KEEP, KEPT",
    "6, REVIEW, EXTENSION_LOST",
    "7, ADJUST, SORE",
    "10, KEEP, KEPT"
  })
  void theVerdictFollowsTheCourse(int visits, CourseVerdict verdict, CourseRule first) {
    FollowUp then = FollowUp.judged(until(visits));

    assertThat(then.verdict()).isEqualTo(verdict);
    assertThat(then.reasons().get(0).rule()).isEqualTo(first);
  }

  /** At the fourth visit 11 degrees were won; the piece made there then holds them. */
  @Test
  void whatWasWonCallsForANewPiece() {
    Order first = course.order();
    List<Visit> visits = new ArrayList<>(course.visits().subList(0, 3));
    visits.add(Same.piece(course.visits().get(3)));

    FollowUp before = FollowUp.judged(new Course(first, visits));
    FollowUp after = FollowUp.judged(until(4));

    assertThat(before.verdict()).isEqualTo(CourseVerdict.REMAKE);
    assertThat(before.reasons().get(0).sentence()).startsWith("11° of extension were regained");
    assertThat(before.next().changes())
        .extracting(NextOrder.KeyChange::key)
        .contains("angle.pip-extension-deficit", "circumference.pip");
    assertThat(after.verdict()).isEqualTo(CourseVerdict.KEEP);
    assertThat(after.next().changes()).isEmpty();
  }

  /**
   * The setback: lost extension is told first, and a finger measured in the evening is no swelling.
   */
  @Test
  void theSetbackIsToldByTheAngle() {
    FollowUp then = FollowUp.of(until(6));

    assertThat(then.reasons())
        .extracting(FollowUp.CourseReason::rule)
        .startsWith(CourseRule.EXTENSION_LOST)
        .contains(CourseRule.SORE, CourseRule.SELDOM_WORN)
        .doesNotContain(CourseRule.SWOLLEN, CourseRule.SWOLLEN_WITH_IT);
    assertThat(then.reasons().get(0).sentence())
        .startsWith("14° of extension were lost against the best reading, 2026-02-16.");
    assertThat(then.held()).isEmpty();
  }

  @Test
  void theAngleItWouldHoldIsTold() {
    assertThat(told.held()).isPresent();
    assertThat(told.held().orElseThrow().angle()).isBetween(0.0, 15.0);
    assertThat(told.held().orElseThrow().gap()).isGreaterThan(0.3);
  }

  @Test
  void girthsAreToldAgainstThoseThePieceWasMadeBy() {
    assertThat(new FollowUpWords(told).now())
        .contains(
            "Girths against what the piece was made for: proximal phalanx -1.0 mm, PIP joint -3.0"
                + " mm*, middle phalanx -1.0 mm, tip -0.5 mm.");
  }

  @Test
  void theLooseDayLiesAheadWithItsBand() {
    LooseForecast loose = told.loose().orElseThrow();

    assertThat(loose.day()).isGreaterThan(84);
    assertThat(loose.earliest()).isBetween(84, loose.day());
    assertThat(loose.latest().orElse(1000)).isGreaterThan(loose.day());
    assertThat(loose.sentence(course)).contains("2026-").contains("liner");
  }

  @Test
  void theNextOrderHasTodaysReadingsAndCanBeReadBack() {
    NextOrder next = told.next();
    Orders.Result read = Orders.parse(next.text(), "next.yaml", List.of());

    assertThat(read.ok()).isTrue();
    assertThat(read.order()).isEqualTo(next.order());
    assertThat(read.order().measurements().reference()).isEqualTo("demo-ring-weeks-3");
    assertThat(Math.toDegrees(read.order().measurements().pipExtensionDeficit()))
        .isCloseTo(4, within(1e-9));
    assertThat(read.order().measurements().circumference()).containsEntry(Level.PIP, 67.0);
    assertThat(read.order().design().trough()).isEqualTo(course.order().design().trough());
    assertThat(next.text())
        .startsWith("# The next piece")
        .contains("#   angle.pip-extension-deficit: 5.0° -> 4.0°")
        .contains("#   circumference.pip: 70 mm -> 67 mm")
        .contains("#   joint.gauge.force: not known -> 0.7 N")
        .endsWith(OrderText.write(next.order()));
  }

  @Test
  void theTableHasEveryVisit() throws IOException {
    CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    try (CSVParser rows = CSVParser.parse(FollowUpTable.csv(told), format)) {
      List<CSVRecord> records = rows.getRecords();
      assertThat(records).hasSize(10);
      Map<String, String> setback = records.get(5).toMap();
      assertThat(setback)
          .containsEntry("when", "2026-03-02")
          .containsEntry("piece", "2")
          .containsEntry("pip-extension-deficit passive °", "18")
          .containsEntry("lost since last °", "14")
          .containsEntry("circumference pip mm", "72")
          .containsEntry("circumference tip mm", "")
          .containsEntry("sore-at", "ulnar-side");
    }
  }

  @Test
  void thePagesSayWhatTheScreenSays() throws IOException {
    byte[] pdf = FollowUpDocument.pdf(told);
    try (PDDocument document = Loader.loadPDF(pdf)) {
      assertThat(document.getNumberOfPages()).isEqualTo(2);
      String text = new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
      assertThat(text)
          .contains("Keep the piece.")
          .contains("Extension is kept")
          .contains("2026-03-02")
          .contains("+14*")
          .contains("9.7°")
          .contains("piece 2")
          .contains("Estimate, for comparison");
    }
    assertThat(FollowUpDocument.pdf(told)).isEqualTo(pdf);
  }

  /** Sixty visits, the most there may be: nothing runs over the foot of a page. */
  @Test
  void theLongestCourseStaysOnItsPages() throws IOException {
    List<Visit> visits = new ArrayList<>();
    for (int day = 0; day < 60; day++) {
      VisitTime time = new VisitTime(7 * day, Optional.empty(), Optional.empty());
      visits.add(Visit.first(course.order().measurements(), time));
    }
    byte[] pdf = FollowUpDocument.pdf(FollowUp.judged(new Course(course.order(), visits)));
    try (PDDocument document = Loader.loadPDF(pdf)) {
      PDFTextStripper second = new PDFTextStripper();
      second.setSortByPosition(true);
      second.setStartPage(2);
      second.setEndPage(2);
      String text = second.getText(document).strip();
      assertThat(text).contains("day 413").contains("day 0").doesNotContain("day 70 ");
      assertThat(text.lines().reduce((a, b) -> b).orElseThrow()).contains("swollen");
    }
  }

  /**
   * Made by what the patient's own strength reached, held against what a hand reaches: not told.
   */
  @Test
  void activeAndPassiveReadingsAreNotHeldAgainstEachOther() throws IOException {
    String text =
        Files.readString(SAMPLE)
            .replace("{active: 24, passive: 16}", "{active: 24}")
            .replace("{active: 21, passive: 13}", "{active: 21}")
            .replaceFirst("soreness: 2\n    skin: red-clears", "piece: new");
    int third = text.indexOf("  - date: 2026-02-02");
    Courses.CourseRead read = Courses.parse(text.substring(0, third), "demo.yaml");
    FollowUp then = FollowUp.judged(read.course());

    assertThat(Math.toDegrees(then.present().measurements().pipExtensionDeficit()))
        .isCloseTo(21, within(1e-9));
    assertThat(then.reasons())
        .extracting(FollowUp.CourseReason::rule)
        .doesNotContain(CourseRule.EXTENSION_REGAINED);
    assertThat(new FollowUpWords(then).now().get(0)).doesNotContain("regained");
  }

  @Test
  void theReportIsJson() {
    String json = FollowUpReport.of(told, List.of()).json();

    assertThat(json.getBytes(StandardCharsets.UTF_8)).isNotEmpty();
    assertThat(json)
        .contains("\"verdict\" : \"keep\"")
        .contains("\"smallestAngle\" : 9.701")
        .contains("\"rule\" : \"kept\"")
        .contains("\"lostSinceLast\" : 14")
        .contains("does not clear");
  }
}
