package org.midlateral.recipe.course;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.midlateral.document.drawing.Lengths;
import org.midlateral.measurement.Level;
import org.midlateral.measurement.Order;
import org.midlateral.measurement.course.Course;
import org.midlateral.measurement.course.DatedReading;
import org.midlateral.measurement.course.SkinReading.SkinState;
import org.midlateral.measurement.course.SkinReading.SorePlace;
import org.midlateral.measurement.course.SkinReading.TipState;
import org.midlateral.measurement.course.Visit;
import org.midlateral.measurement.course.VisitTime;
import org.midlateral.recipe.refit.Refit;

/**
 * What is known at the last visit, as the rules ask for it. Of each thing the last reading counts,
 * whenever it was taken. Angles in degrees.
 *
 * @param deficits extension deficit by visit
 * @param madeFor extension deficit that the present piece was made for; empty where it was read in
 *     another way than the deficits
 * @param active extension deficit by the patient's own strength, by visit
 * @param flexions PIP flexion by visit
 * @param tip the fingertip
 * @param skin under the piece
 * @param soreness by visit
 * @param soreAt where it is sore or red
 * @param hoursWorn a night
 * @param girths against those the piece was made by
 * @param liner in the present piece (mm)
 * @param refits how the present pieces sit today; none where that cannot be told
 * @param lengths as the finger is measured
 */
record CourseState(
    List<DatedReading> deficits,
    OptionalDouble madeFor,
    List<DatedReading> active,
    List<DatedReading> flexions,
    Optional<TipState> tip,
    Optional<SkinState> skin,
    List<DatedReading> soreness,
    Optional<SorePlace> soreAt,
    OptionalDouble hoursWorn,
    List<GirthChange> girths,
    double liner,
    List<Refit> refits,
    Lengths lengths) {

  /**
   * The state of a course.
   *
   * @param present order of the present piece
   * @param refits of it on today's finger
   */
  static CourseState of(Course course, Order present, List<Refit> refits) {
    int last = course.lastNumber();
    return new CourseState(
        course.deficits(last),
        course.madeByTheSameKind()
            ? OptionalDouble.of(Math.toDegrees(present.measurements().pipExtensionDeficit()))
            : OptionalDouble.empty(),
        course.readings(last, visit -> visit.deficit().active()),
        course.flexions(last),
        latest(course, visit -> visit.skin().tip()),
        latest(course, visit -> visit.skin().skin()),
        course.readings(last, visit -> visit.skin().soreness()),
        latest(course, visit -> visit.skin().at()),
        course.readings(last, Visit::hoursWorn).stream()
            .mapToDouble(DatedReading::value)
            .reduce((earlier, later) -> later),
        girths(course, present),
        present.design().trough().liner(),
        refits,
        new Lengths(present.measurements().unit()));
  }

  private static <E> Optional<E> latest(Course course, Function<Visit, Optional<E>> read) {
    return course.visits().stream()
        .map(read)
        .flatMap(Optional::stream)
        .reduce((earlier, later) -> later);
  }

  private static List<GirthChange> girths(Course course, Order present) {
    VisitTime made = course.visits().get(course.presentPiece()).time();
    List<GirthChange> changes = new ArrayList<>();
    for (Map.Entry<Level, Double> asMade : present.measurements().circumference().entrySet()) {
      List<DatedReading> readings = course.girths(course.lastNumber(), asMade.getKey());
      if (!readings.isEmpty()) {
        DatedReading now = readings.get(readings.size() - 1);
        boolean otherPart =
            made.part().isPresent()
                && now.time().part().isPresent()
                && !made.part().equals(now.time().part());
        changes.add(new GirthChange(asMade.getKey(), asMade.getValue(), now.value(), otherPart));
      }
    }
    return changes;
  }

  /** Extension lost since the piece was made; negative is regained. Empty where none was read. */
  OptionalDouble sinceMade() {
    return madeFor.isEmpty() ? madeFor : now(deficits, madeFor.getAsDouble());
  }

  /** Extension lost since the first visit; negative is gained. */
  OptionalDouble sinceFirst() {
    return deficits.isEmpty() ? OptionalDouble.empty() : now(deficits, deficits.get(0).value());
  }

  /** Extension lost since the best reading; never negative. */
  OptionalDouble sinceBest() {
    return now(deficits, least(deficits));
  }

  /** Extension by the patient's own strength lost since its best reading. */
  OptionalDouble activeSinceBest() {
    return now(active, least(active));
  }

  /** Flexion lost since its best reading; never negative. */
  OptionalDouble flexionLost() {
    double most = flexions.stream().mapToDouble(DatedReading::value).max().orElse(0);
    OptionalDouble change = now(flexions, most);
    return change.isEmpty() ? change : OptionalDouble.of(-change.getAsDouble());
  }

  private static double least(List<DatedReading> readings) {
    return readings.stream().mapToDouble(DatedReading::value).min().orElse(0);
  }

  /** The last reading, less something. */
  private static OptionalDouble now(List<DatedReading> readings, double less) {
    return readings.isEmpty()
        ? OptionalDouble.empty()
        : OptionalDouble.of(readings.get(readings.size() - 1).value() - less);
  }

  /** The first visit with the best extension. */
  Optional<VisitTime> best() {
    return deficits.stream()
        .min(Comparator.comparingDouble(DatedReading::value))
        .map(DatedReading::time);
  }

  /** The soreness now; 0 where none was told. */
  double sore() {
    return soreness.isEmpty() ? 0 : soreness.get(soreness.size() - 1).value();
  }

  /** The level whose girth grew most, where one grew by more than can be told otherwise. */
  Optional<GirthChange> grown() {
    return girths.stream()
        .filter(GirthChange::grown)
        .max(Comparator.comparingDouble(GirthChange::change));
  }

  /** The level whose girth fell most, likewise. */
  Optional<GirthChange> fallen() {
    return girths.stream()
        .filter(GirthChange::fallen)
        .min(Comparator.comparingDouble(GirthChange::change));
  }

  /** A piece that sits so, the trough first. */
  Optional<Refit> sits(Refit.Verdict verdict) {
    return refits.stream().filter(refit -> refit.verdict() == verdict).findFirst();
  }

  /** The liner that takes up what the trough stands off; empty where none does it evenly. */
  OptionalDouble bridge() {
    return refits.isEmpty() ? OptionalDouble.empty() : LinerBridge.of(refits.get(0), liner);
  }
}
