package org.midlateral.mechanics.held;

import org.midlateral.measurement.DesignRefused;
import org.midlateral.measurement.NotComputable;
import org.midlateral.mechanics.element.Isotropic;
import org.midlateral.mechanics.finite.RigidMotion;
import org.midlateral.mechanics.finite.ShellSolver;
import org.midlateral.piece.Piece;

/**
 * A shell whose equations are factored, its rigid motion held: what costs most, and what every load
 * on it shares. Immutable; may be shared between threads.
 *
 * @param shell the mid-surfaces
 * @param solver of their equations
 */
public record FactoredShell(FingerShell shell, ShellSolver solver) {
  /**
   * Factors a shell.
   *
   * @throws NotComputable where a piece is not held
   */
  public static FactoredShell of(FingerShell shell) throws NotComputable {
    return new FactoredShell(shell, ShellSolver.of(shell.model(), RigidMotion.held(shell.model())));
  }

  /**
   * One piece alone, meshed for computing.
   *
   * @throws DesignRefused where its surface folds at an edge
   * @throws NotComputable where the middle of its wall folds
   */
  public static FactoredShell of(Piece piece, Isotropic material)
      throws DesignRefused, NotComputable {
    return of(FingerShell.alone(piece, material));
  }
}
