package org.midlateral.recipe.joint;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.midlateral.measurement.file.Orders;
import org.midlateral.mechanics.Concerns;
import org.midlateral.mechanics.joint.JointAnswer;
import org.midlateral.recipe.Orthosis;

/**
 * A caution that speaks on every finger is read on none: at the usual design the samples are held,
 * and most of them without more on 1 cm² of skin than a night is compared with.
 */
class SamplesAtDefaultsTest {
  private static final List<String> SAMPLES =
      List.of("slim-little", "bulbous-ring", "covered-tip", "left-deficit", "middle-inches");

  /** With its shell, and the trough alone. */
  @ParameterizedTest
  @ValueSource(strings = {"yes", "no"})
  void mostAreHeldWithoutTooMuchPressure(String shell) throws Exception {
    List<String> pressed = new ArrayList<>();
    for (String sample : SAMPLES) {
      Orders.Result read =
          Orders.read(
              Path.of("..", "samples", sample + ".yaml"), List.of("dorsal-shell.make=" + shell));
      JointAnswer answer = WornOrthosis.of(Orthosis.make(read.order())).answer();
      assertThat(answer.angle()).as(sample).isBetween(0.5, 5.0);
      if (answer.squareCentimetre().pressure() > Concerns.PRESSURE_OF_A_NIGHT) {
        pressed.add(sample);
      }
    }
    assertThat(pressed).hasSizeLessThanOrEqualTo(2);
  }
}
