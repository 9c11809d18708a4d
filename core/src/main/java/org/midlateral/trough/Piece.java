package org.midlateral.trough;

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
 * @param wall thickness (mm)
 */
public record Piece(
    String name, DigitSurface digit, Outline outline, boolean dorsal, GapField gap, double wall) {

  /** The same piece with another gap field. */
  public Piece withGap(GapField other) {
    return new Piece(name, digit, outline, dorsal, other, wall);
  }

  /** The mirror image: the same piece of the other hand. The skin's sections are symmetric. */
  public Piece mirrored() {
    return new Piece(name, digit, outline.mirrored(), dorsal, gap.mirrored(), wall);
  }
}
