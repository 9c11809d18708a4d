package org.midlateral.recipe.course;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.midlateral.measurement.Level;
import org.midlateral.measurement.Order;
import org.midlateral.measurement.ReadingError;
import org.midlateral.measurement.course.Course;
import org.midlateral.measurement.course.DatedReading;
import org.midlateral.recipe.refit.Refit;

/**
 * On which day a falling swelling leaves the present piece loose: where the straight line through
 * the girths since it was made meets the girth at which it stands off by {@link Refit#LOOSE} more
 * than as made. Told only where the fall is more than the tape's error can feign.
 *
 * <p>The line is that of least squares; its band at a day t is 1.96 s √(1/n + (t − mean)²/Sxx) with
 * the tape's standard error s, and the day's band is where the band's two edges meet that girth
 * (inverse prediction, N. R. Draper and H. Smith, Applied Regression Analysis, from memory).
 *
 * @param level whose girth falls to it first
 * @param day most likely, from the first visit
 * @param earliest day of the band
 * @param latest day of the band; empty where it lies more than a year ahead
 * @param perWeek fall of the girth (mm a week), positive
 * @param bridge liner that takes it up from that day on (mm); empty where none does
 */
public record LooseForecast(
    Level level, int day, int earliest, OptionalInt latest, double perWeek, OptionalDouble bridge) {
  private static final double Z = 1.96;
  private static final int LEAST_READINGS = 3;
  private static final int YEAR = 365;

  /** A straight line through girths over days. */
  private record Trend(double meanDay, double meanGirth, double slope, double sxx, int n) {
    static Trend through(List<DatedReading> readings) {
      double day = readings.stream().mapToDouble(r -> r.time().day()).average().orElseThrow();
      double girth = readings.stream().mapToDouble(DatedReading::value).average().orElseThrow();
      double sxx = 0;
      double sxy = 0;
      for (DatedReading reading : readings) {
        double off = reading.time().day() - day;
        sxx += off * off;
        sxy += off * (reading.value() - girth);
      }
      return new Trend(day, girth, sxx > 0 ? sxy / sxx : 0, sxx, readings.size());
    }

    boolean falls() {
      return sxx > 0 && slope + Z * ReadingError.TAPE.standardError() / Math.sqrt(sxx) < 0;
    }

    double at(double day) {
      return meanGirth + slope * (day - meanDay);
    }

    /** Half of the width of the band. */
    double off(double day) {
      double from = day - meanDay;
      return Z * ReadingError.TAPE.standardError() * Math.sqrt(1.0 / n + from * from / sxx);
    }
  }

  /** The forecast of a course; empty where no girth falls, or none so far within a year. */
  static Optional<LooseForecast> of(Course course, Order present) {
    int made = course.visits().get(course.presentPiece()).time().day();
    int today = course.last().time().day();
    List<LooseForecast> all = new ArrayList<>();
    for (Map.Entry<Level, Double> asMade : present.measurements().circumference().entrySet()) {
      List<DatedReading> since =
          course.girths(course.lastNumber(), asMade.getKey()).stream()
              .filter(reading -> reading.time().day() >= made)
              .toList();
      if (since.size() >= LEAST_READINGS) {
        double loose = asMade.getValue() - 2 * Math.PI * Refit.LOOSE;
        of(asMade.getKey(), Trend.through(since), loose, today, present).ifPresent(all::add);
      }
    }
    return all.stream().min(Comparator.comparingInt(LooseForecast::day));
  }

  private static Optional<LooseForecast> of(
      Level level, Trend trend, double loose, int today, Order present) {
    if (!trend.falls()) {
      return Optional.empty();
    }
    OptionalInt day = OptionalInt.empty();
    OptionalInt earliest = OptionalInt.empty();
    OptionalInt latest = OptionalInt.empty();
    for (int t = today; t <= today + YEAR; t++) {
      earliest = first(earliest, trend.at(t) - trend.off(t) <= loose, t);
      day = first(day, trend.at(t) <= loose, t);
      latest = first(latest, trend.at(t) + trend.off(t) <= loose, t);
    }
    if (day.isEmpty()) {
      return Optional.empty();
    }
    double clearance = present.design().trough().clearance();
    double liner = present.design().trough().liner();
    OptionalDouble bridge = LinerBridge.of(Refit.LOOSE, Refit.LOOSE, clearance, liner);
    return Optional.of(
        new LooseForecast(
            level, day.getAsInt(), earliest.orElse(today), latest, -7 * trend.slope(), bridge));
  }

  private static OptionalInt first(OptionalInt known, boolean now, int day) {
    return known.isEmpty() && now ? OptionalInt.of(day) : known;
  }

  /**
   * In a sentence.
   *
   * @param course that it is of
   */
  public String sentence(Course course) {
    String when =
        day <= course.last().time().day()
            ? "by that trend the present piece is loose already"
            : String.format(
                Locale.ROOT,
                "the present piece gets loose about %s (between %s and %s)",
                shown(course, day),
                shown(course, earliest),
                latest.isPresent()
                    ? shown(course, latest.getAsInt())
                    : "more than a year from now");
    String then =
        bridge.isPresent()
            ? String.format(
                Locale.ROOT, "; a liner of %.1f mm then fills the gap.", bridge.getAsDouble())
            : "; no liner fills that gap: plan for another piece.";
    return String.format(
            Locale.ROOT, "At the %s the girth falls by %.1f mm a week: ", level.words(), perWeek)
        + when
        + then;
  }

  /** A day as the course counts. */
  private static String shown(Course course, int day) {
    return course
        .first()
        .time()
        .date()
        .map(first -> first.plusDays(day - course.first().time().day()).toString())
        .orElse("day " + day);
  }
}
