package org.midlateral.recipe.course;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.midlateral.measurement.Level;
import org.midlateral.measurement.Order;
import org.midlateral.measurement.course.Course;
import org.midlateral.measurement.course.Visit;
import org.midlateral.measurement.course.VisitTime;
import org.midlateral.measurement.file.Orders;
import org.midlateral.recipe.refit.Refit;

/** The day on which a falling swelling leaves the piece loose. */
class LooseForecastTest {
  private static final Order ORDER =
      Orders.read(Path.of("..", "samples", "bulbous-ring.yaml"), List.of()).order();
  private static final double MADE = ORDER.measurements().circumference().get(Level.PIP);

  /** Visits every five days, at which the PIP joint's girth is read. */
  private static Course course(int visits, IntToDoubleFunction girth) {
    List<Visit> all = new ArrayList<>();
    for (int i = 0; i < visits; i++) {
      VisitTime time = new VisitTime(5 * i, Optional.empty(), Optional.empty());
      Visit first = Visit.first(ORDER.measurements(), time);
      all.add(
          new Visit(
              time,
              first.deficit(),
              first.pipFlexion(),
              first.dipFlexion(),
              Map.of(Level.PIP, girth.applyAsDouble(5 * i)),
              first.hoursWorn(),
              first.skin(),
              first.tension(),
              first.layers(),
              first.gauge(),
              first.piece(),
              first.note()));
    }
    return new Course(ORDER, all);
  }

  /** Of what is loose by the line already, the day is that of the last visit. */
  @Test
  void isTodayWhereItIsLooseAlready() {
    LooseForecast loose =
        LooseForecast.of(course(7, day -> MADE - 1.5 * day / 7), ORDER).orElseThrow();

    assertThat(loose.level()).isEqualTo(Level.PIP);
    assertThat(loose.perWeek()).isCloseTo(1.5, within(1e-9));
    assertThat(loose.day()).isEqualTo(30);
  }

  /** 0.9 mm a week: 3.77 mm are gone on day 29.3, seen from day 20 on; band by hand below. */
  @Test
  void hasTheBandOfTheLine() {
    LooseForecast loose =
        LooseForecast.of(course(5, day -> MADE - 0.9 * day / 7), ORDER).orElseThrow();

    // Five readings, mean day 10, Sxx 250; the line falls 0.12857 a day.
    double limit = MADE - 2 * Math.PI * 0.6;
    int earliest = 20;
    int latest = 20;
    while (line(earliest) - band(earliest) > limit) {
      earliest++;
    }
    while (latest < 400 && line(latest) + band(latest) > limit) {
      latest++;
    }
    assertThat(loose.day()).isEqualTo(30);
    assertThat(loose.earliest()).isEqualTo(earliest);
    assertThat(loose.latest().orElse(400)).isEqualTo(latest);
  }

  private static double line(int day) {
    return MADE - 0.9 * day / 7;
  }

  private static double band(int day) {
    return 1.96 * Math.sqrt(1 / 5.0 + Math.pow(day - 10, 2) / 250);
  }

  /** Tapes that are off by 1 mm each: the true day lies in the band 95 times of 100. */
  @Test
  void theBandHoldsTheTrueDay() {
    Random random = new Random(7);
    int held = 0;
    int told = 0;
    for (int i = 0; i < 1500; i++) {
      Course course = course(13, day -> MADE - 0.4 * day / 7 + random.nextGaussian());
      Optional<LooseForecast> loose = LooseForecast.of(course, ORDER);
      if (loose.isPresent()) {
        double day = 2 * Math.PI * Refit.LOOSE / (0.4 / 7);
        told++;
        held +=
            loose.get().earliest() <= day + 1 && loose.get().latest().orElse(999) >= day ? 1 : 0;
      }
    }
    assertThat(told).isGreaterThan(1200);
    assertThat(held / (double) told).isBetween(0.93, 0.98);
  }

  @Test
  void whatATapeMayFeignIsNoTrend() {
    assertThat(LooseForecast.of(course(4, day -> MADE - 0.1 * day / 7), ORDER)).isEmpty();
    assertThat(LooseForecast.of(course(2, day -> MADE - 3.0 * day), ORDER)).isEmpty();
    assertThat(LooseForecast.of(course(7, day -> MADE + 0.5 * day), ORDER)).isEmpty();
  }

  /** Steps of half a millimetre, as far as the gap that is left takes it. */
  @Test
  void aLinerBridgesWhatIsEven() {
    assertThat(LinerBridge.of(0.7, 0.6, 0.3, 0)).isEqualTo(OptionalDouble.of(0.5));
    assertThat(LinerBridge.of(1.3, 1.1, 0.3, 0)).isEqualTo(OptionalDouble.of(1.0));
    assertThat(LinerBridge.of(1.3, 0.2, 0.3, 0)).isEmpty();
    assertThat(LinerBridge.of(3.0, 3.0, 0.3, 0)).isEmpty();
    assertThat(LinerBridge.of(0.7, 0.6, 0.3, 2.5)).isEmpty();
  }
}
