package org.midlateral.measurement;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.Modifier;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.midlateral.measurement.key.KeyTable;

class RefusalsTest {
  private static final List<Finding> ALL =
      List.of(
          Refusals.tongueShort(3, 30, 0.5, 1.5),
          Refusals.distalEndNarrow(2, 1.5),
          Refusals.bendFolds(24, 0.1, 0.25),
          Refusals.reliefStation("relief.bubbles[1].station", 90, 71),
          Refusals.reliefGirth("relief.bubbles[1].girth", 60, 33),
          Refusals.dorsalShellOverlap(9, 7.5),
          Refusals.dorsalShellLength(60, 40, 15),
          Refusals.dorsalShellClearance(3, 2.2),
          Refusals.dorsalShellStep(14, 1, 2),
          Refusals.edgeFolds("trough", 12),
          Refusals.leverArmShort("proximal", -1, 2),
          Refusals.circumference(Level.PIP, 66.1, 66),
          Refusals.surface("trough", 7),
          Refusals.wall("trough", 1.2, 1.5),
          Refusals.clearance("dorsal-shell", 0.03, 0.02),
          Refusals.relief("trough", 0.07, 0.05),
          Refusals.trim("trough", 0.07, 0.05),
          Refusals.chordError("trough", 0.0213, 0.02),
          Refusals.sharpTriangles("trough", 0.014, 0.01),
          Refusals.sliver("trough", 8.4, 10),
          Refusals.fitGap(0.1, Vector3D.of(24, 3, -9), 0.15));

  @Test
  void eachIsAboutAKeyAndSaysWhatIsTheMatter() {
    for (Finding finding : ALL) {
      assertThat(finding.severity()).isEqualTo(Finding.Severity.REFUSAL);
      assertThat(KeyTable.standard().find(finding.key())).as(finding.code()).isPresent();
      assertThat(finding.text()).as(finding.code()).matches("[A-Zr].{40,}[^ ]\\.");
      assertThat(finding.text()).as(finding.code()).doesNotContain("NaN", "  ", "..", ";;");
    }
  }

  /** All but the tape's, which the input's own checks should have told of, name keys to change. */
  @Test
  void eachNamesAKeyToChange() {
    assertThat(ALL)
        .filteredOn(f -> !f.code().equals("circumference"))
        .allMatch(
            f ->
                KeyTable.standard().keys().stream().anyMatch(key -> f.text().contains(key.path()))
                    || f.key().startsWith("relief.bubbles[") && f.text().startsWith(f.key()));
  }

  /** The sentence's two halves, what is the matter and what to change, meet without a seam. */
  @Test
  void matterAndAdviceMakeOneSentence() {
    assertThat(Refusals.dorsalShellLength(60, 40, 15).text())
        .endsWith(
            "needs at least 15 mm. Change dorsal-shell.length, or leave the shell out with"
                + " dorsal-shell.make: no.");
    assertThat(Refusals.leverArmShort("distal", -1, 2).text())
        .isEqualTo(
            "Past the closure over the PIP joint only 0.0 mm of the trough's distal end are left to"
                + " press on, and at least 2 mm are needed: a smaller trough.distal-margin.");
  }

  @Test
  void aNewOneIsTestedHereToo() {
    long factories =
        Arrays.stream(Refusals.class.getDeclaredMethods())
            .filter(m -> Modifier.isPublic(m.getModifiers()))
            .filter(m -> !m.getName().equals("defect"))
            .count();

    assertThat(ALL).hasSize((int) factories);
    assertThat(ALL).extracting(Finding::code).containsAll(Refusals.OF_THE_MESH);
  }

  @Test
  void aDefectIsAboutNoKey() {
    Finding defect = Refusals.defect("IllegalStateException", "please report it");
    assertThat(defect.text())
        .isEqualTo(
            "This design met a defect of the program (IllegalStateException); please report it.");
    assertThat(defect.key()).isNull();
  }
}
