package org.midlateral.mechanics.closure;

import java.util.Optional;
import org.midlateral.measurement.Design.ClosureDesign;

/**
 * One of two straps of hook and loop that close from opposite sides. Both are cut from one band,
 * along its middle: each is half as wide as the band, one lies proximal, one distal, beside one
 * another all the way round. Each stays attached on its own half of the hook's length and leaves
 * the hook over the edge there, goes all the way round, and comes back on the free half in its own
 * lane and over itself. So either opens while the other stays closed.
 *
 * @param station of the band's middle: the PIP axis (mm)
 * @param girth once round finger and orthosis (mm)
 * @param length once round and the lap (mm)
 * @param width of the band and of the hook, twice a strap's (mm)
 * @param attached length of the attached end, from the hook's middle to its edge (mm)
 * @param hook length of the hook on the volar side, along the girth (mm)
 */
public record Strap(
    double station, double girth, double length, double width, double attached, double hook) {
  /**
   * A strap holds on no less free hook than this, at either end (mm). Common practice, no source.
   */
  public static final double LEAST_FREE = 12;

  /** A strap lies over itself by no less than this (mm). Common practice, no source. */
  public static final double LEAST_LAP = 15;

  /**
   * A strap; empty where the hook has no room for two ends and two landings.
   *
   * @param girth once round at its station (mm)
   * @param room for the hook on the trough's outside, along the girth (mm)
   */
  static Optional<Strap> of(ClosureDesign design, double station, double girth, double room) {
    double lap = Math.max(design.lap(), LEAST_LAP);
    double hook = Math.min(2 * lap, room);
    return hook < 2 * LEAST_FREE
        ? Optional.empty()
        : Optional.of(new Strap(station, girth, girth + lap, design.width(), hook / 2, hook));
  }

  /** Width of a strap, half of the band's (mm). */
  public double halfWidth() {
    return width / 2;
  }

  /** Length of the hook that the other strap leaves free to land on (mm). */
  public double free() {
    return hook - attached;
  }

  /** How far it lies over itself (mm). */
  public double lap() {
    return length - girth;
  }
}
