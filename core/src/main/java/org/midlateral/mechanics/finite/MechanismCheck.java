package org.midlateral.mechanics.finite;

import java.util.Arrays;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.SingularOps_DDRM;

/**
 * Whether constraints hold every connected piece of a shell. The element has no motion without
 * strain but the rigid ones, so that looking at these tells it exactly, where a small pivot of the
 * equations would not: rounding hides it in a large shell.
 */
final class MechanismCheck {
  /** Least singular value over the largest; a hold at neighbouring nodes only is still above it. */
  private static final double LEAST = 1e-6;

  private final ShellModel model;
  private final int[] piece;

  private MechanismCheck(ShellModel model) {
    this.model = model;
    piece = new int[model.nodeCount()];
    Arrays.setAll(piece, i -> i);
    for (int t = 0; t < model.triangleCount(); t++) {
      join(model.corner(t, 0), model.corner(t, 1));
      join(model.corner(t, 0), model.corner(t, 2));
    }
    for (int i = 0; i < piece.length; i++) {
      if (model.tie(i) != null) {
        join(i, model.tie(i).leaders()[0]);
      }
    }
  }

  /**
   * @throws MechanismException if a piece can move without strain
   */
  static void check(ShellModel model, List<Constraint> constraints) throws MechanismException {
    MechanismCheck footing = new MechanismCheck(model);
    for (int i = 0; i < model.nodeCount(); i++) {
      if (footing.piece[i] == i && !footing.holds(i, constraints)) {
        throw new MechanismException(i);
      }
    }
  }

  private void join(int a, int b) {
    int rootA = root(a);
    int rootB = root(b);
    piece[Math.max(rootA, rootB)] = Math.min(rootA, rootB);
  }

  private int root(int node) {
    int at = node;
    while (piece[at] != at) {
      piece[at] = piece[piece[at]];
      at = piece[at];
    }
    return at;
  }

  /** Whether what the six rigid motions do at the constraints is of full rank. */
  private boolean holds(int root, List<Constraint> constraints) {
    List<Constraint> own = constraints.stream().filter(c -> root(c.node()) == root).toList();
    if (own.size() < DegreeOfFreedom.COUNT) {
      return false;
    }
    Vector3D origin = model.node(own.get(0).node());
    double size = size(root, origin);
    DMatrixRMaj motions = new DMatrixRMaj(own.size(), DegreeOfFreedom.COUNT);
    for (int r = 0; r < own.size(); r++) {
      Constraint c = own.get(r);
      Vector3D arm = origin.vectorTo(model.node(c.node())).multiply(1 / size);
      for (int m = 0; m < DegreeOfFreedom.COUNT; m++) {
        motions.set(r, m, motion(m, c.freedom(), arm));
      }
    }
    double[] values = SingularOps_DDRM.singularValues(motions);
    double most = Arrays.stream(values).max().orElse(0);
    return Arrays.stream(values).limit(DegreeOfFreedom.COUNT).min().orElse(0) > LEAST * most;
  }

  private double size(int root, Vector3D origin) {
    double size = 0;
    for (int i = 0; i < model.nodeCount(); i++) {
      if (root(i) == root) {
        size = Math.max(size, origin.distance(model.node(i)));
      }
    }
    return size;
  }

  /** What a unit rigid motion does to a freedom at an arm from the centre. */
  private static double motion(int motion, DegreeOfFreedom freedom, Vector3D arm) {
    double[] unit = new double[3];
    unit[motion % 3] = 1;
    int axis = freedom.ordinal() % 3;
    boolean turning = motion >= 3;
    if (freedom.ordinal() >= 3 || !turning) {
      return turning == freedom.ordinal() >= 3 ? unit[axis] : 0;
    }
    return Vector3D.of(unit).cross(arm).toArray()[axis];
  }
}
