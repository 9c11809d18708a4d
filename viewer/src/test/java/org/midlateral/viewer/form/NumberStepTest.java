package org.midlateral.viewer.form;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.midlateral.measurement.LengthUnit;
import org.midlateral.measurement.key.KeyTable;

class NumberStepTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "circumference.pip | MM | 66      | 1  | 67",
        "circumference.pip | MM | 66.5    | -1 | 65.5",
        "circumference.pip | CM | 6.6     | 1  | 6.7",
        "circumference.pip | IN | 2 5/8   | 1  | 2 11/16",
        "circumference.pip | IN | 2 15/16 | 1  | 3",
        "circumference.pip | IN | 3       | -1 | 2 15/16",
        "circumference.pip | IN | 66 mm   | 1  | 67 mm",
        "circumference.pip | MM | 2-1/2 in | 1 | 2 9/16 in",
        "trough.wall       | MM | 1.6     | 1  | 1.7",
        "trough.wrap       | MM | 0.5     | -5 | 0.45",
        "closure.layers    | MM | 2       | 1  | 3",
        "material.modulus  | MM | 1500    | 1  | 1600",
        "trough.wall       | MM | thick   | 1  | thick",
      })
  void stepsANumberTheWayItIsWritten(
      String key, LengthUnit unit, String text, int steps, String next) {
    assertThat(NumberStep.by(text, KeyTable.standard().find(key).orElseThrow(), unit, steps))
        .isEqualTo(next);
  }
}
