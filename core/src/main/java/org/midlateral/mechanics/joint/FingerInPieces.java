package org.midlateral.mechanics.joint;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.midlateral.digit.DigitSurface;
import org.midlateral.measurement.DesignRefused;
import org.midlateral.measurement.NotComputable;
import org.midlateral.mechanics.Joining;
import org.midlateral.mechanics.element.Isotropic;
import org.midlateral.mechanics.held.FactoredShell;
import org.midlateral.mechanics.held.FingerShell;
import org.midlateral.piece.Piece;

/**
 * What is to be computed: a finger and the pieces it wears.
 *
 * @param skin of the finger, in the position that is asked for
 * @param dipAxis station of the DIP joint's axis (mm)
 * @param pieces the trough, or the trough and its dorsal shell; as drawn for a right hand
 * @param liner thickness of the trough's liner (mm); 0 for none
 * @param joining how the two hold together: bonded, or slipping where only bands hold them
 * @param material of both
 */
public record FingerInPieces(
    DigitSurface skin,
    double dipAxis,
    List<Piece> pieces,
    double liner,
    Joining joining,
    Isotropic material) {

  public FingerInPieces {
    pieces = List.copyOf(pieces);
    if (pieces.isEmpty() || pieces.size() > 2 || pieces.get(0).dorsal()) {
      throw new IllegalArgumentException("need a trough, and at most a dorsal shell with it");
    }
  }

  /** Whether the two pieces move each for itself. */
  boolean apart() {
    return pieces.size() > 1 && joining == Joining.SLIPPING;
  }

  /** The bodies that move each for itself, meshed and factored. */
  List<FactoredShell> factored() throws DesignRefused, NotComputable {
    if (apart() || pieces.size() == 1) {
      List<FactoredShell> bodies = new ArrayList<>();
      for (Piece piece : pieces) {
        bodies.add(FactoredShell.of(piece, material));
      }
      return bodies;
    }
    return List.of(FactoredShell.of(FingerShell.bonded(pieces.get(0), pieces.get(1), material)));
  }

  /** Where the joint turns (mm). */
  Vector3D centre() {
    return skin.centre(skin.pipAxis());
  }

  /** Whether a station lies on the part of the finger that turns. */
  boolean distal(double station) {
    return station > skin.pipAxis();
  }
}
