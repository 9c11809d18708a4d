package org.midlateral.mechanics.closure;

import java.util.List;
import org.midlateral.cut.Outline;
import org.midlateral.digit.DigitSurface;
import org.midlateral.measurement.Design.ClosureDesign;
import org.midlateral.piece.Piece;

/**
 * How the closures of an order lie along the finger: all of them that needs no girth.
 *
 * @param from station where a wrap's first turn begins (mm)
 * @param to station where its last turn ends (mm)
 * @param turns of a wrap in each pass
 * @param passes along the finger
 * @param layers of a wrap lying on one another, on the whole
 * @param tension a band is laid with (N)
 * @param tapes middles of the turns of tape (mm)
 */
public record ClosureLayout(
    double from,
    double to,
    int turns,
    int passes,
    double layers,
    double tension,
    List<Double> tapes) {

  /**
   * The middle of a turn of tape lies at least so far from the shell's ends (mm). Common practice,
   * no source.
   */
  private static final double FROM_END = 5;

  public ClosureLayout {
    tapes = List.copyOf(tapes);
  }

  /**
   * Lays them.
   *
   * @param pieces what is worn, the trough first
   */
  public static ClosureLayout of(ClosureDesign design, DigitSurface digit, List<Piece> pieces) {
    Outline trough = pieces.get(0).outline();
    double from = trough.flankStart();
    double to = Math.min(trough.distal(), digit.tip());
    double step = design.width() * (1 - design.overlap());
    double span = Math.max(0, to - from - design.width());
    int turns = 1 + (int) Math.ceil(span / step - 1e-9);
    // A single turn overlaps nothing: it is one layer.
    double inPass = turns == 1 ? 1 : 1 / (1 - design.overlap());
    int passes = (int) Math.max(1, Math.ceil(design.layers() / inPass - 1e-9));
    return new ClosureLayout(
        from,
        to,
        turns,
        passes,
        passes * inPass,
        design.tension(pieces.size() > 1),
        tapes(design, pieces.get(pieces.size() - 1).outline()));
  }

  /** One turn at either end of the outer piece; where they would lie on one another, one. */
  private static List<Double> tapes(ClosureDesign design, Outline outer) {
    double inset = Math.max(FROM_END, design.width() / 2);
    double first = outer.flankStart() + inset;
    double last = outer.flankEnd() - inset;
    return last - first < design.width() ? List.of((first + last) / 2) : List.of(first, last);
  }
}
