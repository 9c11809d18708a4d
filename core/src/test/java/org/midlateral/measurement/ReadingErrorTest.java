package org.midlateral.measurement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** From which change on two readings tell that something has changed. */
class ReadingErrorTest {

  /**
   * Standard errors of 4 to 11 degrees and smallest changes of 12 to 30 degrees, both rounded to
   * whole degrees: Reissner et al., J Orthop Surg Res 14:173 (2019), abstract read.
   */
  @ParameterizedTest
  @CsvSource({"4, 12", "11, 30"})
  void isTheSmallestChangePublishedForAGoniometer(double error, double published) {
    double least = new ReadingError(error - 0.5, "°", "rounded").smallestChange();
    double most = new ReadingError(error + 0.5, "°", "rounded").smallestChange();

    assertThat(published).isBetween(least, most);
  }

  /** Two readings of the same angle, drawn: 5 of 100 pairs differ by more. */
  @Test
  void isPassedByOnePairInTwentyOfAnUnchangedJoint() {
    Random random = new Random(5);
    ReadingError error = ReadingError.GONIOMETER;
    int passed = 0;
    int pairs = 100_000;
    for (int i = 0; i < pairs; i++) {
      double earlier = error.standardError() * random.nextGaussian();
      double change = error.standardError() * random.nextGaussian() - earlier;
      passed += error.tells(change) ? 1 : 0;
    }
    assertThat(passed / (double) pairs).isCloseTo(0.05, within(0.003));
  }

  /** Ten degrees count, nine and a half do not; the study's two ends stand for 6.7 and 13.6. */
  @Test
  void tellsTenDegreesAndNotNineAndAHalf() {
    assertThat(ReadingError.GONIOMETER.tells(10)).isTrue();
    assertThat(ReadingError.GONIOMETER.tells(-10)).isTrue();
    assertThat(ReadingError.GONIOMETER.tells(9.5)).isFalse();
    assertThat(new ReadingError(2.4, "°", "").smallestChange()).isCloseTo(6.65, within(0.01));
    assertThat(new ReadingError(4.9, "°", "").smallestChange()).isCloseTo(13.58, within(0.01));
  }
}
