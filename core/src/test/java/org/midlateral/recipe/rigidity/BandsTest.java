package org.midlateral.recipe.rigidity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.ForkJoinPool;
import org.junit.jupiter.api.Test;
import org.midlateral.Fingers;
import org.midlateral.RoundFinger;
import org.midlateral.digit.TapedDigit;
import org.midlateral.measurement.Measurements;
import org.midlateral.measurement.NotComputable;
import org.midlateral.measurement.Order;
import org.midlateral.measurement.file.Orders;
import org.midlateral.recipe.Orthosis;
import org.midlateral.solid.Solid;

class BandsTest {
  /** The one draw from this seed is of no finger. */
  private static final long NONE = 6;

  private static final Order ORDER = Fingers.order(Fingers.ring());

  @Test
  void sameSeedSameBandsOnAnyNumberOfThreads() throws Exception {
    Bands all = Bands.sample(ORDER, 24, 7, 1);
    ForkJoinPool single = new ForkJoinPool(1);
    Bands one = single.submit(() -> Bands.sample(ORDER, 24, 7, 1)).get();
    single.shutdown();

    assertThat(one).isEqualTo(all);
    assertThat(all.refused()).isZero();
    assertThat(Bands.sample(ORDER, 24, 8, 1).bendingAtPip()).isNotEqualTo(all.bendingAtPip());
    ordered(all.clearance());
    ordered(all.bendingAtPip());
    ordered(all.extensionLost());
    // EI goes with the cube of the girth: about 4 % of spread for 1 mm in 66.
    double spread = all.bendingAtPip().high() / all.bendingAtPip().low() - 1;
    assertThat(spread).isBetween(0.06, 0.3);
  }

  /** A tape that is off by a centimetre often reads what no finger can be; such draws count. */
  @Test
  void drawsOfNoFingerAreLeftOut() throws Exception {
    Path file = Path.of("../samples/bulbous-ring.yaml");
    Order wide = Orders.read(file, List.of("dorsal-shell.make=no")).order();

    Bands bands = Bands.sample(wide, 12, 1, 10);
    assertThat(bands.refused()).isBetween(1, 11);
    assertThat(bands.bendingAtPip().low()).isPositive();
    assertThatThrownBy(() -> Bands.sample(wide, 1, NONE, 10))
        .isInstanceOf(NotComputable.class)
        .hasMessageContaining("of 1 sets of readings drawn with an error of 10.0 mm none");
  }

  private static void ordered(Bands.Band band) {
    assertThat(band.low()).isLessThan(band.median());
    assertThat(band.median()).isLessThan(band.high());
  }

  @Test
  void withoutErrorTheBandsCloseOnTheNominal() throws Exception {
    Bands bands = Bands.sample(ORDER, 2, 1, 0);
    ComparedTrough nominal = ComparedTrough.trough(ORDER);

    assertThat(bands.bendingAtPip().low())
        .isEqualTo(bands.bendingAtPip().high())
        .isEqualTo(nominal.bendingAtPip());
    double force = nominal.support().distalForce();
    assertThat(bands.distalForce().median()).isCloseTo(force, within(1e-12));
    assertThat(bands.clearance().median()).isCloseTo(0.3, within(0.01));
  }

  /** A finger all round larger by 1 mm takes 1/2 pi mm of the clearance, where it is round. */
  @Test
  void aThickerFingerTakesClearance() throws Exception {
    Measurements plain = round(62);
    Solid trough = Orthosis.make(Fingers.order(plain)).trough();

    assertThat(FitOnFinger.leastClearance(trough, TapedDigit.of(plain)))
        .isCloseTo(0.3, within(0.005));
    assertThat(FitOnFinger.leastClearance(trough, TapedDigit.of(round(63))))
        .isCloseTo(0.3 - 1 / (2 * Math.PI), within(0.005));
  }

  /** As long as the ring finger of the tests. */
  private static Measurements round(double girth) {
    return RoundFinger.of(girth / (2 * Math.PI), 21, 24, 23, 24);
  }

  @Test
  void quantilesLieBetweenTheValues() {
    double[] sorted = {1, 2, 4, 8, 16};

    assertThat(Bands.quantile(sorted, 0.5)).isEqualTo(4);
    assertThat(Bands.quantile(sorted, 0.05)).isCloseTo(1.2, within(1e-12));
    assertThat(Bands.quantile(sorted, 1)).isEqualTo(16);
    assertThat(Bands.quantile(new double[] {3}, 0.95)).isEqualTo(3);
  }
}
