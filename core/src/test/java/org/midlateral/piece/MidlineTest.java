package org.midlateral.piece;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.midlateral.Fingers;
import org.midlateral.digit.Slice;
import org.midlateral.digit.TapedDigit;

/** Both midlines on the section of an invented finger: lengths and places hold, not formulas. */
class MidlineTest {
  private final Slice slice = TapedDigit.of(Fingers.ring()).slice(26);
  private final double half = slice.circumference() / 2;

  /** A girth from a midline is the way along the skin from that midline's point. */
  @ParameterizedTest
  @EnumSource
  void girthIsTheWayFromTheMidline(Midline midline) {
    double start = midline == Midline.VOLAR ? 0 : Math.PI;
    for (double own : new double[] {-2.9, -1.2, -0.3, 0.3, 1.2, 2.9}) {
      double way = 0;
      int n = 2000;
      for (int i = 0; i < n; i++) {
        double here = start + own * i / n;
        way += slice.point(here).distance(slice.point(start + own * (i + 1) / n));
      }
      double girth = midline.girth(slice, own);

      assertThat(girth).isCloseTo(Math.copySign(way, own), within(1e-4));
      assertThat(midline.angle(slice, girth)).isCloseTo(own, within(1e-12));
      assertThat(slice.point(midline.skinAngle(own)).distance(slice.point(start + own)))
          .isLessThan(1e-12);
    }
  }

  /** Places of the skin keep to half a round on either side, and come back. */
  @ParameterizedTest
  @EnumSource
  void theWayBackIsTheWayThere(Midline midline) {
    for (double skin = -0.99 * half; skin < half; skin += 0.2) {
      double own = midline.ownGirth(skin, 2 * half);
      double angle = slice.angle(skin);

      assertThat(Math.abs(own)).isLessThanOrEqualTo(half);
      assertThat(midline.skinGirth(own, 2 * half)).isCloseTo(skin, within(1e-12));
      assertThat(Math.abs(midline.ownAngle(angle))).isLessThanOrEqualTo(Math.PI);
      assertThat(midline.skinAngle(midline.ownAngle(angle))).isCloseTo(angle, within(1e-12));
      assertThat(midline.angle(slice, own)).isCloseTo(midline.ownAngle(angle), within(1e-12));
    }
  }

  /** Halfway round both sides, the mid-lateral points lie a quarter off either midline. */
  @ParameterizedTest
  @EnumSource
  void theMidlateralPointsLieHalfway(Midline midline) {
    for (int side = -1; side <= 1; side += 2) {
      assertThat(Math.abs(midline.ownGirth(side * half / 2, 2 * half))).isEqualTo(half / 2);
      assertThat(Math.abs(midline.ownAngle(side * Math.PI / 2))).isEqualTo(Math.PI / 2);
    }
    assertThat(Math.abs(Midline.DORSAL.ownGirth(0, 2 * half))).isEqualTo(half);
    assertThat(Midline.DORSAL.ownAngle(Math.PI)).isZero();
    assertThat(Midline.DORSAL.ownAngle(-Math.PI)).isZero();
  }
}
