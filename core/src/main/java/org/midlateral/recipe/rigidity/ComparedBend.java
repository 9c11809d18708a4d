package org.midlateral.recipe.rigidity;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.midlateral.measurement.Finding;
import org.midlateral.mechanics.JointBlock.JointFigures;
import org.midlateral.mechanics.element.Isotropic;
import org.midlateral.mechanics.held.FactoredShell;
import org.midlateral.mechanics.held.FingerShell;
import org.midlateral.mechanics.held.HeldShell;
import org.midlateral.recipe.joint.WornOrthosis;

/**
 * How one trough of a comparison bends by the finite elements, and how it holds the joint: both
 * from one factor.
 *
 * @param shell under the three forces; empty where that cannot be computed, or was not asked for
 * @param joint how it holds the joint; empty where that has no answer, and for the closed tube,
 *     which nobody wears
 * @param findings why something is empty
 */
record ComparedBend(
    Optional<HeldShell> shell, Optional<JointFigures> joint, List<Finding> findings) {

  ComparedBend {
    findings = List.copyOf(findings);
  }

  /** Factors a trough and asks it. */
  static ComparedBend of(ComparedTrough one, Isotropic plastic, BendOfPieces by) {
    return of(one, Optional.empty(), plastic, by);
  }

  /**
   * Factors a trough, or a closed tube, and asks it.
   *
   * @param trough that of a closed tube, where it is meshed for computing already
   */
  static ComparedBend of(
      ComparedTrough one, Optional<FingerShell> trough, Isotropic plastic, BendOfPieces by) {
    List<Finding> findings = new ArrayList<>();
    boolean worn = one.pieces().size() == 1;
    if (by == BendOfPieces.BEAMS && !worn) {
      HeldPieces.tryCompared(one, trough, plastic, findings);
      return new ComparedBend(Optional.empty(), Optional.empty(), findings);
    }
    Optional<FactoredShell> body = HeldPieces.factored(one, trough, plastic, findings);
    Optional<HeldShell> shell = Optional.empty();
    if (by == BendOfPieces.BEAMS_AND_ELEMENTS) {
      shell = body.flatMap(b -> HeldPieces.loaded(one, b, findings));
    } else {
      body.ifPresent(b -> HeldPieces.tryLoaded(one, b, findings));
    }
    return new ComparedBend(
        shell, body.filter(b -> worn).map(one::worn).flatMap(WornOrthosis::figures), findings);
  }
}
