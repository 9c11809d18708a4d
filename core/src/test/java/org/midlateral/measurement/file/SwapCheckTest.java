package org.midlateral.measurement.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.midlateral.measurement.Finding;

/** Readings that look swapped, on invented fingers. */
class SwapCheckTest {
  private static final String CODE = "looks-swapped";

  private static List<String> swapped(String... changes) {
    List<String> entries =
        new ArrayList<>(
            List.of(
                "reference=invented",
                "hand=right",
                "digit=ring",
                "circumference.proximal-phalanx=62",
                "circumference.pip=64",
                "circumference.middle-phalanx=56",
                "circumference.tip=48",
                "length.palmar-crease-to-web=21",
                "length.web-to-pip=24",
                "length.pip-to-dip=23",
                "length.dip-to-tip=24"));
    for (String change : changes) {
      entries.removeIf(e -> e.startsWith(change.substring(0, change.indexOf('=') + 1)));
      entries.add(change);
    }
    Orders.Result read = Orders.row(entries, "invented", 1, List.of());
    assertThat(read.errors()).isEmpty();
    return read.cautions().stream().filter(f -> f.code().equals(CODE)).map(Finding::key).toList();
  }

  @Test
  void anOrdinaryFingerHasNone() {
    assertThat(swapped()).isEmpty();
  }

  @Test
  void aJointSlimmerThanTheMiddlePhalanx() {
    assertThat(swapped("circumference.pip=56", "circumference.middle-phalanx=62"))
        .contains("circumference.pip");
  }

  @Test
  void aProximalPhalanxMuchRounderThanTheJoint() {
    assertThat(swapped("circumference.proximal-phalanx=66", "circumference.pip=62"))
        .containsExactly("circumference.proximal-phalanx");
    assertThat(swapped("circumference.proximal-phalanx=65", "circumference.pip=62")).isEmpty();
    // Taped close to the web the finger may well be rounder.
    assertThat(
            swapped(
                "circumference.proximal-phalanx=66",
                "circumference.pip=62",
                "station.proximal-phalanx=5"))
        .isEmpty();
  }

  @Test
  void thePalmsPartLongerThanTheFingers() {
    assertThat(swapped("length.palmar-crease-to-web=27", "length.web-to-pip=20"))
        .containsExactly("length.palmar-crease-to-web");
    assertThat(swapped("length.palmar-crease-to-web=24", "length.web-to-pip=21")).isEmpty();
  }
}
