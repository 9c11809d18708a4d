package org.midlateral.mechanics.finite;

import java.util.List;
import java.util.function.IntToDoubleFunction;
import org.apache.commons.geometry.euclidean.threed.Vector3D;

/**
 * Six constraints that take away the rigid motion and nothing else: their reactions vanish under a
 * load that balances itself.
 */
public final class RigidMotion {
  private static final DegreeOfFreedom[] ALONG = {
    DegreeOfFreedom.ALONG_X, DegreeOfFreedom.ALONG_Y, DegreeOfFreedom.ALONG_Z
  };

  private RigidMotion() {}

  /**
   * Holds three nodes far apart: one in three directions, one in two, one in one.
   *
   * @param model a shell in one piece, connected or tied
   */
  public static List<Constraint> held(ShellModel model) {
    int first = farthest(model, i -> -model.node(i).getX());
    Vector3D a = model.node(first);
    int second = farthest(model, i -> model.node(i).distance(a));
    Vector3D line = a.vectorTo(model.node(second));
    int third = farthest(model, i -> line.cross(a.vectorTo(model.node(i))).norm());
    // With the first node held, the second can leave its place only across the line between them.
    int along = largest(line);
    // What remains is to turn about that line, which moves the third node this way.
    int turning = largest(line.cross(a.vectorTo(model.node(third))));
    return List.of(
        Constraint.fixed(first, ALONG[0]),
        Constraint.fixed(first, ALONG[1]),
        Constraint.fixed(first, ALONG[2]),
        Constraint.fixed(second, ALONG[(along + 1) % 3]),
        Constraint.fixed(second, ALONG[(along + 2) % 3]),
        Constraint.fixed(third, ALONG[turning]));
  }

  private static int farthest(ShellModel model, IntToDoubleFunction distance) {
    int best = -1;
    for (int i = 0; i < model.nodeCount(); i++) {
      if (model.tie(i) != null) {
        continue;
      }
      if (best < 0 || distance.applyAsDouble(i) > distance.applyAsDouble(best)) {
        best = i;
      }
    }
    return best;
  }

  private static int largest(Vector3D v) {
    double[] size = {Math.abs(v.getX()), Math.abs(v.getY()), Math.abs(v.getZ())};
    int best = size[1] > size[0] ? 1 : 0;
    return size[2] > size[best] ? 2 : best;
  }
}
