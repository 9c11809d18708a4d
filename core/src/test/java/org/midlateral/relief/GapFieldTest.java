package org.midlateral.relief;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.midlateral.Fingers;
import org.midlateral.cut.MidlateralCut;
import org.midlateral.digit.TapedDigit;
import org.midlateral.measurement.Design.Bubble;
import org.midlateral.measurement.Design.DistalEnd;
import org.midlateral.measurement.Design.Make;
import org.midlateral.measurement.Design.ReliefDesign;
import org.midlateral.measurement.DesignRefused;
import org.midlateral.measurement.Level;
import org.midlateral.measurement.Measurements;
import org.midlateral.piece.GapField;
import org.midlateral.piece.Piece;
import org.midlateral.trough.Trough;

class GapFieldTest {
  private static final Measurements RING = Fingers.ring();

  private static Piece bare() throws Exception {
    TapedDigit digit = TapedDigit.of(RING);
    var design = Fingers.trough(0.5, DistalEnd.OPEN);
    return Trough.of(design, digit, MidlateralCut.of(RING, design, digit));
  }

  @Test
  void aBubbleIsItsHeightAtItsCentreAndNothingOutside() {
    GapField bubble = new ReliefBubble(TapedDigit.of(RING), 10, 25, 1.2, 6, 8);

    assertThat(bubble.at(10, 25)).isEqualTo(1.2);
    assertThat(bubble.at(16, 25)).isZero();
    assertThat(bubble.at(10, 33.001)).isZero();
    // h (1 - rho²)³ with rho² = 1/4.
    assertThat(bubble.at(13, 25)).isCloseTo(1.2 * 27 / 64, within(1e-12));
    assertThat(bubble.at(10, 29)).isCloseTo(1.2 * 27 / 64, within(1e-12));
  }

  @Test
  void slopesAreThoseOfTheGapAndHaveNoSteps() throws Exception {
    GapField gap =
        new Relief(List.of(new ReliefBubble(TapedDigit.of(RING), 9, 4, 1, 6, 8)))
            .over(bare())
            .gap();
    double h = 1e-5;
    double[] jet = new double[3];
    double[] next = new double[3];
    for (double s = -17.9; s < 14; s += 0.173) {
      double reach = s < 3 ? 15.5 * Math.sqrt(1 - Math.pow((3 - s) / 21, 2)) : 15.5;
      for (double g = -reach; g < reach; g += 0.37) {
        gap.jet(g, s, jet);
        assertThat(jet[1]).isCloseTo((gap.at(g + h, s) - gap.at(g - h, s)) / (2 * h), within(2e-3));
        assertThat(jet[2]).isCloseTo((gap.at(g, s + h) - gap.at(g, s - h)) / (2 * h), within(2e-3));
        gap.jet(g + 0.01, s + 0.01, next);
        assertThat(Math.hypot(next[1] - jet[1], next[2] - jet[2])).isLessThan(0.03);
      }
    }
  }

  /** The finger's girth has no end on the dorsum: values and slopes go on over its midline. */
  @Test
  void aBubbleGoesOnOverTheDorsalMidline() {
    TapedDigit digit = TapedDigit.of(RING);
    GapField bubble = new ReliefBubble(digit, 28, 33, 1.2, 8, 8);
    double[] jet = new double[3];
    double[] other = new double[3];
    double h = 1e-5;
    for (double s = 25.5; s < 41; s += 0.5) {
      double half = digit.circumference(s) / 2;
      bubble.jet(half, s, jet);
      bubble.jet(-half, s, other);
      assertThat(other[0]).isCloseTo(jet[0], within(1e-12));
      assertThat(other[1]).isCloseTo(jet[1], within(1e-12));
      // Along the midline itself, which the two sides see from either end.
      double along = jet[2] + jet[1] * digit.circumferenceByStation(s) / 2;
      assertThat(other[2] - other[1] * digit.circumferenceByStation(s) / 2)
          .isCloseTo(along, within(1e-9));
      for (double g = -half + 0.1; g < -half + 6; g += 0.37) {
        bubble.jet(g, s, other);
        assertThat(other[1])
            .isCloseTo((bubble.at(g + h, s) - bubble.at(g - h, s)) / (2 * h), within(1e-6));
        assertThat(other[2])
            .isCloseTo((bubble.at(g, s + h) - bubble.at(g, s - h)) / (2 * h), within(1e-6));
      }
    }
    // As far over the midline as the centre is before it: 8 mm round from the centre is the edge.
    double over = 28 + 4 - digit.circumference(33);
    assertThat(bubble.at(over, 33)).isCloseTo(1.2 * 27 / 64, within(1e-12));
    assertThat(digit.circumferenceByStation(33)).isNotZero();
  }

