package org.midlateral.recipe.rigidity;

import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.SplittableRandom;
import java.util.function.ToDoubleFunction;
import java.util.stream.LongStream;
import org.midlateral.digit.TapedDigit;
import org.midlateral.measurement.DesignRefused;
import org.midlateral.measurement.Level;
import org.midlateral.measurement.Measurements;
import org.midlateral.measurement.NotComputable;
import org.midlateral.measurement.Order;
import org.midlateral.mechanics.joint.JointMoment;
import org.midlateral.recipe.Orthosis;
import org.midlateral.work.Interruption;

/**
 * How far the figures go astray with the tape: every circumference and every length is given an
 * error of its own, drawn from a normal distribution, and the order is made again. A standard error
 * of about 1 mm is an assumption, from memory.
 *
 * @param samples how many were drawn
 * @param seed they were drawn from; the same seed gives the same bands on any number of cores
 * @param tapeError standard deviation of each reading (mm)
 * @param refused samples that could not be made, left out of the bands
 * @param clearance least gap between the piece made as measured, its liner in, and the finger as
 *     drawn, PIP axis over PIP axis (mm); negative where it presses in
 * @param bendingAtPip EI at the PIP axis of the trough made from the drawn readings (N·mm²)
 * @param proximalForce under the nominal moment (N)
 * @param distalForce under the nominal moment (N)
 * @param pipForce under the nominal moment (N)
 * @param extensionLost of the trough as a beam (degrees)
 */
public record Bands(
    int samples,
    long seed,
    double tapeError,
    int refused,
    Band clearance,
    Band bendingAtPip,
    Band proximalForce,
    Band distalForce,
    Band pipForce,
    Band extensionLost) {

  /**
   * The middle nine tenths of a figure.
   *
   * @param low 5 % lie under it
   * @param median half lie under it
   * @param high 5 % lie over it
   */
  public record Band(double low, double median, double high) {}

  private static final int LENGTHS = 4;

  private record Sample(double clearance, double[] figures) {}

  /**
   * Draws and makes samples, on all cores.
   *
   * @param samples at least 1
   * @param tapeError standard deviation of each reading (mm)
   * @throws DesignRefused where the nominal order cannot be made
   * @throws NotComputable where no sample of it can be made
   */
  public static Bands sample(Order order, int samples, long seed, double tapeError)
      throws DesignRefused, NotComputable {
    Orthosis nominal = Orthosis.make(Variant.withoutShell(order));
    Order loaded = Variant.moment(order, JointMoment.of(order, nominal.digit()));
    Interruption asked = Interruption.current();
    List<Sample> made =
        LongStream.range(0, samples)
            .parallel()
            .mapToObj(
                i -> {
                  asked.check();
                  return one(nominal, loaded, drawn(order.measurements(), i, seed, tapeError));
                })
            .toList()
            .stream()
            .filter(Objects::nonNull)
            .toList();
    if (made.isEmpty()) {
      throw new NotComputable(
          String.format(
              Locale.ROOT,
              "of %d sets of readings drawn with an error of %.1f mm none is of a finger that the"
                  + " design can be made on",
              samples,
              tapeError));
    }
    return of(made, samples, seed, tapeError);
  }

  private static double[] figures(ComparedTrough made) {
    return new double[] {
      made.bendingAtPip(),
      made.support().proximalForce(),
      made.support().distalForce(),
      made.support().pipForce(),
      made.response().extensionLost()
    };
  }

  private static Bands of(List<Sample> made, int samples, long seed, double tapeError) {
    return new Bands(
        samples,
        seed,
        tapeError,
        samples - made.size(),
        band(made, Sample::clearance),
        band(made, sample -> sample.figures[0]),
        band(made, sample -> sample.figures[1]),
        band(made, sample -> sample.figures[2]),
        band(made, sample -> sample.figures[3]),
        band(made, sample -> sample.figures[4]));
  }

  /** One sample, or null where it cannot be made. */
  private static Sample one(Orthosis nominal, Order loaded, Measurements drawn) {
    if (!TapedDigit.isPossible(drawn)) {
      return null;
    }
    try {
      ComparedTrough made = ComparedTrough.trough(loaded.withMeasurements(drawn));
      double clearance =
          FitOnFinger.leastClearance(nominal.trough(), made.solids().get(0).piece().digit())
              - nominal.order().design().trough().liner();
      return new Sample(clearance, figures(made));
    } catch (DesignRefused e) {
      return null;
    }
  }

  private static Measurements drawn(Measurements m, long i, long seed, double error) {
    return off(m, errors(m.circumference().size() + LENGTHS, i, seed, error));
  }

  /** Errors of sample i (mm): a generator of its own, so that no order of work matters. */
  private static double[] errors(int readings, long i, long seed, double error) {
    SplittableRandom random = new SplittableRandom(seed * 0x9E3779B97F4A7C15L + i);
    double[] errors = new double[readings];
    for (int k = 0; k < readings; k++) {
      errors[k] = error * random.nextGaussian();
    }
    return errors;
  }

  /** Readings that are off: the girths first, then the lengths. */
  private static Measurements off(Measurements m, double[] errors) {
    Map<Level, Double> tape = new EnumMap<>(Level.class);
    int k = 0;
    for (Map.Entry<Level, Double> read : m.circumference().entrySet()) {
      tape.put(read.getKey(), read.getValue() + errors[k++]);
    }
    return m.withCircumference(tape)
        .withLengths(
            m.palmarCreaseToWeb() + errors[k],
            m.webToPip() + errors[k + 1],
            m.pipToDip() + errors[k + 2],
            m.dipToTip() + errors[k + 3]);
  }

  private static Band band(List<Sample> made, ToDoubleFunction<Sample> figure) {
    double[] sorted = made.stream().mapToDouble(figure).sorted().toArray();
    return new Band(quantile(sorted, 0.05), quantile(sorted, 0.5), quantile(sorted, 0.95));
  }

  /** Linear between the ordered values, the first being 0 and the last 1. */
  static double quantile(double[] sorted, double share) {
    double at = share * (sorted.length - 1);
    int low = (int) at;
    int high = Math.min(sorted.length - 1, low + 1);
    return sorted[low] + (at - low) * (sorted[high] - sorted[low]);
  }
}
