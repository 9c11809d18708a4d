package org.midlateral.recipe.rigidity;

import org.midlateral.mechanics.RigidityBlock;
import org.midlateral.recipe.rigidity.Rigidity.Curve;

/** A trough of a comparison, and how it bends. */
record ComparedWrap(ComparedTrough trough, ComparedBend bend) {
  /**
   * The report's line.
   *
   * @param half the same finger's trough up to the mid-lateral lines
   */
  RigidityBlock.Wrap line(ComparedTrough half) {
    RigidityBlock.Wrap line = trough.line(half).with(bend.joint().orElse(null));
    return bend.shell().map(shell -> HeldPieces.beside(line, shell)).orElse(line);
  }

  Curve curve() {
    return new Curve(
        trough.wrap(), trough.solids(), trough.support(), trough.profile(), bend.shell());
  }
}
