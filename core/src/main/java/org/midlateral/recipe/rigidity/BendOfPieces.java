package org.midlateral.recipe.rigidity;

/** By what the bend of the pieces, and of those compared, is computed. */
public enum BendOfPieces {
  /**
   * Beam theory alone; where the finite elements would have no answer is found out all the same,
   * and how far the trough itself bends by them, which a caution needs.
   */
  BEAMS,

  /** Beam theory, and finite elements beside it. */
  BEAMS_AND_ELEMENTS
}
