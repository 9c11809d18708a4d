package org.midlateral.viewer.view;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.midlateral.viewer.colour.Scale;
import org.midlateral.viewer.draft.DraftText;
import org.midlateral.viewer.drawing.Palette;
import org.midlateral.viewer.sample.Sample;
import org.midlateral.viewer.scene.DesignShapes;
import org.midlateral.viewer.scene.MadeDraft;
import org.midlateral.viewer.scene.Quantity;
import org.midlateral.viewer.section.Colouring;

/** The colours fit what is seen, and two designs side by side have the same. */
class ShownColoursTest {
  private static DesignShapes made(String wall) throws Exception {
    return MadeDraft.of(
            DraftText.read(Sample.BULBOUS.text())
                .with("print.edge-length", "1.2 mm")
                .with("trough.wall", wall))
        .shapes()
        .orElseThrow();
  }

  private static Scale fitted(DesignShapes design, Quantity quantity, DisplayChoice choice) {
    ShownColours all = new ShownColours(Colouring.of(design, quantity), Colouring.PLAIN);
    return all.fitted(design, Optional.empty(), choice).now().scale();
  }

  /** Over the trough clearance runs from 1.3 mm, liner included, to 2.5 mm at the relief. */
  @Test
  void aHiddenShellHasNoSay() throws Exception {
    DesignShapes design = made("1.6 mm");
    DisplayChoice both = DisplayChoice.first();
    Scale wide = fitted(design, Quantity.CLEARANCE, both);
    assertThat(wide.low()).isLessThan(0.3);
    assertThat(wide.high()).isGreaterThan(4);
    DisplayChoice alone = both.with(ViewPart.SHELL, PartVisibility.HIDDEN);
    Scale narrow = fitted(design, Quantity.CLEARANCE, alone);
    assertThat(narrow.low()).isCloseTo(1.25, within(0.06));
    assertThat(narrow.high()).isCloseTo(2.5, within(0.11));
  }

  /** 9 kPa: as the caution has it. */
  @Test
  void pressureReachesFromZeroPastWhatItIsHeldAgainst() throws Exception {
    DesignShapes design = made("1.6 mm");
    DisplayChoice trough = DisplayChoice.first().with(ViewPart.SHELL, PartVisibility.HIDDEN);
    assertThat(Quantity.PRESSURE.reference()).contains(9.0);
    Scale scale = fitted(design, Quantity.PRESSURE, trough);
    assertThat(scale.low()).isZero();
    assertThat(scale.high()).isGreaterThanOrEqualTo(9);
  }

  @Test
  void twoDesignsHaveOneScale() throws Exception {
    DesignShapes thick = made("2.4 mm");
    DesignShapes thin = made("1.2 mm");
    Colouring now = Colouring.of(thick, Quantity.WALL);
    Colouring before = Colouring.of(thin, Quantity.WALL);
    assertThat(now.scale()).isNotEqualTo(before.scale());
    ShownColours both =
        new ShownColours(now, before).fitted(thick, Optional.of(thin), DisplayChoice.first());
    assertThat(both.areTwo()).isTrue();
    assertThat(both.now().scale()).isEqualTo(both.kept().scale());
    assertThat(both.now().scale().low()).isLessThanOrEqualTo(1.2);
    assertThat(both.now().scale().high()).isGreaterThanOrEqualTo(2.4);
    assertThat(new Legend(both, Palette.LIGHT).caption()).endsWith("one scale for both");
  }
}
