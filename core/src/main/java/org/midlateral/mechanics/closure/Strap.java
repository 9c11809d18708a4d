package org.midlateral.mechanics.closure;

import org.midlateral.measurement.Design.ClosureDesign;

/**
 * One of two straps of hook and loop that close from opposite sides. Each stays attached to the
 * hook at one end in its full width; from there on half of the width is cut away, so that the two
 * pass beside one another.
 *
 * @param station of its middle: the PIP axis (mm)
 * @param girth once round finger and orthosis (mm)
 * @param length once round and the lap (mm)
 * @param width at the attached end (mm)
 * @param attached length of the attached end, in full width (mm)
 * @param hook length of the hook on the volar side, along the girth (mm)
 */
public record Strap(
    double station, double girth, double length, double width, double attached, double hook) {

  /**
   * A strap.
   *
   * @param girth once round at its station (mm)
   * @param volar girth of the trough's outside at its station, which the hook must fit on (mm)
   */
  static Strap of(ClosureDesign design, double station, double girth, double volar) {
    double hook = Math.min(2 * design.lap(), volar);
    return new Strap(
        station,
        girth,
        girth + design.lap(),
        design.width(),
        Math.min(design.lap(), hook / 2),
        hook);
  }

  /** Width of the part that closes (mm). */
  public double halfWidth() {
    return width / 2;
  }
}
