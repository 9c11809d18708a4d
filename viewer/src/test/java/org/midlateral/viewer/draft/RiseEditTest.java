package org.midlateral.viewer.draft;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.midlateral.viewer.sample.Sample;

/** Rises set in the picture stand in the draft as if they had been typed. */
class RiseEditTest {
  @Test
  void oneIsAddedMovedAndRaised() throws Exception {
    Draft one = RiseEdit.added(DraftText.read(Sample.INCHES.text()), 25.04, -0.04);
    assertThat(one.items(RiseEdit.LIST)).isEqualTo(1);
    assertThat(one.get("relief.bubbles[0].station")).isEqualTo("25.0 mm");
    assertThat(one.get("relief.bubbles[0].girth")).isEqualTo("0.0 mm");
    assertThat(one.get("relief.bubbles[0].height")).isEqualTo("1.0 mm");
    assertThat(one.get("relief.make"))
        .isEqualTo(DraftText.read(Sample.INCHES.text()).get("relief.make"));
    Draft moved = RiseEdit.moved(one, 0, 30, 4.26);
    assertThat(moved.get("relief.bubbles[0].station")).isEqualTo("30.0 mm");
    assertThat(moved.get("relief.bubbles[0].girth")).isEqualTo("4.3 mm");
    Draft metric = DraftText.read(Sample.SLIM.text());
    assertThat(RiseEdit.added(metric, 25.04, 2).get("relief.bubbles[0].station")).isEqualTo("25.0");
    assertThat(RiseEdit.raised(moved, 0, 1).get("relief.bubbles[0].height")).isEqualTo("1.5 mm");
  }

  @Test
  void heightsStayInHalfMillimetresWithinWhatTheKeyAllows() throws Exception {
    Draft inches =
        RiseEdit.added(DraftText.read(Sample.INCHES.text()), 25, 0)
            .with("relief.bubbles[0].height", "1/16");
    // 1/16 in are 1.59 mm, of halves nearest to 1.5.
    assertThat(RiseEdit.raised(inches, 0, 1).get("relief.bubbles[0].height")).isEqualTo("2.0 mm");
    assertThat(RiseEdit.raised(inches, 0, -9).get("relief.bubbles[0].height")).isEqualTo("0.5 mm");
    assertThat(RiseEdit.raised(inches, 0, 9).get("relief.bubbles[0].height")).isEqualTo("3.0 mm");
    Draft odd = inches.with("relief.bubbles[0].height", "high");
    assertThat(RiseEdit.raised(odd, 0, 1)).isEqualTo(odd);
  }

  /** Its keys have defaults, which the draft need not state. */
  @Test
  void thePairMovesAsOneWithinWhatItsKeysAllow() throws Exception {
    Draft bulbous = DraftText.read(Sample.BULBOUS.text());
    assertThat(RiseEdit.pairMoved(bulbous, 4.26).get("relief.volar-offset")).isEqualTo("4.3");
    assertThat(RiseEdit.pairMoved(bulbous, -2).get("relief.volar-offset")).isEqualTo("0.0");
    assertThat(RiseEdit.pairMoved(bulbous, 40).get("relief.volar-offset")).isEqualTo("10.0");
    assertThat(RiseEdit.pairRaised(bulbous, 1).get("relief.height")).isEqualTo("1.5");
    Draft slim = DraftText.read(Sample.SLIM.text());
    assertThat(slim.get("relief.height")).isEmpty();
    assertThat(RiseEdit.pairRaised(slim, 2).get("relief.height")).isEqualTo("2.0");
    Draft inches = DraftText.read(Sample.INCHES.text());
    assertThat(RiseEdit.pairRaised(inches, -1).get("relief.height")).isEqualTo("0.5 mm");
    assertThat(RiseEdit.pairTakenOut(bulbous).get("relief.make")).isEqualTo("no");
  }
}
