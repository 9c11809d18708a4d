package org.midlateral.viewer.background;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.locks.LockSupport;
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
    try (Worker<Integer, Integer> worker =
        new Worker<>("test", this::work, Runnable::run, answers::add)) {
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

  /** Files opened one after another, answers delayed: none is told while another is open. */
  @Test
  void noAnswerIsToldAboutAFormerSubject() throws Exception {
    Random random = new Random(7);
    AtomicInteger open = new AtomicInteger();
    AtomicInteger told = new AtomicInteger();
    List<String> wrong = new CopyOnWriteArrayList<>();
    ExecutorService asker = Executors.newSingleThreadExecutor();
    Worker<Integer, Integer> worker =
        new Worker<>(
            "test",
            question -> delayed(random.nextInt(3), question),
            answer -> asker.execute(() -> delayed(random.nextInt(3), answer).run()),
            answer -> {
              told.incrementAndGet();
              if (answer != open.get()) {
                wrong.add(answer + " while " + open.get() + " is open");
              }
            });
    for (int file = 1; file <= 150; file++) {
      int next = file;
      asker.execute(
          () -> {
            open.set(next);
            worker.forget();
            worker.ask(next);
          });
      TimeUnit.MILLISECONDS.sleep(random.nextInt(6));
    }
    for (int i = 0; i < 1000 && told.get() < 2; i++) {
      TimeUnit.MILLISECONDS.sleep(10);
    }
    worker.close();
    asker.shutdown();
    assertThat(asker.awaitTermination(10, TimeUnit.SECONDS)).isTrue();
    assertThat(wrong).isEmpty();
    assertThat(told.get()).isGreaterThan(1);
  }

  private static <T> T delayed(int millis, T what) {
    LockSupport.parkNanos(TimeUnit.MILLISECONDS.toNanos(millis));
    return what;
  }
}
