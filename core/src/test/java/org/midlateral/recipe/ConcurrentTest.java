package org.midlateral.recipe;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.midlateral.measurement.DesignRefused;

class ConcurrentTest {

  @Test
  void workThatWasHelpedIsDoneOnce() throws DesignRefused {
    AtomicInteger done = new AtomicInteger();
    Concurrent<Integer> work = Concurrent.begin(done::incrementAndGet);
    work.help();
    work.help();
    assertThat(work.end()).isEqualTo(1);
    assertThat(done.get()).isEqualTo(1);
  }

  /** Where it waited this test would not end. */
  @Test
  @Timeout(60)
  void aHelperDoesNotWaitForWorkThatIsBegun() throws InterruptedException, DesignRefused {
    CountDownLatch begun = new CountDownLatch(1);
    CountDownLatch helped = new CountDownLatch(1);
    Concurrent<Boolean> work =
        Concurrent.begin(
            () -> {
              begun.countDown();
              awaitQuietly(helped);
              return true;
            });
    Thread doer = new Thread(work::help);
    doer.start();
    begun.await();

    work.help();

    helped.countDown();
    assertThat(work.end()).isTrue();
    doer.join();
  }

  private static void awaitQuietly(CountDownLatch latch) {
    try {
      latch.await();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
