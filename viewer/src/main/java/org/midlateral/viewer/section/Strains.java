package org.midlateral.viewer.section;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.midlateral.measurement.DesignRefused;
import org.midlateral.measurement.Finding;
import org.midlateral.measurement.Hand;
import org.midlateral.mechanics.Supports;
import org.midlateral.mechanics.ThreePoint;
import org.midlateral.mechanics.held.HeldShell;
import org.midlateral.mechanics.joint.JointMoment;
import org.midlateral.recipe.Orthosis;
import org.midlateral.recipe.rigidity.HeldPieces;
import org.midlateral.viewer.scene.DesignShapes;
import org.midlateral.viewer.scene.PieceShape;

/** Surface strains under the load of a held joint, by shell finite elements. */
final class Strains {
  private static final double PERCENT = 100;

  private Strains() {}

  /**
   * The principal strain furthest from zero at each vertex of each piece (%): stretched above zero,
   * squeezed below. Empty where it cannot be computed.
   *
   * @param pair whether both pieces are bonded; else the trough bears alone, and the shell has
   *     values that are no numbers
   * @param findings take up why it cannot
   * @throws DesignRefused where there is no room for the load
   */
  static Optional<List<double[]>> of(DesignShapes design, boolean pair, List<Finding> findings)
      throws DesignRefused {
    Orthosis made = design.orthosis();
    boolean bonded = pair && made.dorsalShell().isPresent();
    ThreePoint support =
        Supports.worn(
            JointMoment.of(made.order(), made.digit()).atLimit(),
            made.order().design().support(),
            made.digit(),
            made.bare().outline());
    boolean left = made.order().measurements().hand() == Hand.LEFT;
    return HeldPieces.forColours(made, bonded, support, findings)
        .map(held -> design.pieces().stream().map(piece -> on(piece, held, bonded, left)).toList());
  }

  private static double[] on(PieceShape piece, HeldShell held, boolean bonded, boolean left) {
    if (piece.isDorsal() && !bonded) {
      double[] none = new double[piece.shape().vertexCount()];
      Arrays.fill(none, Double.NaN);
      return none;
    }
    // What is computed is drawn as for a right hand.
    double[] strains = held.strainsOn(left ? piece.solid().mirrored() : piece.solid());
    for (int v = 0; v < strains.length; v++) {
      strains[v] *= PERCENT;
    }
    return strains;
  }
}
