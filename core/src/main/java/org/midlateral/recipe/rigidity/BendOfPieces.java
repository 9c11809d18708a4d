package org.midlateral.recipe.rigidity;

/** By what the bend of pieces that nobody wears is computed. */
public enum BendOfPieces {
  /**
   * Beam theory alone; where the finite elements would have no answer is found out all the same.
   */
  BEAMS,

  /** Beam theory, and finite elements beside it. */
  BEAMS_AND_ELEMENTS
}
