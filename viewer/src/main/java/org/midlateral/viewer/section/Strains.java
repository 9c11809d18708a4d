package org.midlateral.viewer.section;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.midlateral.measurement.DesignRefused;
import org.midlateral.measurement.Hand;
import org.midlateral.measurement.Material;
import org.midlateral.mechanics.Supports;
import org.midlateral.mechanics.element.Isotropic;
import org.midlateral.mechanics.held.FingerShell;
import org.midlateral.mechanics.held.HeldJoint;
import org.midlateral.mechanics.held.HeldShell;
import org.midlateral.piece.Piece;
import org.midlateral.recipe.Orthosis;
import org.midlateral.relief.Relief;
import org.midlateral.shell.DorsalShell;
import org.midlateral.viewer.scene.Made;
import org.midlateral.viewer.scene.PieceShape;

/** Surface strains under the load of a held joint, by shell finite elements. */
final class Strains {
  private static final double PERCENT = 100;

  private Strains() {}

  /**
   * The principal strain furthest from zero at each vertex of each piece (%): stretched above zero,
   * squeezed below.
   *
   * @param pair whether both pieces are bonded; else the trough bears alone, and the shell has
   *     values that are no numbers
   * @throws DesignRefused where there is no room for the load, or the surface folds
   */
  static List<double[]> of(Made.MadeView view, boolean pair) throws DesignRefused {
    Orthosis made = view.orthosis();
    boolean closed = pair && made.dorsalShell().isPresent();
    HeldJoint joint =
        HeldJoint.of(
            Supports.worn(made.order().design().support(), made.digit(), made.bare().outline()));
    HeldShell held = HeldShell.solve(shell(made, closed), joint);
    List<double[]> strains = new ArrayList<>();
    for (PieceShape piece : view.pieces()) {
      strains.add(on(piece, held, closed));
    }
    return strains;
  }

  private static double[] on(PieceShape piece, HeldShell held, boolean closed) {
    if (piece.isDorsal() && !closed) {
      double[] none = new double[piece.shape().vertexCount()];
      Arrays.fill(none, Double.NaN);
      return none;
    }
    double[] strains = held.strainsOn(piece.solid());
    for (int v = 0; v < strains.length; v++) {
      strains[v] *= PERCENT;
    }
    return strains;
  }

  private static FingerShell shell(Orthosis made, boolean closed) throws DesignRefused {
    Material material = Material.of(made.order().design().material());
    Isotropic isotropic = new Isotropic(material.modulus(), material.poisson());
    Relief relief = made.relief();
    boolean left = made.order().measurements().hand() == Hand.LEFT;
    Piece volar = relief.over(made.bare());
    Piece trough = left ? volar.mirrored() : volar;
    if (!closed) {
      return FingerShell.trough(trough, isotropic);
    }
    Piece over = DorsalShell.of(made.order().design(), made.digit(), made.bare(), relief);
    return FingerShell.bonded(trough, left ? over.mirrored() : over, isotropic);
  }
}
