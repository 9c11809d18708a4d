package org.midlateral.recipe.course;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.midlateral.LongRun;
import org.midlateral.Seeded;
import org.midlateral.measurement.Hand;
import org.midlateral.measurement.HoldingDesign.GaugeReading;
import org.midlateral.measurement.LengthUnit;
import org.midlateral.measurement.Measurements;
import org.midlateral.measurement.Order;
import org.midlateral.measurement.course.Course;
import org.midlateral.measurement.course.MotionReading;
import org.midlateral.measurement.course.PieceWork;
import org.midlateral.measurement.course.RandomCourses;
import org.midlateral.measurement.course.SkinReading;
import org.midlateral.measurement.course.SkinReading.SkinState;
import org.midlateral.measurement.course.SkinReading.TipState;
import org.midlateral.measurement.course.Visit;
import org.midlateral.measurement.course.VisitTime;
import org.midlateral.measurement.file.CourseText;
import org.midlateral.measurement.file.Courses;
import org.midlateral.measurement.file.Orders;

/** What a course comes to depends on the finger alone; random courses of the samples' fingers. */
class CoursePropertiesTest {
  private static final List<String> SAMPLES =
      List.of("bulbous-ring", "middle-inches", "left-deficit", "slim-little", "covered-tip");

  private static Order order(long seed) {
    String sample = SAMPLES.get((int) (seed % SAMPLES.size()));
    List<String> coarse = new ArrayList<>(List.of("print.edge-length=2.5 mm"));
    coarse.add("angle.pip-extension-deficit=" + 6 * (seed / 5 % 4));
    if (seed % 4 > 0) {
      coarse.add("dorsal-shell.make=no");
    }
    return Orders.read(Path.of("..", "samples", sample + ".yaml"), coarse).order();
  }

  private static FollowUp read(String text) {
    Courses.CourseRead read = Courses.parse(text, "course.yaml");
    assertThat(read.errors()).isEmpty();
    return FollowUp.judged(read.course());
  }

  private static List<CourseRule> rules(FollowUp told) {
    return told.reasons().stream().map(FollowUp.CourseReason::rule).toList();
  }

  private static Order of(Order order, Hand hand, LengthUnit unit) {
    Measurements m = order.measurements();
    return order.withMeasurements(
        new Measurements(
            m.reference(),
            hand,
            m.digit(),
            unit,
            m.circumference(),
            m.width(),
            m.palmarCreaseToWeb(),
            m.webToPip(),
            m.pipToDip(),
            m.dipToTip(),
            m.pipExtensionDeficit(),
            m.dipFlexion(),
            m.pipAxisDistalOfCrease(),
            m.dipAxisDistalOfCrease(),
            m.station(),
            m.room()));
  }

  @Tag(LongRun.TAG)
  @Seeded(value = 6, full = 500)
  void theVerdictIsOfTheFingerAlone(long seed) {
    Order order = order(seed);
    Course course = new RandomCourses(seed).course(order);
    FollowUp told = read(CourseText.write(course));

    assertThat(read(shuffled(course, seed)).reasons()).isEqualTo(told.reasons());
    Hand hand = order.measurements().hand();
    LengthUnit unit = order.measurements().unit();
    Hand other = hand == Hand.LEFT ? Hand.RIGHT : Hand.LEFT;
    FollowUp mirrored = read(CourseText.write(new Course(of(order, other, unit), course.visits())));
    assertThat(mirrored.reasons()).isEqualTo(told.reasons());
    LengthUnit inches = unit == LengthUnit.IN ? LengthUnit.MM : LengthUnit.IN;
    FollowUp converted =
        read(CourseText.write(new Course(of(order, hand, inches), course.visits())));
    assertThat(rules(converted)).isEqualTo(rules(told));
    assertThat(converted.verdict()).isEqualTo(told.verdict());
  }

  /** The text with its visits in another order. */
  private static String shuffled(Course course, long seed) {
    String text = CourseText.write(course);
    int at = text.indexOf("visits:\n") + "visits:\n".length();
    List<String> visits = new ArrayList<>(List.of(text.substring(at).split("(?m)^(?=  - )")));
    Collections.shuffle(visits, new Random(seed));
    return text.substring(0, at) + String.join("", visits);
  }

  @Tag(LongRun.TAG)
  @Seeded(value = 6, full = 500)
  void aVisitEqualToTheLastChangesNothing(long seed) {
    Course course = new RandomCourses(seed).course(order(seed));
    Visit last = course.last();
    VisitTime later = new VisitTime(last.time().day() + 7, Optional.empty(), last.time().part());
    List<Visit> visits = new ArrayList<>(course.visits());
    visits.add(
        new Visit(
            later,
            last.deficit(),
            last.pipFlexion(),
            last.dipFlexion(),
            last.circumference(),
            last.hoursWorn(),
            last.skin(),
            last.tension(),
            last.layers(),
            last.gauge(),
            PieceWork.NONE,
            last.note()));

    FollowUp told = FollowUp.judged(course);
    FollowUp again = FollowUp.judged(new Course(course.order(), visits));
    assertThat(again.verdict()).isEqualTo(told.verdict());
    assertThat(again.reasons()).isEqualTo(told.reasons());
    assertThat(again.refits()).isEqualTo(told.refits());
    assertThat(again.next()).isEqualTo(told.next());
  }

  @Tag(LongRun.TAG)
  @Seeded(value = 6, full = 500)
  void aCourseWithoutChangeSaysKeep(long seed) {
    Order order = order(seed);
    Random random = new Random(seed);
    OptionalDouble none = OptionalDouble.empty();
    VisitTime start = new VisitTime(0, Optional.empty(), Optional.empty());
    OptionalDouble deficit = Visit.first(order.measurements(), start).deficit().passive();
    double flexion = 70 + random.nextInt(30);
    List<Visit> visits = new ArrayList<>();
    for (int day = 0; day < 7 * (1 + random.nextInt(10)) + 1; day += 7) {
      visits.add(
          new Visit(
              new VisitTime(day, Optional.empty(), Optional.empty()),
              new MotionReading(none, random.nextInt(3) > 0 ? deficit : none),
              new MotionReading(OptionalDouble.of(flexion), none),
              new MotionReading(none, none),
              random.nextBoolean() ? order.measurements().circumference() : Map.of(),
              OptionalDouble.of(7),
              new SkinReading(
                  Optional.of(SkinState.CLEAR),
                  Optional.of(TipState.USUAL),
                  none,
                  Optional.empty()),
              none,
              OptionalInt.empty(),
              new GaugeReading(none, none, none),
              PieceWork.NONE,
              Optional.empty()));
    }
    FollowUp told = FollowUp.judged(new Course(order, visits));

    assertThat(told.verdict()).isEqualTo(CourseVerdict.KEEP);
    assertThat(told.next().changes()).isEmpty();
    assertThat(told.loose()).isEmpty();
  }

  /** The random courses reach every verdict, so that the tests above say something. */
  @Test
  void randomCoursesReachEveryVerdict() {
    Set<CourseVerdict> verdicts = EnumSet.noneOf(CourseVerdict.class);
    for (long seed = 0; seed < 60 && verdicts.size() < CourseVerdict.values().length; seed++) {
      verdicts.add(FollowUp.judged(new RandomCourses(seed).course(order(seed))).verdict());
    }
    assertThat(verdicts).containsExactly(CourseVerdict.values());
  }
}
