package org.midlateral.measurement.course;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.Optional;

/**
 * When a visit was.
 *
 * @param day from the first visit, 0 or more
 * @param date of it, where dates are kept
 * @param part of the day, where it was noted
 */
public record VisitTime(int day, Optional<LocalDate> date, Optional<DayPart> part)
    implements Comparable<VisitTime> {

  /** A part of the day; girths differ between them. */
  public enum DayPart {
    MORNING,
    EVENING
  }

  private static final Comparator<VisitTime> BY_TIME =
      Comparator.comparingInt(VisitTime::day)
          .thenComparingInt(time -> time.part.map(Enum::ordinal).orElse(-1));

  @Override
  public int compareTo(VisitTime other) {
    return BY_TIME.compare(this, other);
  }

  /** As a table shows it: the date, or the day. */
  public String shown() {
    return date.map(LocalDate::toString).orElse("day " + day);
  }
}
