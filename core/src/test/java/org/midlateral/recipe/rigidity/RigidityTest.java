package org.midlateral.recipe.rigidity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.midlateral.accuracy.ErrorBudget;
import org.midlateral.document.drawing.Drawing;
import org.midlateral.document.drawing.Mark;
import org.midlateral.document.drawing.Mark.LineStroke;
import org.midlateral.document.drawing.Mark.TextLabel;
import org.midlateral.document.drawing.Pen;
import org.midlateral.measurement.DesignRefused;
import org.midlateral.measurement.Finding;
import org.midlateral.measurement.Order;
import org.midlateral.measurement.file.Orders;
import org.midlateral.mechanics.Concerns;
import org.midlateral.mechanics.JointBlock.JointFigures;
import org.midlateral.mechanics.RigidityBlock;
import org.midlateral.mechanics.SupportBlock;
import org.midlateral.mesh.query.MeshAudit;
import org.midlateral.recipe.Orthosis;
import org.midlateral.recipe.joint.JointReport;

class RigidityTest {
  private static final String FINGER =
      """
      reference: test-ring
      hand: HAND
      digit: ring
      circumference: {proximal-phalanx: 62, pip: 66, middle-phalanx: 56, tip: 48}
      length: {palmar-crease-to-web: 21, web-to-pip: 24, pip-to-dip: 23, dip-to-tip: 24}
      """;

  private static Rigidity usual;

  private static Order order(String hand, String... overrides) {
    Orders.Result read =
        Orders.parse(FINGER.replace("HAND", hand), "test.yaml", List.of(overrides));
    assertThat(read.errors()).isEmpty();
    return read.order();
  }

  private static Rigidity rigidity(List<Double> wraps, String... overrides) throws Exception {
    return RigidityRecipe.of(Orthosis.make(order("right", overrides)), wraps);
  }

  @BeforeAll
  static void compute() throws Exception {
    usual = rigidity(Rigidity.USUAL_WRAPS);
  }

  /** What closes the trough to the tube that wraps are compared with is a sound solid too. */
  @ParameterizedTest
  @ValueSource(
      strings = {"slim-little", "bulbous-ring", "covered-tip", "left-deficit", "middle-inches"})
  void theTubesDorsalHalfIsSound(String sample) throws Exception {
    Order read = Orders.read(Path.of("../samples", sample + ".yaml"), List.of()).order();
    Orthosis made = Orthosis.make(Variant.withoutShell(Variant.wrap(read, 0.5)));

    MeshAudit audit = MeshAudit.of(DorsalHalf.of(made, 0.5).mesh());

    assertThat(audit.topology().closed()).isTrue();
    assertThat(audit.selfIntersections()).isZero();
    assertThat(audit.minAngle()).isGreaterThan(ErrorBudget.LEAST_ANGLE);
  }

  @Test
  void deeperWrapsAreStifferAndGiveWayLess() {
    List<RigidityBlock.Wrap> wraps = usual.rigidity().wraps();

    assertThat(wraps).extracting(RigidityBlock.Wrap::wrap).containsExactly(0.25, 0.35, 0.5, 1.0);
    assertThat(wraps.get(2).relativeToHalf()).isEqualTo(1);
    for (int i = 1; i < wraps.size(); i++) {
      assertThat(wraps.get(i).bendingAtPip()).isGreaterThan(3 * wraps.get(i - 1).bendingAtPip());
      assertThat(wraps.get(i).weakest().bendingRigidity())
          .isGreaterThan(wraps.get(i - 1).weakest().bendingRigidity());
      assertThat(wraps.get(i).extensionLost()).isLessThan(wraps.get(i - 1).extensionLost());
    }
    // Thin, round and without rims: 24.5 and 10.6; wall, rims and the finger's oval shift them.
    // What the closed tube is made of is said beside its figures, and beside no other's.
    assertThat(wraps.get(3).finiteElements().note()).contains("two halves");
    assertThat(wraps.subList(0, 3)).allMatch(wrap -> wrap.finiteElements().note() == null);
    assertThat(1 / wraps.get(0).relativeToHalf()).isBetween(20.0, 28.0);
    assertThat(wraps.get(3).relativeToHalf()).isBetween(10.0, 12.0);
    // In extension lost the tube gains far less than in EI: its tongue is the trough's.
    assertThat(wraps.get(2).extensionLost() / wraps.get(3).extensionLost()).isBetween(2.5, 6.0);
  }

