package org.midlateral;

import org.midlateral.cut.MidlateralCut;
import org.midlateral.digit.DigitSurface;
import org.midlateral.digit.TapedDigit;
import org.midlateral.measurement.Design;
import org.midlateral.measurement.DesignRefused;
import org.midlateral.measurement.Measurements;
import org.midlateral.piece.Piece;
import org.midlateral.relief.Relief;
import org.midlateral.shell.DorsalShell;
import org.midlateral.trough.Trough;

/**
 * The pieces of the ring finger by the plain design for a sore joint, with its pair of reliefs,
 * unmeshed.
 */
public final class RingPieces {
  private static final Design DESIGN = Fingers.sore();

  private RingPieces() {}

  /**
   * The trough.
   *
   * @param deficit of extension (rad)
   */
  public static Piece trough(double deficit) throws DesignRefused {
    Piece bare = bare(deficit);
    return relief(deficit, bare.digit()).over(bare);
  }

  /** The dorsal shell over it. */
  public static Piece dorsalShell(double deficit) throws DesignRefused {
    Piece bare = bare(deficit);
    Relief relief = relief(deficit, bare.digit());
    return DorsalShell.of(DESIGN, bare.digit(), bare, relief.over(bare), relief);
  }

  private static Piece bare(double deficit) throws DesignRefused {
    Measurements measured = Fingers.ring(deficit);
    DigitSurface digit = TapedDigit.of(measured);
    return Trough.of(DESIGN.trough(), digit, MidlateralCut.of(measured, DESIGN.trough(), digit));
  }

  private static Relief relief(double deficit, DigitSurface digit) throws DesignRefused {
    return Relief.of(Fingers.ring(deficit), DESIGN.relief(), digit);
  }
}
