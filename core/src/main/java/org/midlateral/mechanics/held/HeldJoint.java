package org.midlateral.mechanics.held;

import org.midlateral.cut.Outline;
import org.midlateral.digit.DigitSurface;
import org.midlateral.mechanics.ContactZone;
import org.midlateral.mechanics.ThreePoint;

/**
 * The load of a held joint: the finger wants to flex, its two ends press volarly on the floor, and
 * the closure pulls dorsally about the PIP axis.
 *
 * @param axis station of the PIP axis (mm)
 * @param proximal where the proximal end presses
 * @param distal where the distal end presses
 * @param closure where the closure pulls
 * @param moment of the finger about the PIP axis (N·mm)
 */
public record HeldJoint(double axis, Zone proximal, Zone distal, Zone closure, double moment) {
  /** Length of the two zones at the ends, unless chosen otherwise (mm). */
  public static final double END = 8;

  /** Length of the closure, unless chosen otherwise (mm). */
  public static final double CLOSURE = 12;

  /**
   * A length along the finger.
   *
   * @param from station (mm)
   * @param to station (mm)
   */
  public record Zone(double from, double to) {
    public Zone {
      if (!(from < to)) {
        throw new IllegalArgumentException("no zone from " + from + " to " + to);
      }
    }

    /** Station of its middle (mm). */
    public double middle() {
      return (from + to) / 2;
    }

    /** Its length (mm). */
    public double length() {
      return to - from;
    }
  }

  /** The usual zones on a trough: 8 mm at its two ends, 12 mm of closure on the PIP axis. */
  public static HeldJoint on(DigitSurface digit, Outline trough, double moment) {
    double axis = digit.pipAxis();
    return new HeldJoint(
        axis,
        new Zone(trough.proximal(), trough.proximal() + END),
        new Zone(trough.distal() - END, trough.distal()),
        new Zone(axis - CLOSURE / 2, axis + CLOSURE / 2),
        moment);
  }

  /** The same zones and moment as the beam's. */
  public static HeldJoint of(ThreePoint support) {
    return new HeldJoint(
        support.pip(),
        zone(support.proximal()),
        zone(support.distal()),
        zone(support.closure()),
        support.moment());
  }

  private static Zone zone(ContactZone zone) {
    return new Zone(zone.from(), zone.to());
  }

  /** Distance from the PIP axis to the middle of the proximal zone (mm). */
  public double proximalArm() {
    return axis - proximal.middle();
  }

  /** Distance from the PIP axis to the middle of the distal zone (mm). */
  public double distalArm() {
    return distal.middle() - axis;
  }
}
