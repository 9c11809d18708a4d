package org.midlateral.mechanics;

import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.midlateral.digit.DigitSurface;

/**
 * A plane across the finger, normal to its centreline. Points of it have the coordinates y
 * (medio-lateral, as the frame's) and n (dorsal), counted from the centreline. Seen against the
 * normal, that is from distal, y to n is a counter-clockwise quarter turn.
 *
 * @param origin the centreline's point (mm)
 * @param distal unit normal, pointing distally; without a y component
 */
public record SectionPlane(Vector3D origin, Vector3D distal) {

  /** The plane at a station (mm). */
  public static SectionPlane at(DigitSurface digit, double station) {
    return new SectionPlane(digit.centre(station), digit.tangent(station));
  }

  /** The unit vector of the n coordinate. */
  public Vector3D dorsal() {
    return Vector3D.of(-distal.getZ(), 0, distal.getX());
  }
}
