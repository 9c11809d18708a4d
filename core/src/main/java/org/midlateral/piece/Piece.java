package org.midlateral.piece;

import java.util.Optional;
import org.midlateral.cut.Outline;
import org.midlateral.digit.DigitSurface;

/**
 * One piece before it is meshed: where it is, how far off the skin, how thick.
 *
 * @param name as in file names and reports
 * @param digit the skin it lies on
 * @param outline its finished edge in the unrolled plane, girth counted from its own midline
 * @param dorsal whether its midline is the dorsal one instead of the volar one
 * @param gap from skin to inner surface, girth always counted from the volar midline
 * @param bridge what of that gap bridges waists of the finger; the finished edge is measured square
 *     to the skin raised by it
 * @param wall thickness (mm)
 * @param raised what stands on its outside, if anything does
 */
public record Piece(
    String name,
    DigitSurface digit,
    Outline outline,
    boolean dorsal,
    GapField gap,
    GapField bridge,
    double wall,
    Optional<Raised> raised) {

  /** A piece with nothing on its outside. */
  public Piece(
      String name, DigitSurface digit, Outline outline, boolean dorsal, GapField gap, double wall) {
    this(name, digit, outline, dorsal, gap, GapField.uniform(0), wall, Optional.empty());
  }

  /**
   * Girth from the piece's own midline of a girth from the volar one, or the other way round (mm).
   *
   * @param station where the section is taken (mm)
   */
  public double otherGirth(double girth, double station) {
    return dorsal ? girth - Math.copySign(digit.circumference(station) / 2, girth) : girth;
  }

  /** The same piece with another gap field. */
  public Piece withGap(GapField other) {
    return new Piece(name, digit, outline, dorsal, other, bridge, wall, raised);
  }

  /** The same piece raised over waists of the finger, and its edge with it. */
  public Piece bridged(GapField rise) {
    return new Piece(name, digit, outline, dorsal, gap.plus(rise), bridge.plus(rise), wall, raised);
  }

  /** The same piece whose edge is measured square to the skin raised by a field. */
  public Piece withBridge(GapField other) {
    return new Piece(name, digit, outline, dorsal, gap, other, wall, raised);
  }

  /** The same piece with another outline. */
  public Piece withOutline(Outline other) {
    return new Piece(name, digit, other, dorsal, gap, bridge, wall, raised);
  }

  /** The same piece with something raised on its outside. */
  public Piece withRaised(Raised other) {
    return new Piece(name, digit, outline, dorsal, gap, bridge, wall, Optional.of(other));
  }

  /** The mirror image: the same piece of the other hand. The skin's sections are symmetric. */
  public Piece mirrored() {
    return new Piece(
        name,
        digit,
        outline.mirrored(),
        dorsal,
        gap.mirrored(),
        bridge.mirrored(),
        wall,
        raised.map(Raised::mirrored));
  }
}
