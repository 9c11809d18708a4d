package org.midlateral.mechanics.finite;

import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;

/** How a shell moves and strains under a load. Immutable. */
public final class ShellResult {
  private final ShellModel model;
  private final MeshCurvature bends;
  private final List<Constraint> constraints;
  private final double[] load;
  private final double[] moved;
  private final double[] internal;

  ShellResult(
      ShellModel model,
      MeshCurvature bends,
      List<Constraint> constraints,
      ShellLoad load,
      double[] moved,
      double[] internal) {
    this.model = model;
    this.bends = bends;
    this.constraints = constraints;
    this.load = load.values();
    this.moved = moved;
    this.internal = internal;
  }

  public ShellModel model() {
    return model;
  }

  /** How far a node moves (mm). */
  public Vector3D displacement(int node) {
    return vector(moved, DegreeOfFreedom.ALONG_X.at(node));
  }

  /** How far a node turns (rad, about the global axes). */
  public Vector3D rotation(int node) {
    return vector(moved, DegreeOfFreedom.ABOUT_X.at(node));
  }

  /**
   * How far a point beside a node moves with the wall (mm).
   *
   * @param node the node
   * @param arm from the node on the mid-surface to the point (mm)
   */
  public Vector3D displacement(int node, Vector3D arm) {
    return displacement(node).add(rotation(node).cross(arm));
  }

  /** What a constraint exerts on the shell (N or N·mm). */
  public double reaction(Constraint constraint) {
    int at = constraint.freedom().at(constraint.node());
    return internal[at] - load[at];
  }

  /** The largest reaction among the constrained displacements, without sign (N). */
  public double largestReactionForce() {
    double largest = 0;
    for (Constraint c : constraints) {
      if (c.freedom().compareTo(DegreeOfFreedom.ABOUT_X) < 0) {
        largest = Math.max(largest, Math.abs(reaction(c)));
      }
    }
    return largest;
  }

  /** The energy stored in the shell (N·mm). */
  public double strainEnergy() {
    return dot(internal, moved) / 2;
  }

  /**
   * Half of what the load does along the way (N·mm); equals the energy stored where every
   * constraint is held at zero.
   */
  public double halfWork() {
    return dot(load, moved) / 2;
  }

  MeshCurvature bends() {
    return bends;
  }

  /** xx, yy and xy (engineering) in the facet's plane, x along the first edge. */
  double[] strainComponents(int triangle, WallFace side) {
    double[] corners = new double[18];
    for (int c = 0; c < 3; c++) {
      System.arraycopy(
          moved,
          DegreeOfFreedom.COUNT * model.corner(triangle, c),
          corners,
          DegreeOfFreedom.COUNT * c,
          6);
    }
    double height = side.height * model.meanThickness(triangle);
    return new ShellTriangle(model, bends, triangle).strain(corners, height);
  }

  private static Vector3D vector(double[] values, int at) {
    return Vector3D.of(values[at], values[at + 1], values[at + 2]);
  }

  private static double dot(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }
}
