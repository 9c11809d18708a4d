package org.midlateral.mechanics.joint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.midlateral.mechanics.algebra.GroupedRows;

/** Two bones on a hinge in a flat, rigid piece: what statics gives by hand. */
class ClosedFormTest {
  private static final Percentage HALF = Percentage.withPercentage(0.5);
  private static final double PROXIMAL = 40;
  private static final double DISTAL = 36;
  private static final Vector3D UP = Vector3D.Unit.PLUS_Z;
  private static final Vector3D DOWN = Vector3D.Unit.MINUS_Z;

  private final List<Coupling> couplings = new ArrayList<>();
  private final List<double[]> rigid = new ArrayList<>();

  /**
   * A spring at x from the hinge that is closed when the finger goes along a direction; it pushes
   * the piece that way.
   */
  private void spring(double x, Vector3D direction, SpringLaw law, double gap) {
    Vector3D at = Vector3D.of(x, 0, 0);
    boolean distal = x > 0;
    double even = distal ? direction.getX() * x : 0;
    double odd = distal ? -direction.getZ() * x : 0;
    couplings.add(new Coupling(law, even, odd, gap));
    Vector3D turn = at.cross(direction).multiply(1 / PressedPieces.ARM);
    rigid.add(
        new double[] {
          direction.getX(),
          direction.getY(),
          direction.getZ(),
          turn.getX(),
          turn.getY(),
          turn.getZ()
        });
  }

  private Resting rest(double moment) {
    double[][] moves = rigid.toArray(new double[0][]);
    GroupedRows rows = GroupedRows.of(moves, new int[moves.length]);
    HeldSystem system = new HeldSystem(couplings, rows, 6, new JointMoment(moment, 0));
    return Equilibrium.of(system, Resting.start(system, 0, new double[] {0, 0, 0.1, 0, 0, 0}));
  }

  /** The angle is the sum of force over stiffness over arm. */
  @ParameterizedTest
  @ValueSource(doubles = {5, 20, 60})
  void threeSprings(double moment) {
    double[] stiffness = {11, 7, 23};
    spring(-PROXIMAL, DOWN, SpringLaw.stop(stiffness[0]), 0);
    spring(DISTAL, DOWN, SpringLaw.stop(stiffness[1]), 0);
    spring(0, UP, SpringLaw.stop(stiffness[2]), 0);
    double proximal = moment / PROXIMAL;
    double distal = moment / DISTAL;
    double angle =
        proximal / stiffness[0] / PROXIMAL
            + distal / stiffness[1] / DISTAL
            + (proximal + distal) / stiffness[2] * (1 / PROXIMAL + 1 / DISTAL);
    Resting found = rest(moment);
    assertThat(found.angle()).isCloseTo(angle, HALF);
    assertThat(found.force(0)).isCloseTo(proximal, HALF);
    assertThat(found.force(1)).isCloseTo(distal, HALF);
    assertThat(found.force(2)).isCloseTo(proximal + distal, HALF);
  }

  /** Gaps over the arms come on top of it. */
  @Test
  void playIsGapOverArm() {
    spring(-PROXIMAL, DOWN, SpringLaw.stop(1e4), 0.3);
    spring(DISTAL, DOWN, SpringLaw.stop(1e4), 0.3);
    spring(0, UP, SpringLaw.stop(1e4), 0.5);
    double angle = (0.3 + 0.5) * (1 / PROXIMAL + 1 / DISTAL);
    assertThat(rest(20).angle()).isCloseTo(angle, HALF);
    // 2.5 degrees on 40 and 35 mm, worked by hand.
    assertThat(Math.toDegrees(0.8 * (1 / 40.0 + 1 / 35.0))).isCloseTo(2.5, within(0.05));
  }

  private static final double PULL = 0.08;
  private static final double STRETCH = 0.2;
  private static final int STRIPS = 304;

  /**
   * A wrap of even pull per length on a rigid floor: the finger stays straight up to M = q a b / 2,
   * the middle of a simply supported span under an even load. Beyond, the joint rises by d, the
   * wrap pulls harder by its stiffness times the rise, which is linear along each bone, and the
   * work of all gives M = q a b / 2 + k d a b / 3.
   */
  private Resting wrapped(double moment) {
    double strip = (PROXIMAL + DISTAL) / STRIPS;
    for (int k = 0; k < STRIPS; k++) {
      double x = -PROXIMAL + (k + 0.5) * strip;
      // Pulled with q, and harder by k where it is stretched.
      Hoop wrap = new Hoop(strip, PULL, STRETCH, 0, 0, List.of(), 0, 0);
      spring(x, UP, wrap, 0);
      spring(x, DOWN, SpringLaw.stop(1e3 * strip), 0);
    }
    spring(-PROXIMAL, DOWN, SpringLaw.stop(1e5), 0);
    spring(DISTAL, DOWN, SpringLaw.stop(1e5), 0);
    return rest(moment);
  }

  @Test
  void underAnEvenWrapTheFingerStaysStraightUpToItsCapacity() {
    double capacity = PULL * PROXIMAL * DISTAL / 2;
    double held = wrapped(0.995 * capacity).angle();
    assertThat(Math.toDegrees(held)).isCloseTo(0, within(0.01));
    couplings.clear();
    rigid.clear();
    assertThat(Math.toDegrees(wrapped(1.05 * capacity).angle())).isGreaterThan(0.08);
  }

  @ParameterizedTest
  @ValueSource(doubles = {1.2, 1.5, 2})
  void beyondItTheJointGoesWithTheWrapsStretch(double share) {
    double capacity = PULL * PROXIMAL * DISTAL / 2;
    double rise = (share - 1) * capacity / (STRETCH * PROXIMAL * DISTAL / 3);
    double angle = rise * (1 / PROXIMAL + 1 / DISTAL);
    assertThat(wrapped(share * capacity).angle()).isCloseTo(angle, HALF);
  }
}
