package org.midlateral.recipe;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowable;

import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinTask;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.midlateral.Fingers;
import org.midlateral.measurement.DesignRefused;
import org.midlateral.measurement.Order;
import org.midlateral.recipe.product.Product;
import org.midlateral.recipe.product.ProductRecipe;
import org.midlateral.recipe.rigidity.Bands;
import org.midlateral.recipe.rigidity.Rigidity;
import org.midlateral.recipe.rigidity.RigidityRecipe;
import org.midlateral.work.Interruption;

/** Long work ends soon after its thread is interrupted, wherever it is done, and leaves it so. */
class InterruptionTest {
  private final Order order = Fingers.order(Fingers.ring());

  @AfterEach
  void goOn() {
    Thread.interrupted();
  }

  @Test
  void makingIsCalledOff() {
    Thread.currentThread().interrupt();
    assertThatThrownBy(() -> ProductRecipe.make(order, List.of()))
        .isInstanceOf(CancellationException.class);
    assertThat(Thread.currentThread().isInterrupted()).isTrue();
  }

  @Test
  void documentsAreCalledOff() {
    Product product = ProductRecipe.make(order, List.of());
    Thread.currentThread().interrupt();
    assertThatThrownBy(() -> ProductRecipe.withDocuments(product))
        .isInstanceOf(CancellationException.class);
  }

  @Test
  void bandsAreCalledOffOnAllTheirThreads() {
    Thread.currentThread().interrupt();
    assertThatThrownBy(() -> Bands.sample(order, 100, 1, 1))
        .isInstanceOf(CancellationException.class);
  }

  @Test
  void findingsAreCalledOff() throws DesignRefused {
    Orthosis made = Orthosis.make(order);
    Thread.currentThread().interrupt();
    assertThatThrownBy(() -> RigidityRecipe.findings(made, Rigidity.USUAL_WRAPS))
        .isInstanceOf(CancellationException.class);
    assertThat(Thread.currentThread().isInterrupted()).isTrue();
  }

  /** The part goes round until it is called off: where it is not, this test does not end. */
  @Test
  @Timeout(60)
  void aPartOnAnotherCoreIsCalledOffWithItsAsker() throws InterruptedException {
    CountDownLatch begun = new CountDownLatch(1);
    AtomicReference<Throwable> met = new AtomicReference<>();
    Thread asker =
        new Thread(
            () -> {
              Concurrent<Boolean> part = Concurrent.begin(() -> goRound(begun));
              met.set(catchThrowable(part::end));
            });
    asker.start();
    begun.await();
    asker.interrupt();
    asker.join();

    assertThat(met.get()).isInstanceOf(CancellationException.class);
  }

  /** The asker waits in a way that hides its interruption. */
  @Test
  @Timeout(60)
  void whatIsCalledOffEndsHoweverItsAskerWaits() throws InterruptedException {
    CountDownLatch begun = new CountDownLatch(1);
    AtomicReference<Interruption> work = new AtomicReference<>();
    AtomicReference<Throwable> met = new AtomicReference<>();
    Thread asker =
        new Thread(
            () -> {
              Interruption asked = Interruption.current();
              work.set(asked);
              ForkJoinTask<Boolean> part =
                  ForkJoinPool.commonPool().submit(() -> asked.during(() -> goRound(begun)));
              met.set(catchThrowable(part::join));
            });
    asker.start();
    begun.await();
    work.get().callOff();
    asker.join();

    assertThat(met.get()).isInstanceOf(CancellationException.class);
  }

  /** A thread that answers one question after another clears its interruption in between. */
  @Test
  @Timeout(60)
  void whatWasCalledOffStaysSoWhenItsAskerTurnsToOtherWork() throws InterruptedException {
    CountDownLatch begun = new CountDownLatch(1);
    AtomicReference<Throwable> met = new AtomicReference<>();
    Interruption asked = Interruption.current();
    Thread part =
        new Thread(() -> met.set(catchThrowable(() -> asked.during(() -> goRound(begun)))));
    part.start();
    begun.await();
    Thread.currentThread().interrupt();
    assertThatThrownBy(Interruption::ifInterrupted).isInstanceOf(CancellationException.class);
    Thread.interrupted();

    assertThatCode(Interruption::ifInterrupted).doesNotThrowAnyException();
    part.join();
    assertThat(met.get()).isInstanceOf(CancellationException.class);
    assertThatCode(() -> Concurrent.begin(() -> true).end()).doesNotThrowAnyException();
  }

  private static boolean goRound(CountDownLatch begun) {
    begun.countDown();
    while (true) {
      Interruption.ifInterrupted();
      Thread.onSpinWait();
    }
  }
}