  @Test
  void theShellIsBetweenSlippingAndBonded() {
    SupportBlock forces = usual.forces();

    assertThat(forces.bonded().extensionLost())
        .isLessThan(forces.slipping().extensionLost())
        .isPositive();
    assertThat(forces.slipping().extensionLost()).isLessThan(forces.extensionLost());
    for (RigidityBlock.Station station : usual.rigidity().stations()) {
      assertThat(station.slipping().bendingRigidity())
          .isGreaterThanOrEqualTo(station.trough().bendingRigidity());
      assertThat(station.bonded().bendingRigidity())
          .isGreaterThanOrEqualTo(station.slipping().bendingRigidity() * (1 - 1e-12));
    }
  }

  @Test
  void forcesFollowFromLeverArms() {
    SupportBlock forces = usual.forces();
    double arm = 67 - 4 - 26.5;

    assertThat(forces.leverArms().distal()).isCloseTo(arm, within(1e-9));
    assertThat(forces.leverArms().proximal()).isCloseTo(26.5 + 18 - 4, within(1e-9));
    // The default is the finger's own: 20 N·mm at 60 mm, with the cube of the girth.
    assertThat(forces.moment()).isCloseTo(20 * Math.pow(66 / 60.0, 3), within(1e-6));
    assertThat(forces.forces().distal()).isCloseTo(forces.moment() / arm, within(1e-9));
    assertThat(forces.forces().pip())
        .isCloseTo(forces.forces().proximal() + forces.forces().distal(), within(1e-12));
    assertThat(forces.castLength().forces().distal())
        .isCloseTo(forces.moment() / (46 - 4 - 26.5), within(1e-9));
    assertThat(forces.castLength().pressures().distal()).isGreaterThan(forces.pressures().distal());
  }

  /** The same finger pulls alike on every piece: the moment belongs to it. */
  @Test
  void theMomentIsTheFingersHoweverLongThePiece() throws Exception {
    Rigidity shorter =
        rigidity(List.of(0.5), "trough.proximal-margin=9 mm", "trough.distal-margin=9 mm");

    assertThat(shorter.forces().moment()).isEqualTo(usual.forces().moment());
    assertThat(shorter.forces().forces().distal()).isGreaterThan(usual.forces().forces().distal());
  }

  /** The joint's own key first, then a reading of the gauge, then the older key. */
  @Test
  void oneMomentIsForAllTables() throws Exception {
    String[] read = {"joint.gauge.force=1", "joint.gauge.distance=25 mm"};
    Rigidity older = rigidity(List.of(0.5), "support.moment=50");
    Rigidity gauge = rigidity(List.of(0.5), read[0], read[1], "support.moment=50");
    Rigidity own = rigidity(List.of(0.5), read[0], read[1], "joint.moment=31");

    assertThat(older.forces().moment()).isEqualTo(50);
    assertThat(JointReport.of(older.joint().orElseThrow()).moment()).isEqualTo(50);
    assertThat(JointReport.of(older.joint().orElseThrow()).momentSource()).isEqualTo("stated");
    assertThat(gauge.forces().moment()).isCloseTo(25, within(1e-9));
    assertThat(JointReport.of(gauge.joint().orElseThrow()).momentSource()).isEqualTo("gauge");
    assertThat(own.forces().moment()).isEqualTo(31);
    assertThat(JointReport.of(own.joint().orElseThrow()).moment()).isEqualTo(31);
  }

