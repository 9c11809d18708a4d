package org.midlateral.mechanics.joint;

import java.util.List;
import org.midlateral.digit.DigitSurface;
import org.midlateral.mechanics.Joining;
import org.midlateral.mechanics.element.Isotropic;
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

  /** Whether a station lies on the part of the finger that turns. */
  boolean distal(double station) {
    return station > skin.pipAxis();
  }
}
