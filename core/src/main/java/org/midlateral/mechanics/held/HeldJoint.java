package org.midlateral.mechanics.held;

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
