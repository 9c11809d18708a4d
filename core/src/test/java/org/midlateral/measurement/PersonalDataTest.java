package org.midlateral.measurement;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Invented names only. */
class PersonalDataTest {
  private static final List<String> CELLS =
      List.of(
          "hand=right",
          "digit=ring",
          "circumference.proximal-phalanx=62",
          "circumference.pip=66",
          "circumference.middle-phalanx=56",
          "circumference.tip=48",
          "length.palmar-crease-to-web=21",
          "length.web-to-pip=24",
          "length.pip-to-dip=23",
          "length.dip-to-tip=24");

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Ada-Example",
        "AdaExample",
        "Example.A",
        "A.Example",
        "dr-Example",
        "p-1961-03-09",
        "19610309",
        "09.03.1961",
        "ring-9-3-1961"
      })
  void namesAndDatesEarnACaution(String reference) {
    Orders.Result result = read(reference);
    assertThat(result.ok()).isTrue();
    assertThat(result.cautions()).extracting(Finding::code).contains("personal-data");
    assertThat(result.cautions().get(0).text()).contains(reference);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "demo-ring-a",
        "Demo-7",
        "A17",
        "2026-0412",
        "R.3",
        "L2-R5",
        "99990000",
        "QX-1961"
      })
  void codesDoNot(String reference) {
    Orders.Result result = read(reference);
    assertThat(result.ok()).isTrue();
    assertThat(result.cautions()).isEmpty();
  }

  private static Orders.Result read(String reference) {
    List<String> cells = new ArrayList<>(CELLS);
    cells.add("reference=" + reference);
    return Orders.row(cells, "orders.csv", 2, List.of());
  }
}
