package org.midlateral.mechanics.finite;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.midlateral.work.Interruption;

/**
 * A shell with its constraints, factored and ready for any number of loads. Immutable; may be
 * shared between threads.
 */
public final class ShellSolver {
  private final ShellModel model;
  private final List<Constraint> constraints;
  private final MeshCurvature bends;
  private final Connectivity connections;
  private final double[] stiffness;

  /** The prescribed values by freedom, 0 elsewhere, and the forces that they alone ask for. */
  private final double[] prescribed;

  private final double[] prescribedForces;
  private final FactoredFront factor;

  private ShellSolver(ShellModel model, List<Constraint> constraints) throws MechanismException {
    this.model = model;
    this.constraints = List.copyOf(constraints);
    bends = new MeshCurvature(model);
    connections = new Connectivity(model);
    stiffness = new double[connections.size()];
    Interruption asked = Interruption.current();
    IntStream.range(0, model.triangleCount())
        .parallel()
        .forEach(
            t -> {
              asked.check();
              connections.stiffness(bends, t, stiffness);
            });
    prescribed = new double[DegreeOfFreedom.COUNT * model.nodeCount()];
    boolean[] held = new boolean[prescribed.length];
    for (Constraint c : constraints) {
      prescribe(c, held);
    }
    MechanismCheck.check(model, constraints);
    boolean moves = constraints.stream().anyMatch(c -> c.value() != 0);
    prescribedForces = moves ? forces(prescribed) : new double[prescribed.length];
    factor =
        FactoredFront.of(
            NestedDissection.of(model, connections, held), connections, stiffness, diagonal());
  }

  /**
   * Builds and factors the equations.
   *
   * @param model the shell
   * @param constraints prescribed freedoms, each at most once
   * @throws IllegalArgumentException if a constraint names no node of the model or a freedom twice
   * @throws MechanismException if the shell is not held
   */
  public static ShellSolver of(ShellModel model, List<Constraint> constraints)
      throws MechanismException {
    return new ShellSolver(model, constraints);
  }

  /** The answer to a load made for the same model. */
  public ShellResult solve(ShellLoad load) {
    if (load.values().length != prescribed.length) {
      throw new IllegalArgumentException("the load belongs to another model");
    }
    ShellLoad carried = load.onLeaders(model);
    double[] moved = carried.values().clone();
    for (int i = 0; i < moved.length; i++) {
      moved[i] -= prescribedForces[i];
    }
    factor.forward(moved);
    factor.backward(moved);
    for (Constraint c : constraints) {
      int at = c.freedom().at(c.node());
      moved[at] = c.value();
    }
    double[] internal = forces(moved);
    for (int i = 0; i < model.nodeCount(); i++) {
      follow(model.tie(i), moved);
    }
    return new ShellResult(model, bends, constraints, carried, moved, internal);
  }

  /**
   * How far the points of many small loads move along them under a unit of each, the constraints
   * held at zero.
   *
   * @return symmetric, a row and a column for each load (mm/N)
   */
  public double[][] compliance(LoadSet loads) {
    if (loads.model() != model) {
      throw new IllegalArgumentException("the loads belong to another model");
    }
    return Condensation.of(factor, loads);
  }

  /** Writes what a tied node does. */
  private static void follow(Tie tie, double[] moved) {
    if (tie == null) {
      return;
    }
    Vector3D displacement = Vector3D.ZERO;
    Vector3D rotation = Vector3D.ZERO;
    for (int l = 0; l < 3; l++) {
      double[] leader = Arrays.copyOfRange(moved, 6 * tie.leaders()[l], 6 * tie.leaders()[l] + 6);
      Vector3D turn = Vector3D.of(leader[3], leader[4], leader[5]);
      Vector3D shift =
          Vector3D.of(leader[0], leader[1], leader[2]).add(turn.cross(tie.arms().get(l)));
      displacement = displacement.add(shift.multiply(tie.weights()[l]));
      rotation = rotation.add(turn.multiply(tie.weights()[l]));
    }
    System.arraycopy(displacement.toArray(), 0, moved, DegreeOfFreedom.ALONG_X.at(tie.node()), 3);
    System.arraycopy(rotation.toArray(), 0, moved, DegreeOfFreedom.ABOUT_X.at(tie.node()), 3);
  }

  /** Unknowns of the equations. */
  public int unknowns() {
    int tied = 0;
    for (int i = 0; i < model.nodeCount(); i++) {
      tied += model.tie(i) == null ? 0 : DegreeOfFreedom.COUNT;
    }
    return prescribed.length - constraints.size() - tied;
  }

  private void prescribe(Constraint constraint, boolean[] held) {
    if (constraint.node() < 0 || constraint.node() >= model.nodeCount()) {
      throw new IllegalArgumentException(
          String.format(
              Locale.ROOT,
              "a constraint names node %d of %d",
              constraint.node(),
              model.nodeCount()));
    }
    if (model.tie(constraint.node()) != null) {
      throw new IllegalArgumentException(
          String.format(
              Locale.ROOT,
              "a constraint names node %d, which is tied to others",
              constraint.node()));
    }
    int at = constraint.freedom().at(constraint.node());
    if (held[at]) {
      throw new IllegalArgumentException(
          String.format(
              Locale.ROOT,
              "node %d is constrained twice %s",
              constraint.node(),
              constraint.freedom()));
    }
    held[at] = true;
    prescribed[at] = constraint.value();
  }

  /** The forces that hold the shell in a given shape, six a node. */
  private double[] forces(double[] moved) {
    double[] forces = new double[moved.length];
    int at = 0;
    for (int t = 0; t < model.triangleCount(); t++) {
      int[] freedoms = freedomsOf(t);
      for (int i = 0; i < freedoms.length; i++) {
        for (int j = 0; j < i; j++, at++) {
          forces[freedoms[i]] += stiffness[at] * moved[freedoms[j]];
          forces[freedoms[j]] += stiffness[at] * moved[freedoms[i]];
        }
        forces[freedoms[i]] += stiffness[at++] * moved[freedoms[i]];
      }
    }
    return forces;
  }

  private double[] diagonal() {
    double[] diagonal = new double[prescribed.length];
    for (int t = 0; t < model.triangleCount(); t++) {
      int[] freedoms = freedomsOf(t);
      int at = connections.offset(t) - 1;
      for (int i = 0; i < freedoms.length; i++) {
        at += i + 1;
        diagonal[freedoms[i]] += stiffness[at];
      }
    }
    return diagonal;
  }

  private int[] freedomsOf(int triangle) {
    int[] freedoms = new int[connections.freedoms(triangle)];
    for (int k = 0; k < freedoms.length; k++) {
      freedoms[k] = connections.freedom(triangle, k);
    }
    return freedoms;
  }
}
