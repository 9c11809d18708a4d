package org.midlateral.mechanics.finite;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.assertj.core.data.Percentage;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.midlateral.measurement.NotComputable;
import org.midlateral.mechanics.element.Isotropic;

/** The equations against a dense solution by EJML, closed forms, and refusals. */
class ShellSolverTest {
  private static final Isotropic MATERIAL = new Isotropic(400, 0.4);

  /** A saddle of 9 by 7 cells, so that several patches are cut. */
  private static final MappedGrid SADDLE =
      MappedGrid.open(
          MappedGrid.even(9, 0, 9),
          MappedGrid.even(7, 0, 7),
          (x, y) -> Vector3D.of(x, y, 0.05 * x * y));

  @Test
  void solvesWhatADenseSolverSolves() throws MechanismException {
    ShellModel model = SADDLE.shell(0.5, MATERIAL);
    List<Constraint> held =
        List.of(
            new Constraint(3, DegreeOfFreedom.ALONG_X, 0.1),
            Constraint.fixed(3, DegreeOfFreedom.ALONG_Y),
            Constraint.fixed(3, DegreeOfFreedom.ALONG_Z),
            Constraint.fixed(70, DegreeOfFreedom.ALONG_Y),
            new Constraint(70, DegreeOfFreedom.ALONG_Z, -0.2),
            Constraint.fixed(40, DegreeOfFreedom.ALONG_Z),
            new Constraint(41, DegreeOfFreedom.ABOUT_Y, 0.01));
    ShellLoad load =
        PlainLoads.atNode(model, 79, Vector3D.of(1, 2, 3), Vector3D.of(4, -5, 6))
            .plus(PlainLoads.onTriangles(model, new int[] {8, 9}, 0.5, Vector3D.of(0, 1, -2)));
    ShellResult result = ShellSolver.of(model, held).solve(load);
    DMatrixRMaj want = dense(model, load, held);
    for (int i = 0; i < model.nodeCount(); i++) {
      for (int k = 0; k < 3; k++) {
        assertThat(result.displacement(i).toArray()[k])
            .isCloseTo(want.get(6 * i + k), within(1e-9));
        assertThat(result.rotation(i).toArray()[k])
            .isCloseTo(want.get(6 * i + 3 + k), within(1e-9));
      }
    }
    double sum = load.resultant().getX() + result.reaction(held.get(0));
    assertThat(sum).isCloseTo(0, within(1e-9));
  }

  /** The whole matrix, with each prescribed freedom's row replaced by its value. */
  private static DMatrixRMaj dense(ShellModel model, ShellLoad load, List<Constraint> held) {
    int n = 6 * model.nodeCount();
    DMatrixRMaj matrix = new DMatrixRMaj(n, n);
    MeshCurvature bends = new MeshCurvature(model);
    double[] packed = new double[ShellTriangle.PACKED];
    for (int t = 0; t < model.triangleCount(); t++) {
      new ShellTriangle(model, bends, t).stiffness(packed, 0);
      for (int i = 0; i < 18; i++) {
        for (int j = 0; j < 18; j++) {
          int row = 6 * model.corner(t, i / 6) + i % 6;
          int column = 6 * model.corner(t, j / 6) + j % 6;
          int at = Math.max(i, j) * (Math.max(i, j) + 1) / 2 + Math.min(i, j);
          matrix.add(row, column, packed[at]);
        }
      }
    }
    DMatrixRMaj right = new DMatrixRMaj(n, 1, true, load.values().clone());
    for (Constraint c : held) {
      int row = c.freedom().at(c.node());
      for (int j = 0; j < n; j++) {
        matrix.set(row, j, row == j ? 1 : 0);
      }
      right.set(row, c.value());
    }
    DMatrixRMaj solution = new DMatrixRMaj(n, 1);
    assertThat(CommonOps_DDRM.solve(matrix, right, solution)).isTrue();
    return solution;
  }

