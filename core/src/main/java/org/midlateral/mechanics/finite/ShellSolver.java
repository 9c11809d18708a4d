package org.midlateral.mechanics.finite;

import java.util.List;
import java.util.stream.IntStream;

/**
 * A shell with its constraints, factored and ready for any number of loads. Immutable; may be
 * shared between threads.
 */
public final class ShellSolver {
  private final ShellModel model;
  private final List<Constraint> constraints;
  private final Bends bends;
  private final double[] stiffness;

  /** The prescribed values by freedom, 0 elsewhere, and the forces that they alone ask for. */
  private final double[] prescribed;

  private final double[] prescribedForces;
  private final FactoredPart factor;

  private ShellSolver(ShellModel model, List<Constraint> constraints) {
    this.model = model;
    this.constraints = List.copyOf(constraints);
    bends = new Bends(model);
    stiffness = new double[ShellTriangle.PACKED * model.triangleCount()];
    IntStream.range(0, model.triangleCount())
        .parallel()
        .forEach(
            t -> new ShellTriangle(model, bends, t).stiffness(stiffness, ShellTriangle.PACKED * t));
    prescribed = new double[Freedom.COUNT * model.nodeCount()];
    boolean[] held = new boolean[prescribed.length];
    for (Constraint c : constraints) {
      prescribe(c, held);
    }
    Footing.check(model, constraints);
    prescribedForces = forces(prescribed);
    factor = FactoredPart.of(Dissection.of(model, held), stiffness, diagonal());
  }

  /**
   * Builds and factors the equations.
   *
   * @param model the shell
   * @param constraints prescribed freedoms, each at most once
   * @throws IllegalArgumentException if a constraint names no node of the model or a freedom twice
   * @throws LooseShellException if the shell is not held
   */
  public static ShellSolver of(ShellModel model, List<Constraint> constraints) {
    return new ShellSolver(model, constraints);
  }

  /** Builds, factors and solves for one load. */
  public static ShellResult solve(ShellModel model, ShellLoad load, List<Constraint> constraints) {
    return of(model, constraints).solve(load);
  }

  /** The answer to a load made for the same model. */
  public ShellResult solve(ShellLoad load) {
    if (load.values().length != prescribed.length) {
      throw new IllegalArgumentException("the load belongs to another model");
    }
    double[] moved = load.values().clone();
    for (int i = 0; i < moved.length; i++) {
      moved[i] -= prescribedForces[i];
    }
    factor.forward(moved);
    factor.backward(moved);
    for (Constraint c : constraints) {
      int at = c.freedom().at(c.node());
      moved[at] = c.value();
    }
    return new ShellResult(model, bends, constraints, load, moved, forces(moved));
  }

  /** Unknowns of the equations. */
  public int unknowns() {
    return prescribed.length - constraints.size();
  }

  /** Numbers in the factor, a measure of memory (8 bytes each) and work. */
  public long factorSize() {
    return factor.size();
  }

  private void prescribe(Constraint constraint, boolean[] held) {
    if (constraint.node() < 0 || constraint.node() >= model.nodeCount()) {
      throw new IllegalArgumentException(
          "a constraint names node %d of %d".formatted(constraint.node(), model.nodeCount()));
    }
    int at = constraint.freedom().at(constraint.node());
    if (held[at]) {
      throw new IllegalArgumentException(
          "node %d is constrained twice %s".formatted(constraint.node(), constraint.freedom()));
    }
    held[at] = true;
    prescribed[at] = constraint.value();
  }

  /** The forces that hold the shell in a given shape, six a node. */
  private double[] forces(double[] moved) {
    double[] forces = new double[moved.length];
    int[] freedoms = new int[18];
    int at = 0;
    for (int t = 0; t < model.triangleCount(); t++) {
      freedomsOf(t, freedoms);
      for (int i = 0; i < 18; i++) {
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
    int[] freedoms = new int[18];
    for (int t = 0; t < model.triangleCount(); t++) {
      freedomsOf(t, freedoms);
      int at = ShellTriangle.PACKED * t - 1;
      for (int i = 0; i < 18; i++) {
        at += i + 1;
        diagonal[freedoms[i]] += stiffness[at];
      }
    }
    return diagonal;
  }

  private void freedomsOf(int triangle, int[] freedoms) {
    for (int c = 0; c < 18; c++) {
      freedoms[c] = Freedom.COUNT * model.corner(triangle, c / Freedom.COUNT) + c % Freedom.COUNT;
    }
  }
}
