package org.midlateral.measurement;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class PrintProcessTest {
  /** The ranges within which limits of these processes are plausible, from memory. */
  @ParameterizedTest
  @EnumSource(Design.ProcessDesign.class)
  void everyProcessHasItsLimitsAndTheirSources(Design.ProcessDesign chosen) {
    PrintProcess process = PrintProcess.of(chosen);
    assertThat(process.leastWall()).isBetween(0.3, 1.2);
    assertThat(process.leastGap()).isBetween(0.05, 0.5);
    assertThat(process.overhang()).isBetween(30.0, 90.0);
    assertThat(process.supports()).isEqualTo(chosen != Design.ProcessDesign.POWDER);
    assertThat(process.sources())
        .containsOnlyKeys("least-wall", "least-gap", "usual-gap", "overhang", "supports", "stands")
        .values()
        .allMatch(source -> !source.isBlank());
  }
}
