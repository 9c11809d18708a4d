package org.midlateral.viewer.lesson;

import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.midlateral.mechanics.ThreePoint;
import org.midlateral.mechanics.finite.HeldShell;

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

  static AtRest of(HeldShell held, ThreePoint support) {
    HeldShell.Moved proximal = held.floor(support.proximal().middle());
    HeldShell.Moved distal = held.floor(support.distal().middle());
    Vector3D chord = proximal.place().vectorTo(distal.place());
    Vector3D dorsal = chord.cross(Vector3D.Unit.PLUS_Y).normalize();
    double rise = distal.moved().subtract(proximal.moved()).dot(dorsal);
    return new AtRest(held, proximal.place(), proximal.moved(), rise / chord.norm());
  }

  /** How far a vertex of a piece moves (mm). */
  Vector3D displacement(int piece, int vertex) {
    return rested(held.pieces().get(piece).mesh().vertex(vertex), held.displacement(piece, vertex));
  }

  /** What is left of a displacement at a place (mm). */
  Vector3D rested(Vector3D place, Vector3D moved) {
    Vector3D arm = proximal.vectorTo(place);
    // A turn that lifts what is distal, about the axis -y.
    Vector3D turned = Vector3D.of(-turn * arm.getZ(), 0, turn * arm.getX());
    return moved.subtract(shift).subtract(turned);
  }
}
