package org.midlateral.mechanics.finite;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import java.util.function.IntFunction;
import java.util.function.UnaryOperator;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.apache.commons.geometry.euclidean.threed.rotation.QuaternionRotation;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

/**
 * A straight trough of half a tube under the load of a held joint: mid radius 9, wall 1.6, length
 * 75, E 400, nu 0.4, 5 N.
 */
class TroughTest {
  private static final Percentage THREE = Percentage.withPercentage(3);

  static Tube trough(double joint, double step) {
    return new Tube(x -> 9, 1.6, 75, joint, 90, step);
  }

  /**
   * Computed with quadratic solids in CalculiX 2.20, converged to four digits. The reference does
   * not say where its joint lies; its two ends open by 0.130 and 0.125, which the joint at 37 mm
   * gives (at mid-length they would be alike).
   */
  @Test
  void agreesWithQuadraticSolids() throws MechanismException {
    Tube trough = trough(37, 1);
    Tube.Measures found = trough.measures(trough.solve()::displacement);
    assertThat(found.rise()).isCloseTo(0.2313, THREE);
    assertThat(found.lost()).isCloseTo(1.330, THREE);
    assertThat(found.openings()[0]).isCloseTo(-0.130, THREE);
    assertThat(found.openings()[1]).isCloseTo(-0.263, THREE);
    assertThat(found.openings()[2]).isCloseTo(-0.125, THREE);
  }

  @Test
  void coarseMeshIsNearTheFineOne() throws MechanismException {
    Tube coarse = trough(37, 2);
    Tube fine = trough(37, 0.75);
    Tube.Measures a = coarse.measures(coarse.solve()::displacement);
    Tube.Measures b = fine.measures(fine.solve()::displacement);
    assertThat(a.rise()).isCloseTo(b.rise(), Percentage.withPercentage(1));
    assertThat(a.lost()).isCloseTo(b.lost(), Percentage.withPercentage(1));
    assertThat(a.openings()[1]).isCloseTo(b.openings()[1], Percentage.withPercentage(1));
  }

  @Test
  void theLoadBalancesItselfSoThatTheSupportsCarryNothing() throws MechanismException {
    Tube trough = trough(37, 2);
    ShellModel model = trough.model();
    ShellLoad load = trough.load(model);
    // What cancels is 5 N, and 5 N times some 75 mm.
    assertThat(load.resultant().norm()).isLessThan(1e-13);
    assertThat(load.momentAbout(model, Vector3D.ZERO).norm()).isLessThan(1e-10);
    ShellResult result = trough.solve();
    // Displacements are good to some 1e-10 of themselves, forces to 5 N times that.
    assertThat(result.largestReactionForce()).isLessThan(1e-9);
  }

  @Test
  void whatTheLoadDoesIsStored() throws MechanismException {
    ShellResult result = trough(37, 2).solve();
    assertThat(result.strainEnergy()).isPositive();
    assertThat(result.halfWork())
        .isCloseTo(result.strainEnergy(), within(1e-9 * result.strainEnergy()));
  }

  @Test
  void theAnswerIsMirroredWithTheTrough() throws MechanismException {
    Tube trough = trough(37.5, 2);
    MappedGrid grid = trough.grid();
    Tube.Measures found = trough.measures(trough.solve()::displacement);
    assertThat(found.openings()[0]).isCloseTo(found.openings()[2], within(1e-9));
    // Strains do not feel the rigid motion, so those left and right of the midline are alike.
    ShellResult result = trough.solve();
    int rows = grid.u().length - 1;
    int columns = grid.v().length - 1;
    for (int i = 0; i < rows; i++) {
      for (int j = 0; j < columns; j++) {
        // With an even number of rows the diagonals, too, are mirrored across the midline.
        int a = 2 * (i * columns + j);
        int b = 2 * (i * columns + columns - 1 - j);
        for (WallFace side : WallFace.values()) {
          double here = pairEnergy(result, a, side);
          assertThat(pairEnergy(result, b, side)).isCloseTo(here, within(1e-11));
        }
      }
    }
  }

  /** A measure of the strains in the two triangles of a cell that does not ask for their order. */
  private static double pairEnergy(ShellResult result, int first, WallFace side) {
    double sum = 0;
    for (int t = first; t < first + 2; t++) {
      SurfaceStrain s = SurfaceStrain.of(result, t, side);
      sum += s.major() * s.major() + s.minor() * s.minor();
    }
    return sum;
  }

  @Test
  void theLoadTurnedRoundTurnsTheAnswerRound() throws MechanismException {
    Tube trough = trough(37, 2);
    ShellModel model = trough.model();
    ShellSolver solver = ShellSolver.of(model, RigidMotion.held(model));
    ShellResult one = solver.solve(trough.load(model));
    ShellResult other = solver.solve(turned(model, trough.load(model), Vector3D::negate));
    for (int i = 0; i < model.nodeCount(); i++) {
      assertThat(one.displacement(i).add(other.displacement(i)).norm()).isZero();
      assertThat(one.rotation(i).add(other.rotation(i)).norm()).isZero();
    }
    assertThat(SurfaceStrain.largest(other).extreme())
        .isEqualTo(-SurfaceStrain.largest(one).extreme());
    assertThat(SurfaceStrain.largest(other).triangle())
        .isEqualTo(SurfaceStrain.largest(one).triangle());
  }

