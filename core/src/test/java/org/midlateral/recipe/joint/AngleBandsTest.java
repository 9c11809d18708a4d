package org.midlateral.recipe.joint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.midlateral.LongRun;
import org.midlateral.digit.DigitSurface;
import org.midlateral.measurement.DesignRefused;
import org.midlateral.measurement.Measurements;
import org.midlateral.measurement.NotComputable;
import org.midlateral.measurement.Order;
import org.midlateral.measurement.file.Orders;
import org.midlateral.mechanics.joint.JointAnswer;
import org.midlateral.recipe.Orthosis;
import org.midlateral.recipe.joint.AngleBands.Errors;

/**
 * The bands beside draws in which all is off at once: the piece is made anew from readings that are
 * off, lengths too, and worn on the finger as it is, with other skin and another joint.
 */
@Tag(LongRun.TAG)
class AngleBandsTest {
  private static final int DRAWS = LongRun.count(40, 400);

  @Test
  void agreeWithDrawsInWhichAllIsOffAtOnce() throws Exception {
    Path file = Path.of("..", "samples", "slim-little.yaml");
    Order order = Orders.read(file, List.of("dorsal-shell.make=no")).order();
    WornOrthosis worn = WornOrthosis.of(Orthosis.make(order));
    AngleBands bands =
        AngleBands.of(worn, worn.finger().near(worn.fastening(), worn.moment()), worn.answer());
    SplittableRandom random = new SplittableRandom(2026);
    double[] angles = new double[DRAWS];
    double[] pressures = new double[DRAWS];
    int made = 0;
    for (int i = 0; i < DRAWS; i++) {
      double[] z = new double[order.measurements().circumference().size() + 8];
      Arrays.setAll(z, k -> random.nextGaussian());
      try {
        JointAnswer answer = drawn(worn, z);
        angles[made] = AngleBands.measure(answer.angle());
        pressures[made++] = Math.log(answer.squareCentimetre().pressure());
      } catch (DesignRefused | NotComputable e) {
        // A reading so far off that nothing can be made of it.
      }
    }
    assertThat(made).isGreaterThan(DRAWS * 9 / 10);
    compare(
        "angle",
        AngleBands.measure(bands.angle().low()),
        AngleBands.measure(bands.angle().high()),
        Arrays.copyOf(angles, made));
    compare(
        "pressure",
        Math.log(bands.pressure().low()),
        Math.log(bands.pressure().high()),
        Arrays.copyOf(pressures, made));
  }

  /** Within three and a half standard errors of such a quantile, and a twentieth. */
  private static void compare(String what, double foundLow, double foundHigh, double[] logs) {
    Arrays.sort(logs);
    double mean = Arrays.stream(logs).average().orElseThrow();
    double spread =
        Math.sqrt(Arrays.stream(logs).map(x -> (x - mean) * (x - mean)).average().orElseThrow());
    // Of a normal quantile at 5 %: sqrt(p (1 - p) / n) over the density there.
    double error = spread * Math.sqrt(0.05 * 0.95 / logs.length) / 0.1031;
    double low = logs[(int) (0.05 * logs.length)];
    double high = logs[(int) Math.ceil(0.95 * logs.length) - 1];
    System.out.printf(
        "%s: %.3g to %.3g of %d draws, %.3g to %.3g estimated%n",
        what, low, high, logs.length, foundLow, foundHigh);
    assertThat(foundLow).as(what).isCloseTo(low, within(3.5 * error + 0.05));
    assertThat(foundHigh).as(what).isCloseTo(high, within(3.5 * error + 0.05));
  }

  private static JointAnswer drawn(WornOrthosis worn, double[] z)
      throws DesignRefused, NotComputable {
    Order order = worn.made().order();
    Measurements read = order.measurements();
    int girths = read.circumference().size();
    Errors errors = Errors.of(Arrays.copyOf(z, girths + 4));
    Measurements wrong =
        read.withCircumference(AngleBands.girths(read, errors.girths()))
            .withLengths(
                read.palmarCreaseToWeb() + z[girths + 4],
                read.webToPip() + z[girths + 5],
                read.pipToDip() + z[girths + 6],
                read.dipToTip() + z[girths + 7]);
    WornOrthosis piece = WornOrthosis.of(Orthosis.make(order.withMeasurements(wrong)));
    DigitSurface real = worn.made().digit();
    DigitSurface drawn = piece.made().digit();
    double shift = real.pipAxis() - drawn.pipAxis();
    return piece
        .finger()
        .withHolding(AngleBands.skin(order.design().holding(), errors))
        .onThicker(
            s ->
                (real.circumference(Math.min(s + shift, real.pulpEnd() - 1))
                        - drawn.circumference(s))
                    / (2 * Math.PI))
        .holdWhole(piece.fastening(), AngleBands.moment(worn, errors));
  }
}
