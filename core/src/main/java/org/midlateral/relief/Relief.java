package org.midlateral.relief;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.midlateral.digit.DigitSurface;
import org.midlateral.measurement.Design.Bubble;
import org.midlateral.measurement.Design.Make;
import org.midlateral.measurement.Design.ReliefDesign;
import org.midlateral.measurement.Level;
import org.midlateral.measurement.Measurements;
import org.midlateral.trough.GapField;
import org.midlateral.trough.Piece;

/**
 * The relief bubbles of one design: the pair over the collateral ligaments, where it is made, and
 * any further ones.
 *
 * @param bubbles all of them
 */
public record Relief(List<ReliefBubble> bubbles) {
  /**
   * A PIP joint counts as bulbous when its circumference exceeds both neighbours' by this much
   * (mm). Common practice, no source.
   */
  public static final double BULBOUS = 3;

  public Relief {
    bubbles = List.copyOf(bubbles);
  }

  /** The bubbles a design asks for, on a right hand's frame: +girth is radial. */
  public static Relief of(Measurements measurements, ReliefDesign design, DigitSurface digit) {
    List<ReliefBubble> bubbles = new ArrayList<>();
    if (madePair(measurements, design)) {
      double axis = digit.pipAxis();
      double girth = digit.circumference(axis) / 4 - design.volarOffset();
      for (int side = 1; side >= -1; side -= 2) {
        bubbles.add(
            new ReliefBubble(side * girth, axis, design.height(), design.width(), design.length()));
      }
    }
    for (Bubble b : design.bubbles()) {
      bubbles.add(new ReliefBubble(b.girth(), b.station(), b.height(), b.width(), b.length()));
    }
    return new Relief(bubbles);
  }

  private static boolean madePair(Measurements measurements, ReliefDesign design) {
    return design.height() > 0
        && (design.make() == Make.YES || design.make() == Make.AUTO && bulbous(measurements));
  }

  /** Whether the PIP joint bulges over both of its neighbours. */
  public static boolean bulbous(Measurements measurements) {
    Map<Level, Double> tape = measurements.circumference();
    double neighbour = Math.max(tape.get(Level.PROXIMAL_PHALANX), tape.get(Level.MIDDLE_PHALANX));
    return tape.get(Level.PIP) >= neighbour + BULBOUS;
  }

  /** The gap all bubbles add. */
  public GapField field() {
    GapField field = GapField.uniform(0);
    for (ReliefBubble bubble : bubbles) {
      field = field.plus(bubble);
    }
    return field;
  }

  /** The piece with its gap raised over the bubbles. */
  public Piece over(Piece piece) {
    return piece.withGap(piece.gap().plus(field()));
  }
}
