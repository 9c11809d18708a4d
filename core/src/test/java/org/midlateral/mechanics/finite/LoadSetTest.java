package org.midlateral.mechanics.finite;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.midlateral.mechanics.element.Isotropic;

/** Many small loads at once against one whole solution each. */
class LoadSetTest {
  private static final int LOADS = 40;
  private static final ShellModel SADDLE =
      MappedGrid.open(
              MappedGrid.even(14, 0, 14),
              MappedGrid.even(9, 0, 9),
              (x, y) -> Vector3D.of(x, y, 0.05 * x * y))
          .shell(0.5, new Isotropic(400, 0.4));

  /** Forces beside one to three nodes each, some of them on the nodes that are held. */
  private static LoadSet loads(ShellModel model, List<ShellLoad> whole) {
    Random random = new Random(11);
    LoadSet loads = new LoadSet(model, LOADS);
    for (int k = 0; k < LOADS; k++) {
      ShellLoad sum = ShellLoad.none(model);
      for (int part = 0; part <= k % 3; part++) {
        int node = random.nextInt(model.nodeCount());
        Vector3D force = vector(random);
        Vector3D at = model.node(node).add(vector(random));
        loads.add(k, node, at, force);
        Vector3D moment = model.node(node).vectorTo(at).cross(force);
        sum = sum.plus(PlainLoads.atNode(model, node, force, moment));
      }
      whole.add(sum);
    }
    return loads;
  }

  private static Vector3D vector(Random random) {
    return Vector3D.of(random.nextGaussian(), random.nextGaussian(), random.nextGaussian());
  }

  /** Work of a load along what another one does is what a whole solution gives. */
  private static void assertCompliance(ShellModel model) throws MechanismException {
    List<ShellLoad> whole = new ArrayList<>();
    LoadSet loads = loads(model, whole);
    ShellSolver solver = ShellSolver.of(model, RigidMotion.held(model));
    double[][] compliance = solver.compliance(loads);
    for (int j = 0; j < LOADS; j++) {
      ShellResult result = solver.solve(whole.get(j));
      for (int i = 0; i < LOADS; i++) {
        double work = 0;
        for (int node = 0; node < model.nodeCount(); node++) {
          work += whole.get(i).force(node).dot(result.displacement(node));
          work += whole.get(i).moment(node).dot(result.rotation(node));
        }
        double size = Math.sqrt(compliance[i][i] * compliance[j][j]);
        assertThat(compliance[i][j]).isCloseTo(work, within(1e-9 * size));
        assertThat(compliance[i][j]).isEqualTo(compliance[j][i]);
      }
    }
  }

  @Test
  void aShellGivesWayAsWholeSolutionsTell() throws MechanismException {
    assertCompliance(SADDLE);
  }

  @Test
  void aBondedPairToo() throws MechanismException {
    assertCompliance(TieTest.bonded(TieTest.grid(10, 4, 0), TieTest.grid(13, 5, 1.5)));
  }

  @Test
  void theSumOfLoadsStoresWhatTheComplianceSays() throws MechanismException {
    List<ShellLoad> whole = new ArrayList<>();
    LoadSet loads = loads(SADDLE, whole);
    ShellSolver solver = ShellSolver.of(SADDLE, RigidMotion.held(SADDLE));
    double[][] compliance = solver.compliance(loads);
    double[] factors = new double[LOADS];
    double energy = 0;
    for (int i = 0; i < LOADS; i++) {
      factors[i] = 1 - 0.1 * i;
      for (int j = 0; j <= i; j++) {
        energy += (i == j ? 0.5 : 1) * factors[i] * factors[j] * compliance[i][j];
      }
    }
    double stored = solver.solve(loads.sum(factors)).strainEnergy();
    assertThat(stored).isCloseTo(energy, within(1e-9 * energy));
  }

  @Test
  void loadsOfAnotherModelAreRefused() throws MechanismException {
    ShellModel other = TieTest.grid(4, 4, 0).shell(1, new Isotropic(400, 0.4));
    ShellSolver solver = ShellSolver.of(SADDLE, RigidMotion.held(SADDLE));
    LoadSet loads = new LoadSet(other, 1);
    assertThatThrownBy(() -> solver.compliance(loads))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("another model");
  }
}
