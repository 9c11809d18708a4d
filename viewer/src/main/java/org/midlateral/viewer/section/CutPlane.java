package org.midlateral.viewer.section;

import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.midlateral.digit.DigitSurface;

/**
 * The plane normal to the centreline at a station.
 *
 * @param origin on the centreline (mm)
 * @param normal along it, distally
 * @param dorsal in the plane, toward the back of the finger
 */
record CutPlane(Vector3D origin, Vector3D normal, Vector3D dorsal) {
  static CutPlane of(DigitSurface digit, double station) {
    Vector3D along = digit.tangent(station);
    return new CutPlane(digit.centre(station), along, Vector3D.of(-along.getZ(), 0, along.getX()));
  }

  /** Height of a point over the plane (mm). */
  double height(double x, double y, double z) {
    return (x - origin.getX()) * normal.getX()
        + (y - origin.getY()) * normal.getY()
        + (z - origin.getZ()) * normal.getZ();
  }

  /** Height of a point in the plane, toward the back of the finger (mm). */
  double dorsal(double x, double y, double z) {
    return (x - origin.getX()) * dorsal.getX()
        + (y - origin.getY()) * dorsal.getY()
        + (z - origin.getZ()) * dorsal.getZ();
  }
}
