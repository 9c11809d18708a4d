package org.midlateral.measurement.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.midlateral.measurement.Digit;
import org.midlateral.measurement.Finding;
import org.midlateral.measurement.key.AllowedRange;
import org.midlateral.measurement.key.InputKey;
import org.midlateral.measurement.key.KeyTable;

/** Girths that are usual for one finger and not for another. */
class UsualGirthsTest {
  private static List<String> unusual(String digit, double pip) {
    Orders.Result read =
        Orders.row(
            List.of(
                "reference=invented",
                "hand=right",
                "digit=" + digit,
                "circumference.proximal-phalanx=" + 0.98 * pip,
                "circumference.pip=" + pip,
                "circumference.middle-phalanx=" + 0.875 * pip,
                "circumference.tip=" + 0.77 * pip,
                "length.palmar-crease-to-web=19",
                "length.web-to-pip=22",
                "length.pip-to-dip=20",
                "length.dip-to-tip=23"),
            "invented",
            1,
            List.of());
    assertThat(read.errors()).isEmpty();
    return read.cautions().stream()
        .filter(f -> f.code().equals("unusual-value"))
        .map(Finding::text)
        .toList();
  }

  /**
   * Index and middle PIP of women, 5th to 95th percentile, and men's of 1.12 times that: A. Nag, P.
   * K. Nag and H. Desai, Indian J Med Res 117 (2003) 260-269; index breadths of a survey of
   * technical staff.
   */
  @ParameterizedTest
  @CsvSource({"index, 52", "index, 69", "middle, 53", "middle, 72", "ring, 66", "little, 48"})
  void ordinaryFingersHaveNone(String digit, double pip) {
    assertThat(unusual(digit, pip)).isEmpty();
  }

  @Test
  void whatIsUsualOfOneIsToldOfAnother() {
    assertThat(unusual("middle", 74)).isEmpty();
    assertThat(unusual("little", 74))
        .contains(
            "circumference.pip: 74.0 mm is unusual; 42 to 64 mm is usual of a little finger.");
    assertThat(unusual("little", 44)).isEmpty();
    assertThat(unusual("index", 44))
        .contains(
            "circumference.pip: 44.0 mm is unusual; 49 to 72 mm is usual of an index finger.");
  }

  @Test
  void eachFingersRangeLiesInThatOfAll() {
    List<InputKey> keys =
        KeyTable.standard().keys().stream().filter(key -> !key.usualOf().isEmpty()).toList();
    assertThat(keys).extracting(InputKey::section).containsOnly("circumference");
    assertThat(keys).hasSize(5);
    for (InputKey key : keys) {
      AllowedRange all = key.usual().orElseThrow();
      assertThat(key.usualOf()).containsOnlyKeys(Digit.values());
      assertThat(key.usualOf().values().stream().mapToDouble(AllowedRange::low).min())
          .hasValue(all.low());
      assertThat(key.usualOf().values().stream().mapToDouble(AllowedRange::high).max())
          .hasValue(all.high());
    }
  }
}
