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
  private static final double SPACING = 3;

  /** Places beyond the ends of what presses. */
  private static final int SPARE = 3;

  private final DigitSurface skin;

  /** Where the joint turns (mm). */
  private final Vector3D axis;

  /** By place: force toward dorsal (N), and moment about the axis that extends the joint (N·mm). */
  private final double[] force;

  private final double[] moment;

  /** Number of the place at the axis. */
  private final int first;

  /** No forces yet. */
  NetForces(FingerInPieces worn) {
    skin = worn.skin();
    axis = skin.centre(skin.pipAxis());
    double before = skin.pipAxis() - worn.pieces().get(0).outline().proximal();
    double behind = skin.pulpEnd() - skin.pipAxis();
    first = (int) Math.ceil(before / SPACING) + SPARE;
    force = new double[first + (int) Math.ceil(behind / SPACING) + SPARE];
    moment = new double[force.length];
  }

  /** All that presses on a finger that is held. */
  static NetForces of(HeldState held) {
    Fitting fitting = held.fitting();
    NetForces net = new NetForces(fitting.worn());
    for (int e = 0; e < fitting.patches().size(); e++) {
      SkinPatch patch = fitting.patches().get(e);
      for (SkinVertex v : patch.parts()) {
        Vector3D push = v.out().multiply(-held.resting().force(e) * patch.share(v));
        net.add(v.station(), v.skin(), push);
      }
    }
    for (int k = 0; k < fitting.strips().size(); k++) {
      net.add(fitting.strips().get(k), held.resting().force(held.pieces().firstStrip() + k));
    }
    return net;
  }

  /** A strip of a band that pulls with a force on each of its ends (N). */
  void add(TautBand band, double pull) {
    for (TautBand.BandBend bend : band.bends()) {
      if (bend.piece() < 0) {
        add(band.station(), bend.at(), bend.pull().multiply(pull));
      }
    }
  }

  /**
   * A force on the finger.
   *
   * @param station of its place (mm)
   * @param at its place (mm)
   * @param push N
   */
  void add(double station, Vector3D at, Vector3D push) {
    double along = (station - skin.pipAxis()) / SPACING;
    int place = first + (int) Math.floor(along);
    double next = along - Math.floor(along);
    // The dorsal direction has no part along y.
    Vector3D dorsal = skin.dorsal(station);
    double up = push.getX() * dorsal.getX() + push.getZ() * dorsal.getZ();
    // A push toward dorsal past the axis turns about -y: it extends the joint.
    double turn = (at.getX() - axis.getX()) * push.getZ() - (at.getZ() - axis.getZ()) * push.getX();
    force[place] += (1 - next) * up;
    force[place + 1] += next * up;
    moment[place] += (1 - next) * turn;
    moment[place + 1] += next * turn;
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