  @Test
  void changesActAsTheyShould() {
    List<SupportBlock.Change> changes = usual.forces().sensitivity();
    double bending = usual.rigidity().wraps().get(2).bendingAtPip();
    double lost = usual.forces().extensionLost();

    assertThat(changes).hasSize(4);
    assertThat(changes.get(0).change()).isEqualTo("wall 2.0 mm instead of 1.6");
    assertThat(changes.get(0).bendingAtPip()).isBetween(1.2 * bending, 1.4 * bending);
    assertThat(changes.get(1).bendingAtPip()).isBetween(0.5 * bending, 0.7 * bending);
    assertThat(changes.get(3).bendingAtPip()).isCloseTo(0.8 * bending, withinPercentage(1e-9));
    assertThat(changes.get(3).extensionLost()).isCloseTo(lost / 0.8, withinPercentage(1e-9));
    // Shorter arms hold the same moment with more force.
    double moment = usual.forces().moment();
    assertThat(changes.get(2).forces().distal()).isCloseTo(moment / 31.5, within(1e-9));
    // And the joint goes farther, and the skin is pressed harder.
    JointFigures half = usual.rigidity().wraps().get(2).joint();
    assertThat(changes.get(2).joint().angleHeld()).isGreaterThan(half.angleHeld());
    assertThat(changes.get(2).joint().peakPressure()).isGreaterThan(half.peakPressure());
  }

  /** What is looked for without the figures is what is found with them. */
  @Test
  void findingsAreThoseOfTheWhole() throws Exception {
    assertThat(RigidityRecipe.findings(usual.orthosis(), Rigidity.USUAL_WRAPS))
        .isEqualTo(usual.findings())
        .isNotEmpty();
  }

  /** Without the elements' bend of the pieces everything else is the same, findings too. */
  @Test
  void onlyTheBendByElementsIsLeftOutOnRequest() throws Exception {
    Rigidity without = RigidityRecipe.of(order("right"), Rigidity.USUAL_WRAPS, BendOfPieces.BEAMS);

    assertThat(without.findings()).isEqualTo(usual.findings());
    assertThat(without.joint().orElseThrow().answer().angle())
        .isEqualTo(usual.joint().orElseThrow().answer().angle());
    List<RigidityBlock.Wrap> wraps = without.rigidity().wraps();
    assertThat(wraps).hasSize(4);
    for (int i = 0; i < wraps.size(); i++) {
      boolean own = wraps.get(i).wrap() == 0.5;
      assertThat(wraps.get(i))
          .usingRecursiveComparison()
          .ignoringFields(own ? new String[0] : new String[] {"finiteElements"})
          .isEqualTo(usual.rigidity().wraps().get(i));
      assertThat(wraps.get(i).finiteElements() == null).isEqualTo(!own);
      assertThat(usual.rigidity().wraps().get(i).finiteElements()).isNotNull();
    }
    assertThat(without.forces())
        .usingRecursiveComparison()
        .ignoringFields("finiteElements")
        .isEqualTo(usual.forces());
    assertThat(without.forces().finiteElements()).isNull();
    assertThat(usual.forces().finiteElements().bonded()).isNotNull();
  }

  /** Long levers and half wraps win for the right reason: on one joint, in one closure. */
  @Test
  void longLeversAndHalfWrapsHoldBetter() {
    List<RigidityBlock.Wrap> wraps = usual.rigidity().wraps();
    JointFigures quarter = wraps.get(0).joint();
    JointFigures half = wraps.get(2).joint();
    JointFigures cast = usual.forces().castLength().joint();

    assertThat(half.angleHeld()).isLessThan(quarter.angleHeld());
    assertThat(half.peakPressure()).isLessThan(quarter.peakPressure());
    assertThat(cast.angleHeld()).isGreaterThan(2 * half.angleHeld());
    assertThat(wraps.get(3).joint()).isNull();
  }

