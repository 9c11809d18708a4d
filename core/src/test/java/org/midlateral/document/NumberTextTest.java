package org.midlateral.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Decimals of 32-bit numbers, held against the library's reading and writing. */
class NumberTextTest {
  @Test
  void plainNumbersArePlain() {
    assertThat(text(0f)).isEqualTo("0");
    assertThat(text(-0f)).isEqualTo("-0");
    assertThat(text(5f)).isEqualTo("5");
    assertThat(text(-12.5f)).isEqualTo("-12.5");
    assertThat(text(0.3f)).isEqualTo("0.3");
    assertThat(text(17.918077f)).isEqualTo("17.918077");
    assertThat(text(0.05f)).isEqualTo("0.05");
    assertThat(text(120000f)).isEqualTo("120000");
  }

  @Test
  void wholeNumbers() {
    NumberText text = new NumberText(0);
    assertThat(new String(text.put(0).put(" ").put(90).put(" ").put(1234567890).toBytes(), ASCII))
        .isEqualTo("0 90 1234567890");
  }

  @Test
  void everyNumberReadsBackAndNoShorterOneDoes() {
    SplittableRandom random = new SplittableRandom(3);
    for (int i = 0; i < 200_000; i++) {
      float number = (float) ((random.nextDouble() - 0.5) * Math.pow(10, random.nextInt(-4, 8)));
      String text = text(number);
      assertThat(Float.parseFloat(text)).as(text).isEqualTo(number);
      // The library's own is seldom longer than needed, and never shorter than can be.
      assertThat(digits(text)).as(text).isLessThanOrEqualTo(digits(Float.toString(number)));
    }
  }

  @Test
  void theEndsOfTheRangeReadBack() {
    for (float number : new float[] {1e-2f, 0.1f, 1, 10, 1e6f, 8388608, 16, 64, 1024, 0.015625f}) {
      for (int step = -2000; step <= 2000; step++) {
        float near = Float.intBitsToFloat(Float.floatToIntBits(number) + step);
        assertThat(Float.parseFloat(text(near))).isEqualTo(near);
      }
    }
  }

  private static final java.nio.charset.Charset ASCII = StandardCharsets.US_ASCII;

  private static String text(float number) {
    return new String(new NumberText(0).put(number).toBytes(), ASCII);
  }

  private static int digits(String text) {
    return new BigDecimal(text).stripTrailingZeros().precision();
  }
}
