package org.midlateral.mechanics.joint;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.midlateral.Fingers;
import org.midlateral.measurement.DesignRefused;
import org.midlateral.measurement.HoldingDesign;
import org.midlateral.measurement.Measurements;
import org.midlateral.measurement.NotComputable;
import org.midlateral.mechanics.Supports;
import org.midlateral.mechanics.finite.LoadSet;
import org.midlateral.mechanics.finite.RigidMotion;
import org.midlateral.mechanics.finite.ShellModel;
import org.midlateral.mechanics.finite.ShellResult;
import org.midlateral.mechanics.finite.ShellSolver;
import org.midlateral.mechanics.held.FingerShell;
import org.midlateral.mechanics.held.HeldAnswer;
import org.midlateral.mechanics.held.HeldJoint;
import org.midlateral.mechanics.held.HeldShell;

/**
 * Skin as stiff as bone in a trough moulded on it, held by a strap that does not stretch: only the
 * plastic is left to give way, and the shell elements on their usual mesh tell how.
 */
class StiffSkinTest {
  private static final double MOMENT = 50;

  private static List<Measurements> fingers() {
    return List.of(Fingers.ring(), Fingers.slim());
  }

  /** Forces that do not depend on the way: the work of the moment is twice what is stored. */
  @ParameterizedTest
  @ValueSource(ints = {0, 1})
  void theAngleIsWhatTheUsualMeshGivesUnderTheSameForces(int number)
      throws DesignRefused, NotComputable {
    FingerInPieces worn = WornFingers.moulded(fingers().get(number));
    HoldingDesign stiff = WornFingers.evenSkin(Fingers.design().holding(), 1e6, 0.01);
    HeldFinger finger = HeldFinger.of(worn, worn.factored(), stiff, 3, 1e-6);
    Fastening strap = WornFingers.strap(worn, 12, 0, 1e8);
    HeldState held = finger.held(strap, new JointMoment(MOMENT, 0));
    double stored = stored(finger, held.resting());
    double angle = held.resting().angle();
    System.out.printf(
        "stiff skin: %.4f degrees, %.4f from the usual mesh%n",
        Math.toDegrees(angle), Math.toDegrees(2 * stored / MOMENT));
    assertThat(angle).isCloseTo(2 * stored / MOMENT, Percentage.withPercentage(1));
  }

  /** What the usual mesh stores under the same forces in the same places. */
  private static double stored(HeldFinger finger, Resting resting)
      throws DesignRefused, NotComputable {
    Fitting fitting = finger.fitting();
    FingerShell usual =
        FingerShell.of(
            FingerShell.mesh(fitting.worn().pieces().get(0), 1), fitting.worn().material());
    ShellModel model = usual.model();
    LoadSet loads = new LoadSet(model, 1);
    for (int e = 0; e < fitting.patches().size(); e++) {
      SkinPatch patch = fitting.patches().get(e);
      for (SkinVertex v : patch.parts()) {
        put(loads, v.inside(), v.out().multiply(resting.force(e) * patch.share(v)));
      }
    }
    for (int k = 0; k < fitting.strips().size(); k++) {
      double pull = resting.force(finger.pieces().firstStrip() + k);
      for (TautBand.BandBend bend : fitting.strips().get(k).bends()) {
        if (bend.piece() == 0) {
          put(loads, bend.at(), bend.pull().multiply(pull));
        }
      }
    }
    ShellResult result =
        ShellSolver.of(model, RigidMotion.held(model)).solve(loads.sum(new double[] {1}));
    return result.strainEnergy();
  }

  /** Shared between the three nearest nodes, nearly as a finer mesh would take it. */
  private static void put(LoadSet loads, Vector3D at, Vector3D force) {
    if (force.norm() == 0) {
      return;
    }
    ShellModel model = loads.model();
    List<Integer> nodes = new ArrayList<>();
    for (int i = 0; i < model.nodeCount(); i++) {
      nodes.add(i);
    }
    nodes.sort((a, b) -> Double.compare(model.node(a).distance(at), model.node(b).distance(at)));
    for (int k = 0; k < 3; k++) {
      loads.add(0, nodes.get(k), at, force.multiply(1 / 3.0));
    }
  }

  /** The shell as coarse as here beside the usual one, under the forces put by hand. */
  @ParameterizedTest
  @ValueSource(ints = {0, 1})
  void theCoarseShellBendsAsTheUsualOne(int number) throws DesignRefused, NotComputable {
    FingerInPieces worn = WornFingers.moulded(fingers().get(number));
    HeldFinger finger = HeldFinger.of(worn, Fingers.design().holding());
    HeldJoint joint =
        HeldJoint.of(
            Supports.worn(
                MOMENT, Fingers.design().support(), worn.skin(), worn.pieces().get(0).outline()));
    HeldAnswer coarse = HeldShell.solve(finger.pieces().bodies().get(0), joint).answer();
    HeldAnswer usual = HeldShell.solve(WornFingers.bodies(worn, 1).get(0), joint).answer();
    Percentage one = Percentage.withPercentage(1);
    assertThat(coarse.extensionLost()).isCloseTo(usual.extensionLost(), one);
    assertThat(coarse.deflectionAtPip()).isCloseTo(usual.deflectionAtPip(), one);
  }
}
