package org.midlateral.relief;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.midlateral.Fingers;
import org.midlateral.digit.DigitSurface;
import org.midlateral.digit.TapedDigit;
import org.midlateral.measurement.Finding;

/** Bubbles that lie on one another. */
class AddingUpTest {
  private static final DigitSurface DIGIT = TapedDigit.of(Fingers.ring());

  private static ReliefBubble bubble(double girth, double station, double height) {
    return new ReliefBubble(DIGIT, girth, station, height, 6, 8);
  }

  private static Optional<Finding> found(ReliefBubble... bubbles) {
    return new Relief(List.of(bubbles)).addingUp();
  }

  @Test
  void threeOnOneSpotAreThreeTimesAsHigh() {
    Finding finding =
        found(bubble(10, 20, 1.5), bubble(10, 20, 1.5), bubble(10, 20, 1.5)).orElseThrow();
    assertThat(finding.value()).isCloseTo(4.5, within(1e-9));
    assertThat(finding.limit()).isEqualTo(1.5);
    assertThat(finding.text())
        .contains("20.0 mm from the web and 10.0 mm radial", "add up to 4.5 mm", "is 1.5 mm");
  }

  @Test
  void oneAloneAndTwoApartAddNothing() {
    assertThat(found()).isEmpty();
    assertThat(found(bubble(10, 20, 3))).isEmpty();
    assertThat(found(bubble(10, 20, 3), bubble(-10, 20, 3))).isEmpty();
    // Beside one another so that only their lowest parts meet.
    assertThat(found(bubble(10, 12, 1), bubble(10, 26, 1))).isEmpty();
  }

  /** Both at a distance d of their centres: twice h (1 - (d/2l)²)³ midway, by the definition. */
  @Test
  void halfOnOneAnotherIsToldByItsSum() {
    double sum = 2 * Math.pow(1 - Math.pow(4.0 / 2 / 8, 2), 3);
    Finding finding = found(bubble(10, 20, 1), bubble(10, 24, 1)).orElseThrow();
    assertThat(finding.value()).isCloseTo(sum, within(0.01));
  }

  /** Over the dorsal midline, where girth jumps. */
  @Test
  void overTheDorsumTheyMeetToo() {
    double half = DIGIT.circumference(20) / 2;
    assertThat(found(bubble(half - 1, 20, 1), bubble(1 - half, 20, 1))).isPresent();
  }
}
