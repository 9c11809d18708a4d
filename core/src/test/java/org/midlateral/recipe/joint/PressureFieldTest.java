package org.midlateral.recipe.joint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.midlateral.measurement.file.Orders;
import org.midlateral.mechanics.joint.JointAnswer;
import org.midlateral.mechanics.joint.JointAnswer.PatchPressure;
import org.midlateral.recipe.Orthosis;

class PressureFieldTest {
  /**
   * Each patch against all of its piece, whatever their order: the mean by the bell curve of 2 mm
   * that the field is told to be.
   */
  @Test
  void isTheMeanOfThePatchesAbout() throws Exception {
    Path file = Path.of("..", "samples", "slim-little.yaml");
    WornOrthosis worn = WornOrthosis.of(Orthosis.make(Orders.read(file, List.of()).order()));
    JointAnswer answer = worn.answer();
    PressureField field = new PressureField(worn.made().digit(), answer);

    assertThat(answer.patches()).anyMatch(PatchPressure::dorsalShell);
    for (PatchPressure at : answer.patches()) {
      double round = worn.made().digit().circumference(at.station());
      double sum = 0;
      double weights = 0;
      for (PatchPressure p : answer.patches()) {
        double along = p.station() - at.station();
        double apart = Math.abs(p.girth() - at.girth());
        double across = Math.min(apart, round - apart);
        boolean near = Math.abs(along) < 6 && across < 10;
        if (near && p.dorsalShell() == at.dorsalShell()) {
          double weight = Math.exp(-(along * along + across * across) / 8);
          sum += weight * p.pressure();
          weights += weight;
        }
      }
      assertThat(field.under(at.dorsalShell(), at.station(), at.girth()))
          .isCloseTo(sum / weights, within(1e-12));
    }
    double beyond = worn.made().plainTrough().outline().proximal() - 5;
    assertThat(field.under(false, beyond, 0)).isZero();
  }
}
