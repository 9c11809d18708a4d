package org.midlateral.mechanics.joint;

import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.midlateral.digit.DigitSurface;
import org.midlateral.mechanics.joint.JointAnswer.Resultant;
import org.midlateral.mechanics.joint.JointAnswer.Resultants;

/**
 * The forces on a finger across its length. Pieces and closure press on it from both sides; place
 * by place the difference is what holds the joint. From either end these push the finger toward
 * dorsal, up to where the closure outweighs the floor: the sum up to there is the force at that
 * end. Each force is shared between the two places that it lies between, so that patches and strips
 * need not lie alike.
 */
final class NetForces {
  /** From place to place (mm). */
  private static final double SLICE = 3;

  /** By place: force toward dorsal (N), and moment about the axis that extends the joint (N·mm). */
  private final double[] force;

  private final double[] moment;

  /** Number of the place at the axis. */
  private final int first;

  NetForces(HeldFinger finger, HeldFinger.Held held) {
    Fitting fitting = finger.fitting();
    PressedPieces pieces = finger.pieces();
    DigitSurface skin = fitting.worn().skin();
    double axis = skin.pipAxis();
    double from = fitting.worn().pieces().get(0).outline().proximal();
    first = (int) Math.ceil((axis - from) / SLICE) + 1;
    int count = first + (int) Math.ceil((skin.pulpEnd() - axis) / SLICE) + 1;
    force = new double[count];
    moment = new double[count];
    for (int e = 0; e < fitting.patches().size(); e++) {
      SkinPatch patch = fitting.patches().get(e);
      for (SkinVertex v : patch.parts()) {
        Vector3D push = v.out().multiply(-held.resting().force(e) * patch.share(v));
        add(skin, axis, v.station(), v.skin(), push, pieces.centre());
      }
    }
    for (int k = 0; k < fitting.strips().size(); k++) {
      TautBand band = fitting.strips().get(k);
      double pull = held.resting().force(pieces.firstStrip() + k);
      for (TautBand.Bend bend : band.bends()) {
        if (bend.piece() < 0) {
          add(skin, axis, band.station(), bend.at(), bend.pull().multiply(pull), pieces.centre());
        }
      }
    }
  }

  private void add(
      DigitSurface skin, double axis, double station, Vector3D at, Vector3D push, Vector3D centre) {
    double along = (station - axis) / SLICE;
    int slice = (int) Math.floor(along);
    double next = along - slice;
    Vector3D dorsal = skin.tangent(station).cross(Vector3D.Unit.PLUS_Y);
    double up = push.dot(dorsal);
    // A push toward dorsal past the axis turns about -y: it extends the joint.
    double turn = -centre.vectorTo(at).cross(push).getY();
    force[first + slice] += (1 - next) * up;
    force[first + slice + 1] += next * up;
    moment[first + slice] += (1 - next) * turn;
    moment[first + slice + 1] += next * turn;
  }

  Resultants resultants() {
    Resultant distal = end(force.length - 1, first, 1);
    Resultant proximal = end(0, first, -1);
    double middle = proximal.force() + distal.force();
    double arm = distal.force() * distal.arm() - proximal.force() * proximal.arm();
    return new Resultants(proximal, new Resultant(middle, middle > 0 ? arm / middle : 0), distal);
  }

  /** The largest sum from an end on. */
  private Resultant end(int from, int to, int side) {
    double sum = 0;
    double turn = 0;
    double most = 0;
    double turned = 0;
    for (int k = from; k != to - side; k -= side) {
      sum += force[k];
      turn += side * moment[k];
      if (sum > most) {
        most = sum;
        turned = turn;
      }
    }
    return new Resultant(most, most > 0 ? turned / most : 0);
  }
}
