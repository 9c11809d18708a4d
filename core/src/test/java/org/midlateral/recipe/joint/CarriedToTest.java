package org.midlateral.recipe.joint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.midlateral.measurement.file.Orders;
import org.midlateral.mechanics.joint.JointAnswer;
import org.midlateral.recipe.Orthosis;

/**
 * A change is answered by how the plastic bent before it, until the pieces themselves are factored:
 * the two answers are held against each other.
 */
class CarriedToTest {
  private static final Percentage PRESSURE = Percentage.withPercentage(2);

  /** Of the largest pressure on a patch. */
  private static final double PATCH = 0.03;

  private static Orthosis made(String sample, String... overrides) throws Exception {
    Path file = Path.of("..", "samples", sample + ".yaml");
    return Orthosis.make(Orders.read(file, List.of(overrides)).order());
  }

  private static JointAnswer whole(WornOrthosis worn) throws Exception {
    return worn.finger().holdWhole(worn.fastening(), worn.moment());
  }

  /**
   * Worst is a shallow trough that becomes shallower, whose plastic gives way by more than a degree
   * and of whose section nothing is carried.
   */
  @ParameterizedTest
  @CsvSource({
    "slim-little, dorsal-shell.make=no, trough.wrap=0.3, trough.wrap=0.27, 0.4",
    "slim-little, trough.wrap=0.3, trough.wall=1.4, trough.wall=1.6, 0.15",
    "covered-tip, closure.kind=wrap, circumference.pip=60, circumference.pip=62, 0.05",
    "middle-inches, closure.kind=tape, trough.wrap=0.5, trough.wrap=0.45, 0.15",
    "left-deficit, trough.wrap=0.5, relief.make=no, relief.make=yes, 0.05"
  })
  void asGoodAsThePiecesThemselves(
      String sample, String both, String first, String then, double degrees) throws Exception {
    WornOrthosis before = WornOrthosis.of(made(sample, both, first)).settled();
    Orthosis after = made(sample, both, then);
    JointAnswer carried = whole(before.carriedTo(after).orElseThrow());
    JointAnswer itself = whole(WornOrthosis.of(after));
    assertThat(carried.angle()).isCloseTo(itself.angle(), within(degrees));
    assertThat(carried.angle()).isNotEqualTo(whole(before).angle());
    assertThat(carried.squareCentimetre().pressure())
        .isCloseTo(itself.squareCentimetre().pressure(), PRESSURE);
    assertThat(carried.patches()).hasSameSizeAs(itself.patches());
    double most = itself.spot().pressure();
    for (int k = 0; k < carried.patches().size(); k++) {
      assertThat(carried.patches().get(k).pressure())
          .isCloseTo(itself.patches().get(k).pressure(), within(PATCH * most));
    }
  }

  /** Nothing changed: the same answer to rounding. */
  @Test
  void whatDidNotChangeIsTheSame() throws Exception {
    Orthosis made = made("slim-little");
    WornOrthosis itself = WornOrthosis.of(made);
    JointAnswer carried = whole(itself.settled().carriedTo(made).orElseThrow());
    assertThat(carried.angle()).isCloseTo(whole(itself).angle(), within(1e-6));
  }

  @Test
  void aShellMoreOrLessIsNotCarried() throws Exception {
    WornOrthosis both = WornOrthosis.of(made("slim-little"));
    assertThat(both.carriedTo(made("slim-little", "dorsal-shell.make=no"))).isEmpty();
  }
}
