package org.midlateral.recipe.rigidity;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.midlateral.Fingers;
import org.midlateral.measurement.Finding;
import org.midlateral.mechanics.ContactZone;
import org.midlateral.mechanics.Supports;
import org.midlateral.mechanics.ThreePoint;
import org.midlateral.recipe.Orthosis;

/** What cannot be computed is told, once and with its reason. */
class HeldPiecesTest {
  @Test
  void forcesOffTheTroughAreTold() throws Exception {
    Orthosis made = Orthosis.make(Fingers.order(Fingers.ring()));
    ThreePoint worn =
        Supports.worn(20, made.order().design().support(), made.digit(), made.bare().outline());
    ContactZone beyond = ContactZone.on(made.digit(), -60, -50, s -> 10);
    ThreePoint off =
        new ThreePoint(worn.moment(), worn.pip(), worn.proximal(), worn.distal(), beyond);
    List<Finding> findings = new ArrayList<>();

    assertThat(HeldPieces.forColours(made, false, worn, findings)).isPresent();
    assertThat(findings).isEmpty();
    assertThat(HeldPieces.forColours(made, false, off, findings)).isEmpty();
    assertThat(findings)
        .extracting(Finding::text)
        .containsExactly("The finite element result is left out: no rim to put the load on");
    assertThat(HeldPieces.of(made, HeldPieces.factored(made, findings), off).findings()).hasSize(1);
  }
}
