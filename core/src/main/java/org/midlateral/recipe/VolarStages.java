package org.midlateral.recipe;

import org.midlateral.cut.MidlateralCut;
import org.midlateral.cut.Outline;
import org.midlateral.digit.DigitSurface;
import org.midlateral.digit.TapedDigit;
import org.midlateral.measurement.Design;
import org.midlateral.measurement.DesignRefused;
import org.midlateral.measurement.Measurements;
import org.midlateral.measurement.Order;
import org.midlateral.piece.Piece;
import org.midlateral.relief.Relief;
import org.midlateral.trough.Trough;

/**
 * An order's volar piece with every stage on the way to it, not meshed: all that is needed of a
 * trough that is only compared. On the right hand's frame.
 *
 * @param order what was asked for
 * @param digit the skin
 * @param relief its bubbles
 * @param bare the piece before its reliefs
 * @param plain the piece with its reliefs, before label and vents
 */
public record VolarStages(Order order, DigitSurface digit, Relief relief, Piece bare, Piece plain) {

  /**
   * Draws them.
   *
   * @throws DesignRefused where the trough has no room on this finger
   */
  public static VolarStages of(Order order) throws DesignRefused {
    Measurements measured = order.measurements();
    Design design = order.design();
    DigitSurface digit = TapedDigit.of(measured);
    Outline outline = MidlateralCut.of(measured, design.trough(), digit);
    Relief relief = Relief.of(measured, design.relief(), digit);
    Piece bare = Trough.of(design.trough(), digit, outline);
    return new VolarStages(order, digit, relief, bare, relief.over(bare));
  }
}
