package org.midlateral.viewer.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

class ScaleTest {
  @Test
  void endsAndStepsAreRound() {
    Scale scale = Scale.between(0.27, 1.94);
    assertThat(scale.low()).isCloseTo(0.25, within(1e-12));
    assertThat(scale.high()).isCloseTo(2, within(1e-12));
    assertThat(scale.marks()).hasSizeBetween(4, 8);
  }

  /** What differs fills most of the map, whatever its size. */
  @Test
  void aScaleFitsItsValues() {
    Scale clearances = Scale.between(1.3, 2.498);
    assertThat(clearances.low()).isCloseTo(1.25, within(1e-12));
    assertThat(clearances.high()).isCloseTo(2.5, within(1e-12));
    Random random = new Random(7);
    for (int i = 0; i < 2000; i++) {
      double size = Math.pow(10, 12 * random.nextDouble() - 6);
      double low = size * random.nextDouble();
      double high = low + size * (0.05 + random.nextDouble());
      Scale scale = Scale.between(low, high);
      assertThat(scale.low()).isLessThanOrEqualTo(low + 1e-9 * size);
      assertThat(scale.high()).isGreaterThanOrEqualTo(high - 1e-9 * size);
      assertThat(scale.high() - scale.low()).isLessThan(1.5 * (high - low));
      assertThat(scale.marks()).hasSizeBetween(4, 10);
    }
  }

  @Test
  void valuesAllAlikeStillGetAScaleAboutThem() {
    Scale scale = Scale.over(new double[] {1.6, 1.6, Double.NaN});
    assertThat(scale.low()).isLessThan(1.6);
    assertThat(scale.high()).isGreaterThan(1.6);
  }

  /** Ends and middle of the published map: matplotlib, cm.viridis (CC0). */
  @Test
  void theMapHasThePublishedColours() {
    assertThat(ColourMap.VIRIDIS.colour(0)).isEqualTo(0x440154);
    assertThat(ColourMap.VIRIDIS.colour(1)).isEqualTo(0xfde725);
    // cm.viridis(0.5) is #21918c.
    int middle = ColourMap.VIRIDIS.colour(0.5);
    assertThat(middle >> 16 & 255).isCloseTo(0x21, within(4));
    assertThat(middle >> 8 & 255).isCloseTo(0x91, within(4));
    assertThat(middle & 255).isCloseTo(0x8c, within(4));
  }

  /** Read in grey it still goes one way: lightness by the weights of ITU-R BT.709. */
  @Test
  void theMapGrowsLighterAllTheWay() {
    double before = -1;
    for (int i = 0; i <= 100; i++) {
      int c = ColourMap.VIRIDIS.colour(i / 100.0);
      double light =
          0.2126 * lin(c >> 16 & 255) + 0.7152 * lin(c >> 8 & 255) + 0.0722 * lin(c & 255);
      assertThat(light).isGreaterThan(before);
      before = light;
    }
  }

  /**
   * Published colours: the ends and the middle that Moreland 2009 gives for cool to warm, and what
   * matplotlib, cm.coolwarm, has at a quarter and at three quarters.
   */
  @Test
  void theMapWithASignHasThePublishedColours() {
    int[] published = {0x3b4cc0, 0x8db0fe, 0xdddddd, 0xf49a7b, 0xb40426};
    for (int i = 0; i < published.length; i++) {
      assertThat(ColourMap.COOL_WARM.colour(i / 4.0)).isEqualTo(published[i]);
    }
  }

  @Test
  void aScaleWithASignHasZeroInItsMiddle() {
    Scale scale = Scale.aboutZero(new double[] {-0.03, 0.18, Double.NaN});
    assertThat(scale.low()).isEqualTo(-scale.high());
    assertThat(scale.high()).isBetween(0.18, 0.3);
    assertThat(scale.colour(0)).isEqualTo(0xdddddd);
    assertThat(scale.marks()).anyMatch(mark -> Math.abs(mark) < 1e-12);
    assertThat(Scale.signed(0.18)).isEqualTo("+0.18");
    assertThat(Scale.signed(-0.03)).isEqualTo("\u22120.03");
  }

  private static double lin(int byteValue) {
    double v = byteValue / 255.0;
    return v <= 0.04045 ? v / 12.92 : Math.pow((v + 0.055) / 1.055, 2.4);
  }

  @Test
  void numbersAreShort() {
    assertThat(Scale.text(0.30000004)).isEqualTo("0.3");
    assertThat(Scale.text(1523456)).isEqualTo("1\u2009520\u2009000");
    assertThat(Scale.text(1010.4)).isEqualTo("1010");
    assertThat(Scale.text(0)).isEqualTo("0");
  }
}
