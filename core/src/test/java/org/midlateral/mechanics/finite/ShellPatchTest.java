package org.midlateral.mechanics.finite;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.midlateral.mechanics.element.Isotropic;

/**
 * The membrane and the bending patch of R. H. MacNeal and R. L. Harder, "A proposed standard set of
 * problems to test finite element accuracy", Finite Elem. Anal. Des. 1 (1985) 3-20, Table 1;
 * figures from memory, and they follow in closed form from the fields.
 */
class ShellPatchTest {
  private static final double MODULUS = 1e6;
  private static final double POISSON = 0.25;
  private static final double WALL = 0.001;

  private static final double[] NODES = {
    0, 0, 0, .24, 0, 0, .24, .12, 0, 0, .12, 0, .04, .02, 0, .18, .03, 0, .16, .08, 0, .08, .08, 0
  };

  private static final int[] TRIANGLES = {
    0, 1, 5, 0, 5, 4, 1, 2, 6, 1, 6, 5, 2, 3, 7, 2, 7, 6, 3, 0, 4, 3, 4, 7, 4, 5, 6, 4, 6, 7
  };

  private static final ShellModel PATCH =
      UniformShell.of(NODES, TRIANGLES, WALL, new Isotropic(MODULUS, POISSON));

  @Test
  void constantStrainInThePlane() throws MechanismException {
    BiFunction<Double, Double, double[]> field =
        (x, y) -> new double[] {1e-3 * (x + y / 2), 1e-3 * (y + x / 2), 0, 0, 0, 0};
    ShellResult result = solve(field);
    assertInnerNodes(result, field);
    for (int t = 0; t < PATCH.triangleCount(); t++) {
      SurfaceStrain s = SurfaceStrain.of(result, t, WallFace.FRONT);
      // Direct strains 1e-3 both, shear 1e-3: principal 1.5e-3 and 0.5e-3.
      assertThat(s.major()).isCloseTo(1.5e-3, within(1e-14));
      assertThat(s.minor()).isCloseTo(0.5e-3, within(1e-14));
    }
    // sigma_x = sigma_y = 1333, tau = 400: energy per volume (1333.3 * 2e-3 + 400 * 1e-3) / 2.
    double density = (4000 / 3.0 * 2e-3 + 400 * 1e-3) / 2;
    assertThat(result.strainEnergy()).isCloseTo(density * .24 * .12 * WALL, within(1e-17));
  }

  @Test
  void constantCurvature() throws MechanismException {
    BiFunction<Double, Double, double[]> field =
        (x, y) ->
            new double[] {
              0, 0, 1e-3 * (x * x + x * y + y * y) / 2, 1e-3 * (y + x / 2), -1e-3 * (x + y / 2), 0
            };
    ShellResult result = solve(field);
    assertInnerNodes(result, field);
    // Moments 1.111e-7 and 3.333e-8 per length, curvatures 1e-3, 1e-3, twist 1e-3.
    double perArea = (1.0e-6 / 9 * 2e-3 + 1.0e-7 / 3 * 1e-3) / 2;
    assertThat(result.strainEnergy()).isCloseTo(perArea * .24 * .12, within(1e-22));
    for (int t = 0; t < PATCH.triangleCount(); t++) {
      // Face strain is minus the height times the curvature; principal curvatures 1.5e-3, 0.5e-3.
      assertThat(SurfaceStrain.of(result, t, WallFace.FRONT).minor())
          .isCloseTo(-0.75e-6, within(1e-17));
      assertThat(SurfaceStrain.of(result, t, WallFace.BACK).major())
          .isCloseTo(0.75e-6, within(1e-17));
    }
  }

  @Test
  void rigidMotionsStoreNoEnergy() throws MechanismException {
    for (int k = 0; k < 6; k++) {
      double[] unit = new double[6];
      unit[k] = 1;
      Vector3D shift = Vector3D.of(unit[0], unit[1], unit[2]);
      Vector3D turn = Vector3D.of(unit[3], unit[4], unit[5]);
      List<Constraint> all = new ArrayList<>();
      for (int i = 0; i < 4; i++) {
        Vector3D u = shift.add(turn.cross(PATCH.node(i)));
        prescribe(all, i, new double[] {u.getX(), u.getY(), u.getZ(), unit[3], unit[4], unit[5]});
      }
      ShellResult result = ShellSolver.of(PATCH, all).solve(ShellLoad.none(PATCH));
      // The terms that cancel are modulus times wall, 1e3 N/mm, times the unit motion squared.
      assertThat(result.strainEnergy()).isCloseTo(0, within(1e-13 * MODULUS * WALL));
      Vector3D u = shift.add(turn.cross(PATCH.node(5)));
      assertThat(result.displacement(5).distance(u)).isLessThan(1e-12);
      assertThat(result.rotation(5).distance(turn)).isLessThan(1e-10);
    }
  }

  private static ShellResult solve(BiFunction<Double, Double, double[]> field)
      throws MechanismException {
    List<Constraint> edge = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      prescribe(edge, i, field.apply(NODES[3 * i], NODES[3 * i + 1]));
    }
    return ShellSolver.of(PATCH, edge).solve(ShellLoad.none(PATCH));
  }

  private static void prescribe(List<Constraint> to, int node, double[] values) {
    for (DegreeOfFreedom f : DegreeOfFreedom.values()) {
      to.add(new Constraint(node, f, values[f.ordinal()]));
    }
  }

  private static void assertInnerNodes(
      ShellResult result, BiFunction<Double, Double, double[]> field) {
    for (int i = 4; i < 8; i++) {
      double[] want = field.apply(NODES[3 * i], NODES[3 * i + 1]);
      Vector3D u = Vector3D.of(want[0], want[1], want[2]);
      Vector3D turn = Vector3D.of(want[3], want[4], want[5]);
      assertThat(result.displacement(i).distance(u)).isLessThan(1e-15);
      assertThat(result.rotation(i).distance(turn)).isLessThan(1e-13);
    }
  }
}