  @Test
  void findingsCarryTheirNumbers() throws Exception {
    Rigidity shallow =
        rigidity(List.of(0.5), "trough.wrap=0.25", "dorsal-shell.make=no", "joint.moment=90");

    assertThat(shallow.findings())
        .extracting(Finding::code)
        .containsExactly("extension-lost", "too-shallow", "pressure-high", "joint-not-held");
    Finding wrap = shallow.findings().get(1);
    assertThat(wrap.value()).isLessThan(0.06);
    assertThat(wrap.limit()).isEqualTo(Concerns.SHALLOW);
    assertThat(wrap.text()).contains("Over 0.25 of the girth").contains("N·mm²");
    Rigidity strong =
        rigidity(List.of(), "closure.kind=strap", "dorsal-shell.make=no", "joint.moment=90");
    Finding force =
        strong.findings().stream()
            .filter(f -> f.code().equals("force-high"))
            .findFirst()
            .orElseThrow();
    assertThat(force.value()).isGreaterThan(Concerns.FORCE);
    assertThat(force.key()).isEqualTo("joint.moment");
    for (Rigidity one : List.of(shallow, strong)) {
      assertThat(one.findings()).noneMatch(f -> f.text().contains("from memory"));
    }
    // 32 mmHg of 133.322 Pa.
    assertThat(Concerns.PRESSURE).isCloseTo(32 * 133.322e-6, within(1e-6));
    // 50 gf of 9.80665 mN over 100 mm².
    assertThat(Concerns.PRESSURE_OF_SPLINTING).isCloseTo(50 * 9.80665e-3 / 100, within(1e-6));
    // 67 mmHg, as the study has it.
    assertThat(Concerns.PRESSURE_OF_A_NIGHT).isCloseTo(67 * 133.322e-6, within(1e-4));
    assertThat(usual.findings()).extracting(Finding::code).isSubsetOf("pressure-high");
  }

  @Test
  void theOtherHandIsTheSame() throws Exception {
    Rigidity left = RigidityRecipe.of(Orthosis.make(order("left")), List.of(0.35, 1.0));

    assertThat(left.forces().extensionLost())
        .isCloseTo(usual.forces().extensionLost(), withinPercentage(1e-9));
    assertThat(left.rigidity().wraps().get(1).bendingAtPip())
        .isCloseTo(usual.rigidity().wraps().get(3).bendingAtPip(), withinPercentage(1e-9));
  }

  @Test
  void aTroughWithoutALeverArmIsRefused() {
    String[] overrides = {
      "length.web-to-pip=8",
      "length.palmar-crease-to-web=5",
      "trough.web-clearance=8",
      "trough.proximal-margin=8",
      "trough.flare=0",
      "dorsal-shell.make=no",
      "relief.make=no"
    };

    assertThatThrownBy(() -> rigidity(List.of(0.5), overrides))
        .isInstanceOf(DesignRefused.class)
        .hasMessageContaining("1.5 mm of its proximal end");
  }

  @Test
  void reportHasTheAgreedNames() throws Exception {
    JsonNode report =
        new ObjectMapper().readTree(RigidityReport.of(usual, usual.findings(), null, null).json());
    JsonNode station = report.at("/rigidity/stations/40");

    assertThat(station.fieldNames())
        .toIterable()
        .containsExactly("station", "trough", "bonded", "slipping");
    assertThat(station.get("trough").fieldNames())
        .toIterable()
        .containsExactly("area", "I", "J", "EI", "GJ");
    assertThat(report.at("/rigidity/wraps/0").fieldNames())
        .toIterable()
        .startsWith("wrap", "EIatPip", "relativeToHalf")
        .endsWith("finiteElements");
    assertThat(report.get("support").fieldNames())
        .toIterable()
        .contains(
            "moment",
            "leverArms",
            "forces",
            "pressures",
            "deflectionAtPip",
            "extensionLost",
            "castLength");
    assertThat(report.at("/support/pressures/pip").asDouble()).isBetween(0.001, 0.1);
    assertThat(report.at("/rigidity/note").asText()).contains("estimates, for comparison");
    assertThat(report.has("bands")).isFalse();
  }

