package org.midlateral.measurement;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.Modifier;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.midlateral.measurement.Design.ClosureKind;
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

  /** What to change is told by whoever has tried it, and by nobody else. */
  @Test
  void noneNamesWhatToChange() {
    assertThat(ALL)
        .allMatch(f -> f.remedies().isEmpty())
        .noneMatch(f -> f.text().matches(".*\\b([Cc]hange|[Cc]hoose|lower|widen|make)\\b.*"));
  }

  @Test
  void whatPassesIsToldInItsOrder() {
    Finding refusal = Refusals.dorsalShellOverlap(9, 7.5);
    List<Remedy> remedies =
        List.of(
            new Remedy("dorsal-shell.overlap", "7.5", false),
            new Remedy("dorsal-shell.make", "no", false));
    Finding advised = Refusals.advised(refusal, remedies, List.of("dorsal-shell.overlap"));

    assertThat(advised.text())
        .isEqualTo(
            refusal.text()
                + " Tried, and works: dorsal-shell.overlap=7.5; or"
                + " dorsal-shell.make=no.");
    assertThat(advised.remedies()).isEqualTo(remedies);
    assertThat(advised.code()).isEqualTo(refusal.code());
  }

  @Test
  void whatPassesForTheTroughAloneIsToldSo() {
    Remedy remedy = new Remedy("trough.wall", "1.2", true);

    assertThat(Refusals.advised(Refusals.surface("trough", 7), List.of(remedy), List.of()).text())
        .endsWith(" Tried, and works: trough.wall=1.2 with dorsal-shell.make=no.");
    assertThat(remedy.entries()).containsExactly("trough.wall=1.2", "dorsal-shell.make=no");
  }

  @Test
  void whatWasTriedInVainIsToldToo() {
    Finding refusal = Refusals.surface("trough", 7);

    assertThat(Refusals.advised(refusal, List.of(), List.of("trough.wall", "trough.flare")).text())
        .endsWith(
            "Other values of these keys were tried, and none works: trough.wall,"
                + " trough.flare.");
    assertThat(Refusals.advised(refusal, List.of(), List.of())).isEqualTo(refusal);
  }

  @Test
  void aMissingShellIsToldWithItsReasonAndWhatClosesTheTrough() {
    Finding why = Refusals.dorsalShellLength(60, 40, 15);
    Finding missing = Refusals.shellMissing(why, ClosureKind.TAPE);

    assertThat(missing.text())
        .isEqualTo(
            "The dorsal shell is missing. The trough is made without it, and an elastic wrap or a"
                + " sleeve closes it, not tape. "
                + why.text());
    assertThat(missing.code()).isEqualTo("dorsal-shell-length");
    assertThat(missing.key()).isEqualTo("dorsal-shell.length");
    assertThat(missing.severity()).isEqualTo(Finding.Severity.REFUSAL);
    assertThat(ClosureKind.values())
        .allSatisfy(
            kind ->
                assertThat(Refusals.shellMissing(why, kind).text()).containsPattern("closes? it"));
  }

  @Test
  void aNewOneIsTestedHereToo() {
    long factories =
        Arrays.stream(Refusals.class.getDeclaredMethods())
            .filter(m -> Modifier.isPublic(m.getModifiers()))
            .filter(m -> !List.of("defect", "shellMissing", "advised").contains(m.getName()))
            .count();

    assertThat(ALL).hasSize((int) factories);
    assertThat(ALL).extracting(Finding::code).containsAll(Refusals.OF_THE_MESH);
  }

  @Test
  void aDefectIsAboutNoKey() {
    Finding defect = Refusals.defect("IllegalStateException", "please report it");
    assertThat(defect.text())
        .isEqualTo(
            "A defect of the program stopped this design (IllegalStateException); please report"
                + " it.");
    assertThat(defect.key()).isNull();
  }
}
