package org.midlateral.recipe.product;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.midlateral.accuracy.ErrorBudget;
import org.midlateral.measurement.Finding;
import org.midlateral.measurement.Refusals;
import org.midlateral.recipe.Inspection;

/** Of several meshes of one order that miss a bound, the one is told that misses least. */
class BestTryTest {
  private static Inspection found(Finding... findings) {
    return new Inspection(null, Optional.empty(), Optional.empty(), Map.of(), List.of(findings));
  }

  private static Finding chord(double error) {
    return Refusals.chordError("trough", error, ErrorBudget.CHORD);
  }

  private static Finding wall() {
    return Refusals.wall("trough", 1.2, 1.5);
  }

  @Test
  void aPassIsBetterThanARefusal() {
    assertThat(found().isBetterThan(found(chord(0.021)))).isTrue();
    assertThat(found(chord(0.021)).isBetterThan(found())).isFalse();
  }

  @Test
  void theSmallerMissIsBetter() {
    assertThat(found(chord(0.021)).isBetterThan(found(chord(0.03)))).isTrue();
    assertThat(found(chord(0.03)).isBetterThan(found(chord(0.021)))).isFalse();
    assertThat(found(chord(0.03)).isBetterThan(found(chord(0.021), chord(0.021)))).isTrue();
  }

  /** A finer mesh does not thicken a wall: two misses of the mesh are less than that one. */
  @Test
  void aMissOfTheMeshIsBetterThanOneOfTheDesign() {
    assertThat(found(chord(0.04), chord(0.04)).isBetterThan(found(wall()))).isTrue();
    assertThat(found(wall()).isBetterThan(found(chord(0.04), chord(0.04)))).isFalse();
  }
}