  @Test
  void aMaterialThatCreepsIsSaidToDoSo() throws Exception {
    RigidityBlock sheet = rigidity(List.of(0.5), "material.name=low-temperature-sheet").rigidity();

    assertThat(sheet.modulus()).isEqualTo(700);
    assertThat(sheet.modulusSource()).contains("from memory");
    assertThat(sheet.materialCautions())
        .hasSize(2)
        .anyMatch(text -> text.contains("some 40 % of its modulus"));
    assertThat(usual.rigidity().materialCautions())
        .singleElement()
        .asString()
        .contains("gives way slowly", "50 % of its modulus");
  }

  /** Beams do not see the section close up, so that the finite elements lose more extension. */
  @Test
  void finiteElementsStandBesideTheBeam() {
    for (RigidityBlock.Wrap wrap : usual.rigidity().wraps()) {
      assertThat(wrap.finiteElements().extensionLost()).isGreaterThan(wrap.extensionLost());
      assertThat(wrap.finiteElements().rimOpening()).isNegative();
    }
    assertThat(usual.forces().finiteElements().trough().extensionLost())
        .isGreaterThan(usual.forces().finiteElements().bonded().extensionLost());
  }

  /** Each wrap's finite elements bear what its beam bears, on the same pieces. */
  @Test
  void finiteElementsOfTheWrapsAreThoseOfThePiecesCompared() {
    List<RigidityBlock.Wrap> wraps = usual.rigidity().wraps();
    double[] lost = wraps.stream().mapToDouble(w -> w.finiteElements().extensionLost()).toArray();

    assertThat(lost[2]).isEqualTo(usual.forces().finiteElements().trough().extensionLost());
    assertThat(lost[0] / lost[2]).isBetween(15.0, 24.0);
    assertThat(lost[1]).isBetween(3 * lost[2], lost[0] / 3);
    // The whole tube does not close up; it is stiffer than the trough with half as long a shell.
    assertThat(lost[3]).isLessThan(usual.forces().finiteElements().bonded().extensionLost());
  }

  @Test
  void theWrapsAreHeldAtTheZonesAskedFor() throws Exception {
    Rigidity wide =
        rigidity(List.of(0.5), "support.proximal-zone=14 mm", "support.distal-zone=12 mm");

    double lost = wide.rigidity().wraps().get(0).finiteElements().extensionLost();
    assertThat(lost).isEqualTo(wide.forces().finiteElements().trough().extensionLost());
    assertThat(lost).isNotEqualTo(usual.forces().finiteElements().trough().extensionLost());
  }

  /** Each wrap has a pen of its own, and its label; the stiffer stands higher. */
  @Test
  void thePlotTellsTheWrapsApart() {
    Drawing plot = usual.plot().drawing();
    List<LineStroke> curves =
        plot.marks().stream()
            .filter(mark -> mark instanceof LineStroke line && line.points().size() > 20)
            .map(LineStroke.class::cast)
            .toList();

    assertThat(curves).hasSize(4);
    assertThat(curves).extracting(LineStroke::pen).doesNotHaveDuplicates().doesNotContain(Pen.CUT);
    assertThat(curves.stream().map(RigidityTest::midway)).isSorted();
    assertThat(plot.marks())
        .filteredOn(mark -> mark instanceof TextLabel)
        .extracting(mark -> ((TextLabel) mark).text())
        .contains("0.25 girth", "0.35 girth", "0.50 girth", "closed", "web", "PIP axis")
        .contains("Estimate, for comparison; does not clear a piece for use.");
    for (Mark mark : plot.marks()) {
      if (mark instanceof LineStroke line) {
        assertThat(line.points())
            .allMatch(p -> p.x() >= 0 && p.x() <= plot.width())
            .allMatch(p -> p.y() >= 0 && p.y() <= plot.height());
      }
    }
    String svg = new String(usual.plot().svg(), StandardCharsets.UTF_8);
    assertThat(svg).contains("<svg").contains("stroke-dasharray");
  }

  private static double midway(LineStroke line) {
    return line.points().get(line.points().size() / 2).y();
  }
}
