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
 * @param midline its own midline, over which it is symmetric or nearly so
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
    Midline midline,
    GapField gap,
    GapField bridge,
    double wall,
    Optional<Raised> raised) {

  /** A piece with nothing on its outside. */
  public Piece(
      String name,
      DigitSurface digit,
      Outline outline,
      Midline midline,
      GapField gap,
      double wall) {
    this(name, digit, outline, midline, gap, GapField.uniform(0), wall, Optional.empty());
  }

  /** Whether it lies on the back of the finger. */
  public boolean dorsal() {
    return midline == Midline.DORSAL;
  }

  /** Girth from the piece's own midline of a girth of the skin at a station (mm). */
  public double ownGirth(double skin, double station) {
    return midline.ownGirth(skin, digit.circumference(station));
  }

  /** The skin's girth of a girth from the piece's own midline at a station (mm). */
  public double skinGirth(double own, double station) {
    return midline.skinGirth(own, digit.circumference(station));
  }

  /** The same piece with another gap field. */
  public Piece withGap(GapField other) {
    return new Piece(name, digit, outline, midline, other, bridge, wall, raised);
  }

  /** The same piece raised over waists of the finger, and its edge with it. */
  public Piece bridged(GapField rise) {
    return new Piece(
        name, digit, outline, midline, gap.plus(rise), bridge.plus(rise), wall, raised);
  }

  /** The same piece whose edge is measured square to the skin raised by a field. */
  public Piece withBridge(GapField other) {
    return new Piece(name, digit, outline, midline, gap, other, wall, raised);
  }

  /** The same piece with another outline. */
  public Piece withOutline(Outline other) {
    return new Piece(name, digit, other, midline, gap, bridge, wall, raised);
  }

  /** The same piece with something raised on its outside. */
  public Piece withRaised(Raised other) {
    return new Piece(name, digit, outline, midline, gap, bridge, wall, Optional.of(other));
  }

  /** The mirror image: the same piece of the other hand. The skin's sections are symmetric. */
  public Piece mirrored() {
    return new Piece(
        name,
        digit,
        outline.mirrored(),
        midline,
        gap.mirrored(),
        bridge.mirrored(),
        wall,
        raised.map(Raised::mirrored));
  }
}