  @Test
  void whereItIsHeldDoesNotMatter() throws MechanismException {
    Tube trough = trough(37, 2);
    ShellModel model = trough.model();
    ShellLoad load = trough.load(model);
    int node = trough.grid().nodeAt(37, 0);
    Supports one = new Supports().clamp(new int[] {node});
    Tube.Measures a = trough.measures(ShellSolver.of(model, one.list()).solve(load)::displacement);
    Tube.Measures b = trough.measures(trough.solve()::displacement);
    assertThat(a.rise()).isCloseTo(b.rise(), within(1e-8));
    assertThat(a.lost()).isCloseTo(b.lost(), within(1e-7));
    assertThat(a.openings()[1]).isCloseTo(b.openings()[1], within(1e-8));
  }

  /** An uneven mesh: nodes off the zones' lines shifted along the surface by a fifth of a step. */
  @Test
  void anUnevenMeshGivesTheSame() throws MechanismException {
    Tube trough = trough(37, 1);
    ShellModel even = trough.model();
    MappedGrid grid = trough.grid();
    Random random = new Random(5);
    List<Double> keptX = List.of(0.0, 8.0, 31.0, 37.0, 43.0, 67.0, 75.0);
    List<Double> keptAngle = List.of(-90.0, -30.0, 0.0, 30.0, 90.0);
    ShellModel uneven =
        moved(
            even,
            node -> {
              double x = grid.u()[node / grid.v().length];
              double angle = grid.v()[node % grid.v().length];
              if (keptX.stream().noneMatch(k -> Math.abs(k - x) < 1e-9)
                  && keptAngle.stream().noneMatch(k -> Math.abs(k - angle) < 1e-9)) {
                double shiftX = 0.4 * (random.nextDouble() - 0.5);
                double shiftAngle = Math.toDegrees(0.4 * (random.nextDouble() - 0.5) / 9);
                return grid.surface().apply(x + shiftX, angle + shiftAngle);
              }
              return even.node(node);
            });
    ShellResult result =
        ShellSolver.of(uneven, RigidMotion.held(uneven)).solve(trough.load(uneven));
    Tube.Measures a = trough.measures(result::displacement);
    Tube.Measures b = trough.measures(trough.solve()::displacement);
    assertThat(a.rise()).isCloseTo(b.rise(), Percentage.withPercentage(1));
    assertThat(a.lost()).isCloseTo(b.lost(), Percentage.withPercentage(1));
    assertThat(a.openings()[1]).isCloseTo(b.openings()[1], Percentage.withPercentage(1));
  }

  @Test
  void aTurnedTroughAnswersTurned() throws MechanismException {
    Tube trough = trough(37, 4);
    ShellModel model = trough.model();
    QuaternionRotation turn = QuaternionRotation.fromAxisAngle(Vector3D.of(1, -2, 0.5), 1.1);
    ShellModel turned = moved(model, node -> turn.apply(model.node(node)));
    ShellLoad load = trough.load(model);
    ShellLoad turnedLoad = turned(turned, load, turn::apply);
    List<Constraint> held = new Supports().clamp(new int[] {0}).list();
    ShellResult one = ShellSolver.of(model, held).solve(load);
    ShellResult other = ShellSolver.of(turned, held).solve(turnedLoad);
    for (int i = 0; i < model.nodeCount(); i++) {
      assertThat(other.displacement(i).distance(turn.apply(one.displacement(i)))).isLessThan(1e-8);
      assertThat(other.rotation(i).distance(turn.apply(one.rotation(i)))).isLessThan(1e-8);
    }
    assertThat(SurfaceStrain.largest(other).extreme())
        .isCloseTo(SurfaceStrain.largest(one).extreme(), within(1e-10));
  }

  /** The same load with all its forces and moments turned. */
  private static ShellLoad turned(ShellModel model, ShellLoad load, UnaryOperator<Vector3D> turn) {
    ShellLoad turned = ShellLoad.none(model);
    for (int i = 0; i < model.nodeCount(); i++) {
      Vector3D force = turn.apply(load.force(i));
      turned = turned.plus(PlainLoads.atNode(model, i, force, turn.apply(load.moment(i))));
    }
    return turned;
  }

  /** The same shell with its nodes elsewhere. */
  private static ShellModel moved(ShellModel model, IntFunction<Vector3D> place) {
    double[] xyz = new double[3 * model.nodeCount()];
    int[] corners = new int[3 * model.triangleCount()];
    for (int i = 0; i < model.nodeCount(); i++) {
      System.arraycopy(place.apply(i).toArray(), 0, xyz, 3 * i, 3);
    }
    for (int c = 0; c < corners.length; c++) {
      corners[c] = model.corner(c / 3, c % 3);
    }
    return UniformShell.of(xyz, corners, model.thickness(0), model.material());
  }
}
