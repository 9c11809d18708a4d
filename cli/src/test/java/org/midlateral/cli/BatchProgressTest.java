package org.midlateral.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class BatchProgressTest {
  @Test
  void aLineTellsRateAndTimeLeft() {
    assertThat(BatchProgress.line(120, 1000, 12))
        .isEqualTo("120 of 1000 orders, 10.0 a second, 1 min left");
    assertThat(BatchProgress.line(995, 1000, 100)).endsWith("10.0 a second, 1 s left");
    assertThat(BatchProgress.line(10, 100_000, 1)).endsWith("10.0 a second, 2 h 46 min left");
    // Blank lines are counted among the orders beforehand: never less than nothing.
    assertThat(BatchProgress.line(12, 10, 1)).endsWith(", 0 s left");
  }
}
