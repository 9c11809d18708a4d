package org.midlateral.recipe.course;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.midlateral.measurement.course.Course;
import org.midlateral.measurement.course.DatedReading;
import org.midlateral.measurement.course.Visit;

/**
 * One visit beside the first and the one before (degrees; positive is lost).
 *
 * @param visit itself
 * @param number from 1
 * @param deficit extension deficit, as the course reads it
 * @param sinceFirst extension lost since the first reading
 * @param sinceBefore extension lost since the reading before
 * @param flexion as the course reads it
 * @param flexionSinceFirst flexion lost since the first reading
 * @param piece number of the piece that is worn from then on, from 1
 */
public record VisitLine(
    Visit visit,
    int number,
    OptionalDouble deficit,
    OptionalDouble sinceFirst,
    OptionalDouble sinceBefore,
    OptionalDouble flexion,
    OptionalDouble flexionSinceFirst,
    int piece) {

  /** All visits of a course, by time. */
  static List<VisitLine> of(Course course) {
    List<VisitLine> lines = new ArrayList<>();
    List<DatedReading> deficits = course.deficits(course.lastNumber());
    List<DatedReading> flexions = course.flexions(course.lastNumber());
    for (int i = 0; i < course.visits().size(); i++) {
      Visit visit = course.visits().get(i);
      OptionalDouble deficit = at(deficits, visit);
      OptionalDouble flexion = at(flexions, visit);
      lines.add(
          new VisitLine(
              visit,
              i + 1,
              deficit,
              less(deficit, first(deficits)),
              less(deficit, before(deficits, visit)),
              flexion,
              less(first(flexions), flexion),
              course.piecesMade(i)));
    }
    return lines;
  }

  private static OptionalDouble at(List<DatedReading> readings, Visit visit) {
    return readings.stream()
        .filter(reading -> reading.time().equals(visit.time()))
        .mapToDouble(DatedReading::value)
        .findFirst();
  }

  private static OptionalDouble first(List<DatedReading> readings) {
    return readings.stream().mapToDouble(DatedReading::value).findFirst();
  }

  private static OptionalDouble before(List<DatedReading> readings, Visit visit) {
    return readings.stream()
        .filter(reading -> reading.time().compareTo(visit.time()) < 0)
        .mapToDouble(DatedReading::value)
        .reduce((earlier, later) -> later);
  }

  private static OptionalDouble less(OptionalDouble value, OptionalDouble less) {
    return value.isPresent() && less.isPresent()
        ? OptionalDouble.of(value.getAsDouble() - less.getAsDouble())
        : OptionalDouble.empty();
  }
}
