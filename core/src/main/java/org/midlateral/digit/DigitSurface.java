package org.midlateral.digit;

import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;

/**
 * The skin of one finger. A finger built from tape measurements and one sliced from a scan serve
 * alike.
 */
public interface DigitSurface {
  /** The section at a station (mm), proximal of the end of the pulp. */
  Slice slice(double station);

  /** Circumference at a station (mm). */
  double circumference(double station);

  /** Derivative of the circumference along the station (1). */
  double circumferenceByStation(double station);

  /** Half-depth at a station (mm). */
  double halfDepth(double station);

  /** Volar curvature of the centreline at a station (1/mm). */
  double curvature(double station);

  /** Station of the PIP joint's axis (mm). */
  double pipAxis();

  /** Station from which the sections shrink to close over the pulp (mm). */
  double tip();

  /** Station of the end of the pulp (mm). */
  double pulpEnd();

  /** Stations at which the skin's bend along the finger changes at once, increasing (mm). */
  List<Double> creases();

  /** The centreline's point at a station (mm). */
  Vector3D centre(double station);

  /** The centreline's unit tangent at a station, pointing distally; it has no part along y. */
  Vector3D tangent(double station);

  /** The unit normal of the centreline at a station that points dorsally. */
  default Vector3D dorsal(double station) {
    Vector3D tangent = tangent(station);
    return Vector3D.of(-tangent.getZ(), 0, tangent.getX());
  }
}
