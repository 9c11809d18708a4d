package org.midlateral.viewer.lesson;

import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.midlateral.mechanics.ThreePoint;
import org.midlateral.mechanics.held.HeldShell;
import org.midlateral.solid.Solid;

/**
 * The motion of a computed wrap as seen from its two ends: what the whole piece does as a rigid
 * body is taken out. The floor then rests where it did under the middle of the proximal contact,
 * under that of the distal one it only slides along, and on the whole the trough does not roll
 * about the line between the two. All wraps can then be compared.
 */
final class ElasticMotion {
  private final HeldShell held;
  private final Vector3D proximal;
  private final Vector3D shift;
  private final Vector3D turn;

  private ElasticMotion(HeldShell held, Vector3D proximal, Vector3D shift, Vector3D turn) {
    this.held = held;
    this.proximal = proximal;
    this.shift = shift;
    this.turn = turn;
  }

  static ElasticMotion of(HeldShell held, ThreePoint support) {
    HeldShell.Moved proximal = held.floor(support.proximal().middle());
    HeldShell.Moved distal = held.floor(support.distal().middle());
    Vector3D chord = proximal.place().vectorTo(distal.place());
    Vector3D apart = distal.moved().subtract(proximal.moved());
    // The turn that carries the chord along with its ends, without a roll about itself.
    Vector3D bend = chord.cross(apart).multiply(1 / chord.normSq());
    ElasticMotion rolling = new ElasticMotion(held, proximal.place(), proximal.moved(), bend);
    Vector3D along = chord.normalize();
    return new ElasticMotion(
        held, proximal.place(), proximal.moved(), bend.add(rolling.roll(along), along));
  }

  /** The turn about an axis through the proximal contact that fits the trough best (rad). */
  private double roll(Vector3D axis) {
    Solid trough = held.pieces().get(0);
    double sum = 0;
    double squares = 0;
    for (int i = 0; i < trough.innerVertices(); i++) {
      Vector3D way = axis.cross(proximal.vectorTo(trough.mesh().vertex(i)));
      sum += displacement(0, i).dot(way);
      squares += way.normSq();
    }
    return sum / squares;
  }

  /** How far a vertex of a piece moves (mm). */
  Vector3D displacement(int piece, int vertex) {
    return elastic(
        held.pieces().get(piece).mesh().vertex(vertex), held.displacement(piece, vertex));
  }

  /** The elastic part of a displacement at a place (mm). */
  Vector3D elastic(Vector3D place, Vector3D moved) {
    return moved.subtract(shift).subtract(turn.cross(proximal.vectorTo(place)));
  }
}
