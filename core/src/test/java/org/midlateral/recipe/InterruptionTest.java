package org.midlateral.recipe;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.midlateral.Fingers;
import org.midlateral.measurement.Order;
import org.midlateral.recipe.product.Product;
import org.midlateral.recipe.product.ProductRecipe;
import org.midlateral.recipe.rigidity.Bands;

/** Long work ends soon after its thread is interrupted, and leaves it interrupted. */
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
}