  /** Timoshenko's cantilever, bending and shear: P l^3 / (3 E I) + P l / (5/6 G A). */
  @ParameterizedTest
  @CsvSource({"20", "5", "2"})
  void shortCantileverBendsAndShears(double length) throws MechanismException {
    double width = 1;
    double wall = 1;
    MappedGrid grid =
        MappedGrid.open(
            MappedGrid.even(80, 0, length),
            MappedGrid.even(4, 0, width),
            (x, y) -> Vector3D.of(x, y, 0));
    Isotropic material = new Isotropic(400, 0);
    ShellModel model = grid.shell(wall, material);
    int[] tip = new int[8];
    for (int j = 0; j < 4; j++) {
      tip[2 * j] = grid.node(80, j);
      tip[2 * j + 1] = grid.node(80, j + 1);
    }
    ShellLoad load = PlainLoads.onEdges(model, tip, Vector3D.of(0, 0, 1));
    ShellResult result =
        ShellSolver.of(model, new Supports().clamp(grid.lineU(0)).list()).solve(load);
    double bending = Math.pow(length, 3) / (3 * 400 * width * Math.pow(wall, 3) / 12);
    double shear = length / (5 / 6.0 * material.shearModulus() * width * wall);
    assertThat(result.displacement(grid.node(80, 2)).getZ())
        .isCloseTo(bending + shear, Percentage.withPercentage(0.5));
  }

  /** Half a thin ring spread by opposite forces on its ends opens by (pi / 2) F R^3 / (E I). */
  @Test
  void halfARingOpensAsAThinCurvedBeam() throws MechanismException {
    double radius = 10;
    double wall = 0.1;
    MappedGrid grid =
        MappedGrid.open(
            MappedGrid.even(2, 0, 1),
            MappedGrid.even(60, -Math.PI / 2, Math.PI / 2),
            (x, a) -> Vector3D.of(x, -radius * Math.sin(a), -radius * Math.cos(a)));
    ShellModel model = grid.shell(wall, new Isotropic(400, 0));
    int[] left = {grid.node(0, 0), grid.node(1, 0), grid.node(1, 0), grid.node(2, 0)};
    int[] right = {grid.node(0, 60), grid.node(1, 60), grid.node(1, 60), grid.node(2, 60)};
    ShellLoad load =
        PlainLoads.onEdges(model, left, Vector3D.of(0, 1, 0))
            .plus(PlainLoads.onEdges(model, right, Vector3D.of(0, -1, 0)));
    ShellResult result = ShellSolver.of(model, RigidMotion.held(model)).solve(load);
    double opening =
        result.displacement(grid.node(1, 0)).getY() - result.displacement(grid.node(1, 60)).getY();
    double inertia = Math.pow(wall, 3) / 12;
    assertThat(opening)
        .isCloseTo(
            Math.PI / 2 * Math.pow(radius, 3) / (400 * inertia), Percentage.withPercentage(0.5));
    // The largest moment, F R at the crown, strains both faces by F R (t / 2) / (E I).
    double crown = radius * wall / 2 / (400 * inertia);
    assertThat(Math.abs(SurfaceStrain.largest(result).extreme()))
        .isCloseTo(crown, Percentage.withPercentage(2));
    assertThat(Math.abs(model.centroid(SurfaceStrain.largest(result).triangle()).getY()))
        .isLessThan(0.6);
  }

  @Test
  void curvatureOfACylinderIsFound() {
    MappedGrid grid =
        MappedGrid.open(
            MappedGrid.even(6, 0, 6),
            MappedGrid.lines(6, -90, 90),
            (x, d) ->
                Vector3D.of(x, -9 * Math.sin(Math.toRadians(d)), -9 * Math.cos(Math.toRadians(d))));
    ShellModel model = grid.shell(1.6, MATERIAL);
    MeshCurvature bends = new MeshCurvature(model);
    for (int t = 0; t < model.triangleCount(); t++) {
      double[] b = bends.at(t);
      double mean = (b[0] + b[1]) / 2;
      double radius = Math.hypot((b[0] - b[1]) / 2, b[2]);
      assertThat(mean + radius).isCloseTo(1 / 9.0, Percentage.withPercentage(3));
      assertThat(mean - radius).isCloseTo(0, within(1e-3));
    }
  }

  @Test
  void aLooseShellIsRefused() {
    ShellModel model = SADDLE.shell(0.5, MATERIAL);
    List<Constraint> six = RigidMotion.held(model);
    for (int left = 0; left < 6; left++) {
      List<Constraint> five = new java.util.ArrayList<>(six);
      five.remove(left);
      assertThatThrownBy(() -> ShellSolver.of(model, five))
          .isInstanceOf(MechanismException.class)
          .hasMessageContaining("can move without strain");
    }
  }

  @Test
  void aLoosePieceBesideAHeldOneIsRefused() {
    double[] xyz = {0, 0, 0, 1, 0, 0, 0, 1, 0, 5, 0, 0, 6, 0, 0, 5, 1, 0};
    ShellModel two = UniformShell.of(xyz, new int[] {0, 1, 2, 3, 4, 5}, 1, MATERIAL);
    List<Constraint> held = new Supports().clamp(new int[] {0}).list();
    assertThatThrownBy(() -> ShellSolver.of(two, held))
        .isInstanceOf(MechanismException.class)
        .hasMessageContaining("around node 3");
  }

