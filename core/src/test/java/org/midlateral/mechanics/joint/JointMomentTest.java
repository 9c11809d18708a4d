package org.midlateral.mechanics.joint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.midlateral.Fingers;
import org.midlateral.measurement.HoldingDesign.GaugeReading;
import org.midlateral.measurement.HoldingDesign.JointDesign;

class JointMomentTest {
  private static final OptionalDouble NONE = OptionalDouble.empty();
  private static final GaugeReading UNREAD = new GaugeReading(NONE, NONE, NONE);

  private static JointDesign joint(OptionalDouble moment, OptionalDouble slope, GaugeReading read) {
    return new JointDesign(moment, slope, read, Math.toRadians(5));
  }

  @Test
  void fallsWithTheSlopeAtTheLimitAndRisesSteeplyBeyond() {
    JointMoment moment = new JointMoment(20, Math.toDegrees(1.5));
    assertThat(moment.at(0)).isEqualTo(20);
    double degree = Math.toRadians(1e-4);
    assertThat((moment.at(-degree) - moment.at(degree)) / 2e-4).isCloseTo(1.5, within(1e-7));
    assertThat(moment.at(Math.toRadians(-20)) - 20)
        .isGreaterThan(3 * (20 - moment.at(Math.toRadians(20))));
    assertThat(moment.times(2).at(0.1)).isCloseTo(2 * moment.at(0.1), within(1e-12));
  }

  /** What the tissue gives is its moment over the way, by the midpoint rule. */
  @Test
  void itsEnergyIsTheMomentOverTheAngle() {
    for (double slope : new double[] {0, 30, 200}) {
      JointMoment moment = new JointMoment(20, slope);
      double work = 0;
      for (int k = 0; k < 1000; k++) {
        work += moment.at((k + 0.5) * 3e-4) * 3e-4;
      }
      assertThat(moment.energy(0) - moment.energy(0.3)).isCloseTo(work, within(1e-6));
    }
    assertThat(new JointMoment(0, 0).at(0.2)).isZero();
    assertThatThrownBy(() -> new JointMoment(-1, 0)).isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void aGaugeReadingIsMetAtItsAngle() {
    double flexed = Math.toRadians(12);
    for (OptionalDouble slope : new OptionalDouble[] {NONE, OptionalDouble.of(70)}) {
      JointMoment moment = JointMoment.read(18, flexed, slope);
      assertThat(moment.at(flexed)).isCloseTo(18, within(1e-9));
      assertThat(moment.atLimit()).isGreaterThan(18);
      slope.ifPresent(s -> assertThat(moment.slope()).isEqualTo(s));
    }
    assertThat(JointMoment.read(18, 0, NONE).atLimit()).isEqualTo(18);
  }

  @Test
  void isStatedElseReadElseByTheFingersSize() {
    OptionalDouble force = OptionalDouble.of(0.8);
    GaugeReading read =
        new GaugeReading(force, OptionalDouble.of(25), OptionalDouble.of(Math.toRadians(15)));
    double deficit = Math.toRadians(15);
    assertThat(JointMoment.of(joint(OptionalDouble.of(33), NONE, read), 60, deficit).atLimit())
        .isEqualTo(33);
    assertThat(JointMoment.of(joint(NONE, NONE, read), 60, deficit).atLimit())
        .isCloseTo(20, within(1e-12));
    assertThat(JointMoment.of(joint(NONE, NONE, UNREAD), 60, 0).atLimit()).isEqualTo(20);
    assertThat(JointMoment.of(joint(NONE, NONE, UNREAD), 48, 0).atLimit())
        .isCloseTo(20 * 0.512, within(1e-12));
    JointMoment sloped = JointMoment.of(joint(NONE, OptionalDouble.of(2), UNREAD), 60, 0);
    assertThat(Math.toRadians(sloped.slope())).isCloseTo(2, within(1e-12));
    JointDesign usual = Fingers.design().holding().joint();
    assertThat(JointMoment.of(usual, 60, 0))
        .isEqualTo(new JointMoment(20, 20 / Math.toRadians(13)));
  }
}
