package org.midlateral.viewer.section;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.midlateral.recipe.joint.JointHeld;
import org.midlateral.recipe.joint.JointWords;
import org.midlateral.viewer.draft.Draft;
import org.midlateral.viewer.draft.DraftText;
import org.midlateral.viewer.draft.DraftText.NotADraft;
import org.midlateral.viewer.sample.Sample;
import org.midlateral.viewer.scene.DesignShapes;
import org.midlateral.viewer.scene.MadeDraft;
import org.midlateral.viewer.scene.Quantity;

/** Pressures and strains are shown, or it is said why not. */
class ColouringTest {
  private static DesignShapes made(Draft draft) {
    return MadeDraft.of(draft).shapes().orElseThrow();
  }

  @Test
  void aPieceThatBearsNothingHasNoValues() throws NotADraft {
    DesignShapes design = made(DraftText.read(Sample.DEFICIT.text()));
    Colouring alone = Colouring.of(design, Quantity.STRAIN_TROUGH);
    assertThat(alone.note()).isEmpty();
    assertThat(alone.values()).hasSize(2);
    assertThat(alone.values().get(0)).doesNotContain(Double.NaN);
    assertThat(alone.values().get(1)).containsOnly(Double.NaN);
    assertThat(alone.colours().get(1)).isEmpty();
  }

  /** The same figures as the report's, on both hands, and its answer in words. */
  @ParameterizedTest
  @ValueSource(strings = {"left", "right"})
  void pressureIsThatOfTheReport(String hand) throws Exception {
    DesignShapes design = made(DraftText.read(Sample.DEFICIT.text()).with("hand", hand));
    Colouring pressure = Colouring.of(design, Quantity.PRESSURE);
    JointHeld held = JointHeld.of(design.orthosis());
    double spot = 1000 * held.answer().spot().pressure();
    double trough = Arrays.stream(pressure.values().get(0)).max().orElseThrow();
    double shell = Arrays.stream(pressure.values().get(1)).max().orElseThrow();
    assertThat(Math.max(trough, shell)).isBetween(0.6 * spot, spot);
    assertThat(Arrays.stream(pressure.values().get(0)).min().orElseThrow()).isBetween(0.0, 0.1);
    assertThat(pressure.note().replace("\n", " ")).isEqualTo(new JointWords(held).line());
    assertThat(pressure.pressure()).isPresent();
    assertThat(Colouring.of(design, Quantity.WALL).pressure()).isEmpty();
  }

  /** Until a changed design is computed it is coloured by how the plastic bent before. */
  @Test
  void inPassingTheColoursAreThoseThatCome() throws NotADraft {
    Draft draft = DraftText.read(Sample.SLIM.text());
    Colouring before = Colouring.of(made(draft), Quantity.PRESSURE);
    DesignShapes thicker = made(draft.with("trough.wall", "1.6"));
    Colouring passing = Colouring.passing(thicker, before.pressure().orElseThrow()).orElseThrow();
    Colouring computed = Colouring.of(thicker, Quantity.PRESSURE);
    assertThat(passing.isPassing()).isTrue();
    assertThat(computed.isPassing()).isFalse();
    double most = computed.scale().high();
    for (int piece = 0; piece < 2; piece++) {
      double[] shown = passing.values().get(piece);
      assertThat(shown).containsExactly(computed.values().get(piece), within(0.02 * most));
    }
  }

  @Test
  void ventsAreSaidToBeLeftOut() throws NotADraft {
    DesignShapes design = made(DraftText.read(Sample.COVERED.text()));
    assertThat(Colouring.of(design, Quantity.STRAIN_TROUGH).note()).contains("without vents");
    assertThat(Colouring.of(design, Quantity.WALL).note()).isEmpty();
  }

  /** A case where three forces have no room. */
  @Test
  void withoutRoomForTheForcesItIsSaidAndPiecesStayPlain() throws NotADraft {
    Draft draft =
        DraftText.read(Sample.SLIM.text())
            .with("length.web-to-pip", "8")
            .with("length.palmar-crease-to-web", "5")
            .with("trough.web-clearance", "8")
            .with("trough.proximal-margin", "8")
            .with("trough.flare", "0")
            .with("relief.make", "no")
            .with("dorsal-shell.make", "no");
    Colouring strain = Colouring.of(made(draft), Quantity.STRAIN_TROUGH);
    assertThat(strain.quantity()).isEqualTo(Quantity.NONE);
    assertThat(strain.note()).contains("no room");
  }
}
