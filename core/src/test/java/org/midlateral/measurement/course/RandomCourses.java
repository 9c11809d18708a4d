package org.midlateral.measurement.course;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Random;
import org.midlateral.measurement.HoldingDesign.GaugeReading;
import org.midlateral.measurement.Level;
import org.midlateral.measurement.Order;
import org.midlateral.measurement.course.PieceWork.PieceChange;
import org.midlateral.measurement.course.SkinReading.SkinState;
import org.midlateral.measurement.course.SkinReading.SorePlace;
import org.midlateral.measurement.course.SkinReading.TipState;
import org.midlateral.measurement.course.VisitTime.DayPart;

/** Invented courses of a finger that is given: readings that wander, some of them missing. */
public final class RandomCourses {
  private final Random random;

  public RandomCourses(long seed) {
    this.random = new Random(seed);
  }

  /** A course of one to eight visits, by days from the first. */
  public Course course(Order order) {
    List<Visit> visits = new ArrayList<>();
    double deficit = Math.toDegrees(order.measurements().pipExtensionDeficit());
    double flexion = 70 + random.nextInt(30);
    double swelling = 0;
    int day = 0;
    int n = 1 + random.nextInt(8);
    for (int i = 0; i < n; i++) {
      visits.add(visit(order, day, deficit, flexion, swelling));
      day += 1 + random.nextInt(14);
      deficit = Math.max(0, Math.min(45, deficit + random.nextInt(17) - 9));
      flexion = Math.max(50, flexion + random.nextInt(13) - 6);
      swelling = Math.max(-8, Math.min(4, swelling + random.nextInt(4) - 2));
    }
    return new Course(order, visits);
  }

  private Visit visit(Order order, int day, double deficit, double flexion, double swelling) {
    Map<Level, Double> girths = new EnumMap<>(Level.class);
    for (Map.Entry<Level, Double> girth : order.measurements().circumference().entrySet()) {
      if (random.nextInt(5) > 0) {
        girths.put(girth.getKey(), girth.getValue() + swelling);
      }
    }
    boolean sore = random.nextInt(4) == 0;
    return new Visit(
        new VisitTime(day, Optional.empty(), maybe(DayPart.values(), 2)),
        new MotionReading(maybe(deficit + random.nextInt(8), 3), maybe(deficit, 8)),
        new MotionReading(maybe(flexion - 5, 3), maybe(flexion, 3)),
        new MotionReading(maybe(40, 2), OptionalDouble.empty()),
        girths,
        maybe(4 + random.nextInt(5), 3),
        new SkinReading(
            maybe(SkinState.values(), 3),
            Optional.of(random.nextInt(30) == 0 ? TipState.COLD : TipState.USUAL),
            maybe(sore ? 3 + random.nextInt(5) : random.nextInt(3), 3),
            sore ? maybe(SorePlace.values(), 2) : Optional.empty()),
        maybe(0.25 + 0.25 * random.nextInt(3), 2),
        random.nextInt(4) == 0 ? OptionalInt.of(1 + random.nextInt(2)) : OptionalInt.empty(),
        random.nextInt(4) == 0
            ? new GaugeReading(
                OptionalDouble.of(0.5), OptionalDouble.of(25), OptionalDouble.empty())
            : new GaugeReading(
                OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty()),
        day > 0 && random.nextInt(5) == 0
            ? new PieceWork(PieceChange.NEW, List.of("trough.liner=0.5 mm"))
            : PieceWork.NONE,
        Optional.empty());
  }

  private OptionalDouble maybe(double value, int oneIn) {
    return random.nextInt(oneIn) > 0 || oneIn == 8
        ? OptionalDouble.of(value)
        : OptionalDouble.empty();
  }

  private <E> Optional<E> maybe(E[] values, int oneIn) {
    return random.nextInt(oneIn) == 0
        ? Optional.of(values[random.nextInt(values.length)])
        : Optional.empty();
  }
}
