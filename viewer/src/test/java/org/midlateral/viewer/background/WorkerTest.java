package org.midlateral.viewer.background;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

@Timeout(20)
class WorkerTest {
  private final BlockingQueue<Integer> answers = new LinkedBlockingQueue<>();
  private final CountDownLatch begun = new CountDownLatch(1);
  private final CountDownLatch never = new CountDownLatch(1);

  /** Answers zero never, and any other number with itself. */
  private int work(int question) {
    if (question == 0) {
      begun.countDown();
      try {
        never.await();
      } catch (InterruptedException e) {
        throw new CancellationException();
      }
    }
    return question;
  }

  @Test
  void workThatIsDroppedEndsAndTheNextIsDone() throws InterruptedException {
    try (Worker<Integer, Integer> worker = new Worker<>("test", this::work, answers::add)) {
      worker.ask(0);
      begun.await();
      worker.ask(1);
      worker.drop();
      worker.ask(2);
      assertThat(answers.poll(10, TimeUnit.SECONDS)).isEqualTo(2);
      worker.drop();
      worker.ask(3);
      assertThat(answers.poll(10, TimeUnit.SECONDS)).isEqualTo(3);
      assertThat(answers).isEmpty();
    }
  }
}
