package org.midlateral.mechanics.held;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.midlateral.measurement.NotComputable;
import org.midlateral.mechanics.finite.ClippedTriangle;
import org.midlateral.mechanics.finite.ShellLoad;
import org.midlateral.mechanics.finite.WallFace;

/**
 * The load of a held joint on a shell. The two ends press square to the centreline at the middles
 * of their zones, evenly over the floor within 30 degrees of the volar midline. The closure pulls
 * evenly on the two rims, or on the dorsal shell's inside within 30 degrees of the dorsal midline,
 * its two sides taken apart.
 *
 * <p>Of the forces the moment gives the size; that they balance gives the rest: the ratio of the
 * two at the ends, and direction and sharing of the closure's. On a straight finger these are the
 * handbook's M / L but for the distance between a zone's middle and the middle of its floor.
 */
final class BalancedLoad {
  /** Half-angle of the floor and of the roof that are pressed on. */
  static final double SPREAD = Math.toRadians(30);

  private static final double[] FLOOR = {-SPREAD, SPREAD};
  private static final double[][] SIDES = {{-SPREAD, 0}, {0, SPREAD}};

  final List<ClippedTriangle> proximalFloor;
  final List<ClippedTriangle> distalFloor;
  final Vector3D proximal;
  final Vector3D distal;

  /** Forces of the closure at the two sides, that of negative angles first. */
  final Vector3D[] closure = new Vector3D[2];

  private final FingerShell shell;
  private final HeldJoint joint;

  /**
   * Balances.
   *
   * @throws NotComputable where a zone lies off the pieces, or the zones cannot balance each other
   */
  BalancedLoad(FingerShell shell, HeldJoint joint) throws NotComputable {
    this.shell = shell;
    this.joint = joint;
    proximalFloor = parts(shell, 0, joint.proximal(), FLOOR);
    distalFloor = parts(shell, 0, joint.distal(), FLOOR);
    Vector3D down = volar(joint.proximal());
    Vector3D downDistal = volar(joint.distal());
    double[] share =
        balance(
            floor(proximalFloor, down),
            List.of(
                floor(distalFloor, downDistal),
                pull(0, Vector3D.Unit.PLUS_X),
                pull(0, Vector3D.Unit.PLUS_Z),
                pull(1, Vector3D.Unit.PLUS_X),
                pull(1, Vector3D.Unit.PLUS_Z)));
    double size = 2 * joint.moment() / (joint.proximalArm() + share[0] * joint.distalArm());
    proximal = down.multiply(size);
    distal = downDistal.multiply(size * share[0]);
    for (int side = 0; side < 2; side++) {
      closure[side] = Vector3D.of(share[1 + 2 * side], 0, share[2 + 2 * side]).multiply(size);
    }
  }

  private Vector3D volar(HeldJoint.Zone zone) {
    return shell.digit().dorsal(zone.middle()).negate();
  }

  ShellLoad load() throws NotComputable {
    return floor(proximalFloor, proximal)
        .plus(floor(distalFloor, distal))
        .plus(pull(0, closure[0]))
        .plus(pull(1, closure[1]));
  }

  /** The parts of the roof on one side; for a closed shell. */
  List<ClippedTriangle> roof(int side) {
    return parts(shell, 1, joint.closure(), SIDES[side]);
  }

  /** The parts of the rim on one side; for a trough. */
  List<RimSegment> rim(int side) {
    return RimSegment.of(shell, joint.closure(), 2 * side - 1);
  }

  private ShellLoad floor(List<ClippedTriangle> parts, Vector3D total) throws NotComputable {
    return ShellLoad.onParts(shell.model(), parts, WallFace.BACK.height, total);
  }

  private ShellLoad pull(int side, Vector3D total) throws NotComputable {
    return shell.closed()
        ? ShellLoad.onParts(shell.model(), roof(side), WallFace.BACK.height, total)
        : RimSegment.load(shell.model(), rim(side), total);
  }

  /** How much of each load balances one that is given; no load has a part along y. */
  private double[] balance(ShellLoad given, List<ShellLoad> loads) throws NotComputable {
    DMatrixRMaj matrix = new DMatrixRMaj(5, 5);
    DMatrixRMaj right = new DMatrixRMaj(5, 1);
    double[] target = resultant(given);
    for (int c = 0; c < 5; c++) {
      double[] column = resultant(loads.get(c));
      right.set(c, 0, -target[c]);
      for (int r = 0; r < 5; r++) {
        matrix.set(r, c, column[r]);
      }
    }
    DMatrixRMaj share = new DMatrixRMaj(5, 1);
    if (!CommonOps_DDRM.solve(matrix, right, share)) {
      throw new NotComputable("the contact zones cannot balance each other");
    }
    return share.data;
  }

  private double[] resultant(ShellLoad load) {
    Vector3D force = load.resultant();
    Vector3D moment = load.momentAbout(shell.model(), shell.digit().centre(joint.axis()));
    return new double[] {force.getX(), force.getZ(), moment.getX(), moment.getY(), moment.getZ()};
  }

  /** Parts of all triangles of one layer that lie in a zone and between two angles. */
  private static List<ClippedTriangle> parts(
      FingerShell shell, int layer, HeldJoint.Zone zone, double[] turns) {
    ShellLayer l = shell.layer(layer);
    int before = layer == 0 ? 0 : shell.layer(0).corners.length / 3;
    List<ClippedTriangle> parts = new ArrayList<>();
    for (int t = 0; t < l.corners.length / 3; t++) {
      double[] s = new double[3];
      double[] turn = new double[3];
      for (int c = 0; c < 3; c++) {
        s[c] = l.station[l.corners[3 * t + c]];
        turn[c] = l.turn[l.corners[3 * t + c]];
      }
      ClippedTriangle.whole(before + t)
          .between(s, zone.from(), zone.to())
          .flatMap(part -> part.between(turn, turns[0], turns[1]))
          .ifPresent(parts::add);
    }
    return parts;
  }
}
