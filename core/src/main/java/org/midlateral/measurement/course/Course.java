package org.midlateral.measurement.course;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.midlateral.measurement.Level;
import org.midlateral.measurement.Order;

/**
 * One finger from visit to visit.
 *
 * @param order that the first piece was made from
 * @param visits by time, one at least
 */
public record Course(Order order, List<Visit> visits) {

  public Course {
    visits = visits.stream().sorted((a, b) -> a.time().compareTo(b.time())).toList();
    if (visits.isEmpty()) {
      throw new IllegalArgumentException("a course has a visit at least");
    }
  }

  /** The first visit. */
  public Visit first() {
    return visits.get(0);
  }

  /** The last visit. */
  public Visit last() {
    return visits.get(visits.size() - 1);
  }

  /** Number of the visit, from 0, at which the present piece was made; 0 for the first piece. */
  public int presentPiece() {
    int made = 0;
    for (int i = 0; i < visits.size(); i++) {
      made = visits.get(i).piece().isNew() ? i : made;
    }
    return made;
  }

  /** How many pieces were made up to a visit, by its number from 0. */
  public int piecesMade(int visit) {
    return 1 + (int) visits.subList(0, visit + 1).stream().filter(v -> v.piece().isNew()).count();
  }

  /**
   * How short of extension the joint was, visit by visit up to one of them (degrees): by hand, or
   * where it was never read by hand, by the patient's own strength. The two are not mixed.
   *
   * @param visit number of the last one asked for, from 0
   */
  public List<DatedReading> deficits(int visit) {
    return oneKind(visit, Visit::deficit);
  }

  /** How far the PIP joint was bent, likewise (degrees). */
  public List<DatedReading> flexions(int visit) {
    return oneKind(visit, Visit::pipFlexion);
  }

  /**
   * Whether the extension that the present piece was made for, and the last that was read, are both
   * by hand or both by the patient's own strength; only then the two can be compared.
   */
  public boolean madeByTheSameKind() {
    boolean first = visits.stream().noneMatch(visit -> visit.piece().isNew());
    int made = presentPiece();
    return first || deficits(made).isEmpty() || byHand(made) == byHand(lastNumber());
  }

  private boolean byHand(int visit) {
    return !readings(visit, one -> one.deficit().passive()).isEmpty();
  }

  private List<DatedReading> oneKind(int visit, Function<Visit, MotionReading> motion) {
    List<DatedReading> passive = readings(visit, v -> motion.apply(v).passive());
    return passive.isEmpty() ? readings(visit, v -> motion.apply(v).active()) : passive;
  }

  /** The visits' readings of one thing, up to one of them; visits without it are passed over. */
  public List<DatedReading> readings(int visit, Function<Visit, OptionalDouble> read) {
    List<DatedReading> readings = new ArrayList<>();
    for (Visit one : visits.subList(0, visit + 1)) {
      read.apply(one).ifPresent(value -> readings.add(new DatedReading(one.time(), value)));
    }
    return readings;
  }

  /** The readings of a girth (mm), up to a visit. */
  public List<DatedReading> girths(int visit, Level level) {
    return readings(
        visit,
        one -> {
          Double girth = one.circumference().get(level);
          return girth == null ? OptionalDouble.empty() : OptionalDouble.of(girth);
        });
  }

  /** Number of the last visit. */
  public int lastNumber() {
    return visits.size() - 1;
  }
}
