package org.midlateral.viewer.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.midlateral.viewer.draft.Draft;
import org.midlateral.viewer.draft.DraftText;
import org.midlateral.viewer.sample.Sample;
import org.midlateral.viewer.scene.Quantity;
import org.midlateral.viewer.window.MakingWorker.MadeAnswer;

class MakingWorkerTest {
  private static final int[] DELAYS = {0, 3, 10, 30, 60, 100, 150};

  /**
   * At the start the sample is being made when a file is opened, and the file may be the sample:
   * its making is called off at some step, and what comes is the finger all the same.
   */
  @Test
  void theSameDraftIsMadeAfterItWasCalledOff() throws Exception {
    for (int delay : DELAYS) {
      LinkedBlockingQueue<MadeAnswer> answers = new LinkedBlockingQueue<>();
      try (MakingWorker worker = new MakingWorker(answers::add)) {
        Draft draft = DraftText.read(Sample.BULBOUS.text());
        ask(worker, draft);
        Thread.sleep(delay);
        worker.forget();
        ask(worker, draft);

        MadeAnswer answer = answers.poll(30, TimeUnit.SECONDS);
        assertThat(answer).as("after " + delay + " ms").isNotNull();
        assertThat(answer.made().shapes()).as("after " + delay + " ms").isPresent();
      }
    }
  }

  private static void ask(MakingWorker worker, Draft draft) {
    worker.ask(draft, null, Optional.empty(), Quantity.NONE, Optional.empty());
  }
}
