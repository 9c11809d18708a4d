package org.midlateral.viewer.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.midlateral.recipe.joint.JointHeld;
import org.midlateral.viewer.draft.Draft;
import org.midlateral.viewer.draft.DraftText;
import org.midlateral.viewer.sample.Sample;
import org.midlateral.viewer.scene.MadeDraft;

/** The difference of two designs is told by the report's figures. */
class DesignPairTest {
  @Test
  void theDifferenceIsTheReportsFigures() throws Exception {
    Draft draft = DraftText.read(Sample.SLIM.text()).with("print.edge-length", "1.2 mm");
    MadeDraft kept = MadeDraft.of(draft);
    assertThat(new DesignPair(kept, kept).difference()).isEqualTo("Both are the same design.");

    MadeDraft now = MadeDraft.of(draft.with("trough.wall", "2.8").with("closure.width", ""));
    String line = new DesignPair(kept, now).difference();
    assertThat(line).contains("trough.wall 1.4 → 2.8").contains("closure.width 20 → ");
    String before = angle(kept);
    String after = angle(now);
    assertThat(line)
        .contains(
            before.equals(after)
                ? "beyond the angle measured by " + after + "° as before"
                : "beyond the angle measured by " + before + " → " + after + "°");
    // A wall twice as thick is somewhat more than twice as stiff, being further out as well.
    double ratio = Double.parseDouble(line.replaceAll(".*EI at the PIP × ([\\d.]+)\\. .*", "$1"));
    assertThat(ratio).isCloseTo(2.6, within(0.5));
  }

  private static String angle(MadeDraft of) throws Exception {
    double angle = JointHeld.withoutBands(of.shapes().orElseThrow().orthosis()).answer().angle();
    return String.format(Locale.ROOT, "%.1f", angle);
  }
}
