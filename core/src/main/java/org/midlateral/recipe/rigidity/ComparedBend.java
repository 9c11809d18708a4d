package org.midlateral.recipe.rigidity;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.midlateral.measurement.Finding;
import org.midlateral.mechanics.JointBlock.JointFigures;
import org.midlateral.mechanics.element.Isotropic;
import org.midlateral.mechanics.held.FactoredShell;
import org.midlateral.mechanics.held.HeldShell;
import org.midlateral.recipe.joint.WornOrthosis;

/**
 * How one trough of a comparison bends by the finite elements, and how it holds the joint: both
 * from one factor.
 *
 * @param shell under the three forces; empty where that cannot be computed
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
  static ComparedBend of(ComparedTrough one, Isotropic plastic) {
    List<Finding> findings = new ArrayList<>();
    Optional<FactoredShell> body = HeldPieces.factored(one, plastic, findings);
    return new ComparedBend(
        body.flatMap(b -> HeldPieces.loaded(one, b, findings)),
        body.filter(b -> one.pieces().size() == 1).map(one::worn).flatMap(WornOrthosis::figures),
        findings);
  }
}