  @Test
  void aBubbleOffTheFingerIsRefused() {
    assertRefused(new Bubble(26, -34.5, 1, 8, 6), "relief.bubbles[0].girth");
    assertRefused(new Bubble(100, 0, 1, 8, 6), "relief.bubbles[0].station");
    assertRefused(new Bubble(70, 0, 1, 8, 20), "relief.bubbles[0].width");
  }

  private static void assertRefused(Bubble bubble, String key) {
    ReliefDesign design = new ReliefDesign(Make.NO, false, 1, 8, 6, 3, List.of(bubble));
    assertThatThrownBy(() -> Relief.of(RING, design, TapedDigit.of(RING)))
        .isInstanceOfSatisfying(
            DesignRefused.class, refused -> assertThat(refused.finding().key()).isEqualTo(key))
        .hasMessageStartingWith(key);
  }

  @Test
  void theGapIsNeverUnderTheClearance() throws Exception {
    GapField gap = bare().gap();
    for (double s = -18; s < 70; s += 0.5) {
      for (double g = -16; g <= 16; g += 0.5) {
        assertThat(gap.at(g, s)).isGreaterThanOrEqualTo(0.3);
      }
    }
    assertThat(gap.at(0, 30)).isEqualTo(0.3);
  }

  @Test
  void theFlareIsWholeAtTheTonguesEdge() throws Exception {
    assertThat(bare().gap().at(0, -18)).isCloseTo(0.3 + 0.8, within(1e-6));
    assertThat(bare().gap().at(0, -18 + 5.01)).isCloseTo(0.3, within(1e-3));
  }

  @Test
  void thePairIsMadeForASoreJoint() throws Exception {
    TapedDigit digit = TapedDigit.of(RING);

    // It sits on the PIP axis, 3 mm volar of the mid-lateral lines.
    List<ReliefBubble> pair =
        List.of(
            new ReliefBubble(digit, 66 / 4.0 - 3, 26.5, 1, 6, 8),
            new ReliefBubble(digit, -(66 / 4.0 - 3), 26.5, 1, 6, 8));
    assertThat(Relief.of(RING, pair(Make.AUTO, true), digit).bubbles()).isEqualTo(pair);
    assertThat(Relief.of(RING, pair(Make.YES, false), digit).bubbles()).isEqualTo(pair);
    assertThat(Relief.of(RING, pair(Make.NO, true), digit).bubbles()).isEmpty();
    // The PIP joint is 4 mm rounder than its neighbours: that alone is not enough.
    assertThat(Relief.of(RING, pair(Make.AUTO, false), digit).bubbles()).isEmpty();
  }

  private static ReliefDesign pair(Make make, boolean sore) {
    return new ReliefDesign(make, sore, 1, 8, 6, 3, List.of());
  }

  /**
   * Decided on the skin, which meets the tapes to rounding: just as bulbous counts as bulbous. From
   * 3 mm the pair is suggested, from 6 mm it is made.
   */
  @ParameterizedTest
  @CsvSource({
    "62, 66, 56, true, false",
    "62, 67.99, 56, true, false",
    "62, 68, 56, false, true",
    "56, 69.3, 63.3, false, true",
    "63.01, 66, 56, false, false",
    "56, 66, 63.01, false, false",
    "63, 66, 56, true, false",
    "66, 62, 66, false, false"
  })
  void bulbousIsSixMillimetresMoreThanBothNeighbours(
      double proximal, double pip, double middle, boolean suggested, boolean bulbous)
      throws Exception {
    Measurements finger =
        RING.withCircumference(
            Map.of(
                Level.PROXIMAL_PHALANX, proximal,
                Level.PIP, pip,
                Level.MIDDLE_PHALANX, middle,
                Level.TIP, 48.0));
    TapedDigit digit = TapedDigit.of(finger);

    assertThat(Relief.bulbous(finger, digit)).isEqualTo(bulbous);
    assertThat(Relief.suggested(finger, pair(Make.AUTO, false), digit)).isEqualTo(suggested);
    assertThat(Relief.suggested(finger, pair(Make.AUTO, true), digit)).isFalse();
    assertThat(Relief.suggested(finger, pair(Make.NO, false), digit)).isFalse();
    assertThat(Relief.of(finger, pair(Make.AUTO, false), digit).bubbles()).hasSize(bulbous ? 2 : 0);
  }
}
