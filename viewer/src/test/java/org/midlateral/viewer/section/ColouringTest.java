package org.midlateral.viewer.section;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.midlateral.viewer.draft.Draft;
import org.midlateral.viewer.draft.DraftText;
import org.midlateral.viewer.draft.DraftText.NotADraft;
import org.midlateral.viewer.sample.Sample;
import org.midlateral.viewer.scene.DesignShapes;
import org.midlateral.viewer.scene.MadeDraft;
import org.midlateral.viewer.scene.Quantity;

/** Strains are shown, or it is said why not. */
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
