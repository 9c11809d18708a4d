package org.midlateral.viewer.lesson;

import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.midlateral.digit.DigitSurface;
import org.midlateral.mechanics.ThreePoint;
import org.midlateral.mechanics.finite.HeldShell;
import org.midlateral.solid.Solid;

/**
 * The motion of a computed wrap as seen from its two ends: what the whole piece does as a rigid
 * body is taken out, so that the floor rests where it did under the middles of the proximal and the
 * distal contact. All wraps can then be compared.
 */
final class AtRest {
  private final HeldShell held;
  private final Vector3D proximal;
  private final Vector3D shift;
  private final double turn;

  private AtRest(HeldShell held, Vector3D proximal, Vector3D shift, double turn) {
    this.held = held;
    this.proximal = proximal;
    this.shift = shift;
    this.turn = turn;
  }

  static AtRest of(HeldShell held, ThreePoint support, DigitSurface digit) {
    Solid trough = held.pieces().get(0);
    int p = floor(trough, digit, support.proximal().middle());
    int d = floor(trough, digit, support.distal().middle());
    Vector3D from = trough.mesh().vertex(p);
    Vector3D chord = from.vectorTo(trough.mesh().vertex(d));
    Vector3D shift = held.displacement(0, p);
    Vector3D dorsal = chord.cross(Vector3D.Unit.PLUS_Y).normalize();
    double rise = held.displacement(0, d).subtract(shift).dot(dorsal);
    return new AtRest(held, from, shift, rise / chord.norm());
  }

  /** The inner vertex nearest to the volar midline at a station. */
  private static int floor(Solid trough, DigitSurface digit, double station) {
    int best = 0;
    double least = Double.POSITIVE_INFINITY;
    double depth = digit.slice(station).halfDepth();
    for (int i = 0; i < trough.innerVertices(); i++) {
      double off = Math.hypot(trough.station(i) - station, depth * trough.angle(i));
      if (off < least) {
        least = off;
        best = i;
      }
    }
    return best;
  }

  /** How far a vertex of a piece moves (mm). */
  Vector3D displacement(int piece, int vertex) {
    Vector3D arm = proximal.vectorTo(held.pieces().get(piece).mesh().vertex(vertex));
    // A turn that lifts what is distal, about the axis -y.
    Vector3D turned = Vector3D.of(-turn * arm.getZ(), 0, turn * arm.getX());
    return held.displacement(piece, vertex).subtract(shift).subtract(turned);
  }
}
