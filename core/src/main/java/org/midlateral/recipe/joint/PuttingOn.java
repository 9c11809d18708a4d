package org.midlateral.recipe.joint;

import java.util.Optional;
import org.midlateral.measurement.Material;
import org.midlateral.measurement.NotComputable;
import org.midlateral.mechanics.Donning;
import org.midlateral.mechanics.held.SpreadShell;
import org.midlateral.piece.Piece;
import org.midlateral.recipe.Orthosis;

/**
 * What it takes to push a dorsal shell along the finger over the trough's widest place: its rims
 * ride up a wedge, F = 2 N (tan a + m) / (1 - m tan a), with the force N that spreads it at each
 * rim, the slope a at which the trough grows wider along the finger, and friction m.
 *
 * @param spread by which it must open (mm)
 * @param rimForce on each of its rims when it is open (N)
 * @param force along the finger (N)
 * @param strain largest in the shell when it is open, as a share
 * @param bears strain that its material bears, as a share
 * @param toldAlready whether a strip of the shell is strained too far as well, which its inspection
 *     tells
 */
public record PuttingOn(
    double spread,
    double rimForce,
    double force,
    double strain,
    double bears,
    boolean toldAlready) {
  /** Friction of printed plastic on itself; from memory, 0.2 to 0.4. */
  private static final double FRICTION = 0.3;

  /** More along a finger (N) is much for a sore joint. Common practice, no source. */
  public static final double MUCH = 10;

  /**
   * That of an orthosis; empty where there is no shell, or one that just drops on.
   *
   * @throws NotComputable where the shell has no rims
   */
  static Optional<PuttingOn> of(WornOrthosis worn) throws NotComputable {
    Orthosis made = worn.made();
    Optional<SpreadShell> spread = worn.finger().spread();
    if (spread.isEmpty()) {
      return Optional.empty();
    }
    Piece shell = made.plainShell().orElseThrow();
    double overlap = made.order().design().dorsalShell().overlap();
    Donning donning = Donning.of(made.plainTrough(), shell, overlap);
    if (donning.spread() == 0) {
      return Optional.empty();
    }
    double rim = spread.get().force(donning.spread());
    double slope = donning.slope();
    double wedge = (slope + FRICTION) / Math.max(0.1, 1 - FRICTION * slope);
    double bears = Material.of(made.order().design().material()).allowableStrain();
    return Optional.of(
        new PuttingOn(
            donning.spread(),
            rim,
            2 * rim * wedge,
            spread.get().strain(donning.spread()),
            bears,
            donning.strain() > bears));
  }
}
