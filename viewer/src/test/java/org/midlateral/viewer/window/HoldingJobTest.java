package org.midlateral.viewer.window;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.midlateral.recipe.Orthosis;
import org.midlateral.recipe.joint.JointHeld;
import org.midlateral.recipe.joint.JointWords;
import org.midlateral.viewer.draft.DraftText;
import org.midlateral.viewer.sample.Sample;
import org.midlateral.viewer.scene.MadeDraft;

class HoldingJobTest {
  /** The report's answer first, then all that follows from it, then this design among others. */
  @Test
  void tellsWhatTheReportTells() throws Exception {
    Orthosis made =
        MadeDraft.of(DraftText.read(Sample.SLIM.text())).shapes().orElseThrow().orthosis();
    String text = HoldingJob.text(made);

    assertThat(text).startsWith(new JointWords(JointHeld.of(made)).line());
    assertThat(text).contains("What to change: ", "In the morning", "this design");
  }
}
