package org.midlateral.mechanics.finite;

import java.util.Arrays;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.midlateral.measurement.NotComputable;

/** Forces (N) and moments (N·mm) on the nodes of a shell. Immutable; loads add up. */
public final class ShellLoad {
  /** Six a node, in the order of {@link DegreeOfFreedom}. */
  private final double[] values;

  private ShellLoad(double[] values) {
    this.values = values;
  }

  /** No load at all. */
  public static ShellLoad none(ShellModel model) {
    return new ShellLoad(new double[DegreeOfFreedom.COUNT * model.nodeCount()]);
  }

  /**
   * An even traction on parts of triangles, in one direction.
   *
   * @param height where it acts: distance from the mid-surface toward the front, as a share of the
   *     wall; -0.5 is the back face, 0.5 the front. Its moment about the mid-surface is taken
   *     along.
   * @param total the sum of the forces (N)
   * @throws NotComputable if there is no part
   */
  public static ShellLoad onParts(
      ShellModel model, List<ClippedTriangle> parts, double height, Vector3D total)
      throws NotComputable {
    ShellLoad load = none(model);
    double area = 0;
    for (ClippedTriangle part : parts) {
      for (double share : part.shares()) {
        area += share * model.area(part.triangle());
      }
    }
    if (!(area > 0)) {
      throw new NotComputable("no surface to put the load on");
    }
    for (ClippedTriangle part : parts) {
      int t = part.triangle();
      Vector3D arm = model.areaNormal(t).normalize().multiply(height * model.meanThickness(t));
      double[] shares = part.shares();
      for (int c = 0; c < 3; c++) {
        Vector3D force = total.multiply(shares[c] * model.area(t) / area);
        load.addTo(model.corner(t, c), force, arm.cross(force));
      }
    }
    return load;
  }

  /** This load and another on the same model. */
  public ShellLoad plus(ShellLoad other) {
    if (other.values.length != values.length) {
      throw new IllegalArgumentException("the loads belong to different models");
    }
    double[] sum = values.clone();
    for (int i = 0; i < sum.length; i++) {
      sum[i] += other.values[i];
    }
    return new ShellLoad(sum);
  }

  /** The force on a node (N). */
  public Vector3D force(int node) {
    int at = DegreeOfFreedom.ALONG_X.at(node);
    return Vector3D.of(values[at], values[at + 1], values[at + 2]);
  }

  /** The moment on a node (N·mm). */
  public Vector3D moment(int node) {
    int at = DegreeOfFreedom.ABOUT_X.at(node);
    return Vector3D.of(values[at], values[at + 1], values[at + 2]);
  }

  /** The sum of all forces (N); none for a load that balances itself. */
  public Vector3D resultant() {
    Vector3D sum = Vector3D.ZERO;
    for (int i = 0; i < values.length / DegreeOfFreedom.COUNT; i++) {
      sum = sum.add(force(i));
    }
    return sum;
  }

  /**
   * The moment of the whole load about a point (N·mm).
   *
   * @param model the model it was made for
   * @param point any point (mm)
   */
  public Vector3D momentAbout(ShellModel model, Vector3D point) {
    Vector3D sum = Vector3D.ZERO;
    for (int i = 0; i < values.length / DegreeOfFreedom.COUNT; i++) {
      if (loaded(i)) {
        sum = sum.add(moment(i)).add(point.vectorTo(model.node(i)).cross(force(i)));
      }
    }
    return sum;
  }

  /** Most nodes are not. */
  private boolean loaded(int node) {
    int at = DegreeOfFreedom.COUNT * node;
    for (int k = 0; k < DegreeOfFreedom.COUNT; k++) {
      if (values[at + k] != 0) {
        return true;
      }
    }
    return false;
  }

  /** The load with that on tied nodes handed to those that lead them. */
  ShellLoad onLeaders(ShellModel model) {
    ShellLoad carried = new ShellLoad(values.clone());
    for (int i = 0; i < model.nodeCount(); i++) {
      Tie tie = model.tie(i);
      if (tie == null) {
        continue;
      }
      for (int l = 0; l < 3; l++) {
        Vector3D force = force(i).multiply(tie.weights()[l]);
        Vector3D moment = moment(i).multiply(tie.weights()[l]);
        carried.addTo(tie.leaders()[l], force, moment.add(tie.arms().get(l).cross(force)));
      }
      Arrays.fill(carried.values, DegreeOfFreedom.COUNT * i, DegreeOfFreedom.COUNT * (i + 1), 0);
    }
    return carried;
  }

  /** The numbers, six a node; not to be changed. */
  double[] values() {
    return values;
  }

  /** Adds a force to a load that is being made. */
  public void add(int node, Vector3D force) {
    addTo(node, force, Vector3D.ZERO);
  }

  /** Adds a force and a moment to a load that is being made. */
  void addTo(int node, Vector3D force, Vector3D moment) {
    int at = DegreeOfFreedom.COUNT * node;
    values[at] += force.getX();
    values[at + 1] += force.getY();
    values[at + 2] += force.getZ();
    values[at + 3] += moment.getX();
    values[at + 4] += moment.getY();
    values[at + 5] += moment.getZ();
  }
}