  /** A stiffness that vanishes shows in the pivots, in whichever half of the shell it is. */
  @Test
  void aShellWithoutStiffnessIsRefused() {
    ShellModel model = SADDLE.shell(0.5, MATERIAL);
    Connectivity connections = new Connectivity(model);
    double[] ones = new double[DegreeOfFreedom.COUNT * model.nodeCount()];
    Arrays.fill(ones, 1);
    Front all = NestedDissection.of(model, connections, new boolean[ones.length]);
    double[] none = new double[connections.size()];

    assertThatThrownBy(() -> FactoredFront.of(all, connections, none, ones))
        .isInstanceOf(MechanismException.class)
        .hasMessageContaining("can move without strain");
  }

  @Test
  void wrongConstraintsAndLoadsAreRefused() throws MechanismException {
    ShellModel model = SADDLE.shell(0.5, MATERIAL);
    assertThatThrownBy(
            () -> ShellSolver.of(model, List.of(Constraint.fixed(80, DegreeOfFreedom.ALONG_X))))
        .hasMessage("a constraint names node 80 of 80");
    Constraint twice = Constraint.fixed(1, DegreeOfFreedom.ALONG_X);
    assertThatThrownBy(() -> ShellSolver.of(model, List.of(twice, twice)))
        .hasMessageContaining("twice");
    ShellModel other = TroughTest.trough(37, 8).model();
    ShellSolver solver = ShellSolver.of(model, RigidMotion.held(model));
    assertThatThrownBy(() -> solver.solve(ShellLoad.none(other)))
        .hasMessageContaining("another model");
    assertThatThrownBy(() -> PlainLoads.onTriangles(model, new int[0], 0, Vector3D.of(1, 0, 0)))
        .hasMessageContaining("no triangle");
  }

  @Test
  void wrongModelsAreRefused() {
    double[] xyz = {0, 0, 0, 1, 0, 0, 0, 1, 0};
    assertThatThrownBy(() -> UniformShell.of(xyz, new int[] {0, 1, 3}, 1, MATERIAL))
        .hasMessage("a triangle names node 3 of 3");
    assertThatThrownBy(() -> UniformShell.of(xyz, new int[] {0, 1, 1}, 1, MATERIAL))
        .hasMessage("node 2 belongs to no triangle");
    assertThatThrownBy(() -> UniformShell.of(xyz, new int[] {0, 1, 2}, 0, MATERIAL))
        .hasMessageContaining("thickness above 0");
    double[] flat = {0, 0, 0, 1, 0, 0, 2, 0, 0};
    assertThatThrownBy(() -> UniformShell.of(flat, new int[] {0, 1, 2}, 1, MATERIAL))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("triangle 0 has no area");
    // Arrays that were computed may be so: that is an outcome, not a mistake of whoever asks.
    double[] walls = {1, 1, 1};
    assertThatThrownBy(() -> ShellModel.of(flat, new int[] {0, 1, 2}, walls, MATERIAL))
        .isInstanceOf(NotComputable.class)
        .hasMessage("triangle 0 has no area");
    double[] lost = {0, 0, 0, 1, 0, 0, Double.NaN, 1, 0};
    assertThatThrownBy(() -> ShellModel.of(lost, new int[] {0, 1, 2}, walls, MATERIAL))
        .isInstanceOf(NotComputable.class)
        .hasMessageContaining("node 2");
    assertThatThrownBy(() -> new Isotropic(-1, 0.3)).hasMessageContaining("modulus");
    assertThatThrownBy(() -> new Isotropic(1, 0.6)).hasMessageContaining("poisson");
  }

  @Test
  void anEvenTractionHasItsTotalAndItsMoment() {
    MappedGrid flat =
        MappedGrid.open(
            MappedGrid.even(4, 0, 8), MappedGrid.even(3, 0, 6), (x, y) -> Vector3D.of(x, y, 0));
    ShellModel model = flat.shell(2, MATERIAL);
    Vector3D total = Vector3D.of(5, 0, -3);
    ShellLoad load = PlainLoads.onTriangles(model, flat.triangles(0, 8, 0, 6), 0.5, total);
    assertThat(load.resultant().distance(total)).isLessThan(1e-14);
    // It acts at the middle of the front face, (4, 3, 1).
    Vector3D want = Vector3D.of(4, 3, 1).cross(total);
    assertThat(load.momentAbout(model, Vector3D.ZERO).distance(want)).isLessThan(1e-13);
  }
}
