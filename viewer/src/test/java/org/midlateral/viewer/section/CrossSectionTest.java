package org.midlateral.viewer.section;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Comparator;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.midlateral.piece.BridgedStretch;
import org.midlateral.viewer.draft.Draft;
import org.midlateral.viewer.draft.DraftText;
import org.midlateral.viewer.draft.DraftText.NotADraft;
import org.midlateral.viewer.sample.Sample;
import org.midlateral.viewer.scene.DesignShapes;
import org.midlateral.viewer.scene.MadeDraft;
import org.midlateral.viewer.scene.Quantity;

/** Invariant: what the viewer shows agrees with what the design asked for. */
class CrossSectionTest {
  private static DesignShapes design;

  @BeforeAll
  static void make() throws NotADraft {
    Draft draft = DraftText.read(Sample.BULBOUS.text());
    design = MadeDraft.of(draft).shapes().orElseThrow();
  }

  @Test
  void gapsAreThoseTheDesignAskedFor() {
    // Sample: clearance 0.3 by default and a liner of 1.0; the midline has no relief.
    CrossSection section = CrossSection.of(design, design.orthosis().digit().pipAxis());
    GapLine volar = section.gaps().get(0);
    assertThat(volar.millimetres()).isCloseTo(1.3, within(0.02));
    assertThat(section.cut(false).orElseThrow().leastGap()).isCloseTo(1.3, within(0.02));
  }

  @Test
  void theCircumferenceAtATapeIsTheTapes() {
    CrossSection section = CrossSection.of(design, design.orthosis().digit().pipAxis());
    assertThat(section.circumference()).isCloseTo(70, within(0.05));
  }

  @Test
  void aBridgedWaistIsMarkedOnTheSkin() throws NotADraft {
    Draft swollen =
        DraftText.read(
            """
            reference: invented-thick
            hand: right
            digit: little
            unit: mm
            circumference:
              proximal-phalanx: 53.7
              pip: 61.7
              middle-phalanx: 50.4
              tip: 43.9
            length:
              palmar-crease-to-web: 18.3
              web-to-pip: 18.6
              pip-to-dip: 17.1
              dip-to-tip: 26.8
            trough:
              wall: 3.2
            dorsal-shell:
              wall: 3.2
            """);
    DesignShapes shapes = MadeDraft.of(swollen).shapes().orElseThrow();
    BridgedStretch stretch =
        BridgedStretch.of(shapes.orthosis().dorsalShell().orElseThrow().piece()).stream()
            .max(Comparator.comparingDouble(BridgedStretch::rise))
            .orElseThrow();
    CrossSection.SectionBridge here =
        CrossSection.of(shapes, stretch.station()).cut(true).orElseThrow().bridge();

    assertThat(here.rise()).isCloseTo(stretch.rise(), within(0.02));
    assertThat(here.skin()).isNotEmpty();
    assertThat(CrossSection.of(shapes, 2).cut(false).orElseThrow().bridge().skin()).isEmpty();
  }

  /** At the PIP joint the pieces keep the gap asked for, and the shell reaches past the rims. */
  @Test
  void overlapAndGapAreThoseAskedFor() {
    double pip = design.orthosis().digit().pipAxis();
    CrossSection section = CrossSection.of(design, pip);
    var asked = design.orthosis().order().design();
    assertThat(section.between().orElseThrow()).isGreaterThan(asked.dorsalShell().fitGap() - 0.05);
    // Along a flank that leans, the height of the overlap is somewhat less than its length.
    assertThat(section.overlap().orElseThrow())
        .isBetween(0.5 * asked.dorsalShell().overlap(), 1.6 * asked.dorsalShell().overlap());
    CrossSection past = CrossSection.of(design, design.orthosis().digit().pulpEnd() - 6);
    assertThat(past.overlap()).isEmpty();
    assertThat(past.between()).isEmpty();
  }

  @Test
  void aSectionPastTheShellHasOnlyTheTrough() {
    double nearEnd = design.orthosis().trough().piece().outline().flankEnd() - 0.5;
    CrossSection section = CrossSection.of(design, nearEnd);
    assertThat(section.cut(false)).isPresent();
    assertThat(section.cut(true)).isEmpty();
  }

  @Test
  void clearanceSpansFromTheGapToTheTopOfTheRelief() {
    Colouring clearance = Colouring.of(design, Quantity.CLEARANCE);
    double least = Double.POSITIVE_INFINITY;
    double most = 0;
    for (double value : clearance.values().get(0)) {
      least = Math.min(least, value);
      most = Math.max(most, value);
    }
    assertThat(least).isCloseTo(1.3, within(0.02));
    // Height of the relief in the sample: 1.2.
    assertThat(most).isCloseTo(2.5, within(0.05));
  }

  @Test
  void wallIsWhatWasAskedFor() {
    Colouring wall = Colouring.of(design, Quantity.WALL);
    int inner = design.pieces().get(0).solid().innerVertices();
    double[] values = wall.values().get(0);
    for (int i = 0; i < inner; i++) {
      assertThat(values[i]).isBetween(1.6 * 0.97, 1.6 * 1.001);
    }
  }
}
