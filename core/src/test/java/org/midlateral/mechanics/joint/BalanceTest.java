package org.midlateral.mechanics.joint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.midlateral.measurement.DesignRefused;
import org.midlateral.measurement.NotComputable;
import org.midlateral.measurement.Order;
import org.midlateral.measurement.file.Orders;
import org.midlateral.mechanics.Joining;
import org.midlateral.mechanics.finite.ShellResult;
import org.midlateral.mechanics.joint.SpringLaw.SpringAnswer;

/** Forces balance, and what is put in is stored. */
class BalanceTest {
  private static final JointMoment MOMENT = new JointMoment(25, 25 / Math.toRadians(13));

  private static Order order(String sample) {
    return Orders.read(Path.of("..", "samples", sample + ".yaml"), List.of()).order();
  }

  static Stream<Arguments> held() throws DesignRefused, NotComputable {
    FingerInPieces trough = WornFingers.trough(order("bulbous-ring"));
    FingerInPieces taped = WornFingers.both(order("left-deficit"), Joining.SLIPPING);
    FingerInPieces bonded = WornFingers.both(order("slim-little"), Joining.BONDED);
    return Stream.of(
        Arguments.of("wrapped", trough, new Fastening(25, 2, 0.5, 2, List.of())),
        Arguments.of("strapped", trough, WornFingers.strap(trough, 16, 0.5, 200)),
        Arguments.of("taped", taped, new Fastening(10, 1, 0.5, 160, WornFingers.list(15, 35))),
        Arguments.of("bonded", bonded, WornFingers.strap(bonded, 16, 0.5, 200)));
  }

  private static HeldFinger finger(FingerInPieces worn) throws DesignRefused, NotComputable {
    return HeldFinger.of(worn, order("slim-little").design().holding());
  }

  /** The six supports of each shell, which take what is not balanced, carry nothing. */
  @ParameterizedTest(name = "{0}")
  @MethodSource("held")
  void nothingIsLeftForTheSupports(String name, FingerInPieces worn, Fastening fastening)
      throws DesignRefused, NotComputable {
    HeldFinger finger = finger(worn);
    Resting resting = finger.held(fastening, MOMENT).resting();
    double[] forces = resting.forces();
    double largest = 0;
    for (int e = 0; e < forces.length; e++) {
      largest = Math.max(largest, Math.abs(forces[e]));
    }
    for (int b = 0; b < finger.pieces().bodies().size(); b++) {
      ShellResult result =
          finger.pieces().bodies().get(b).solver().solve(finger.pieces().loads(b).sum(forces));
      assertThat(result.largestReactionForce()).isLessThan(1e-6 * largest);
    }
    assertThat(resting.miss()).isLessThan(1e-8);
  }

  /** Moments about the hinge, with the distal part turned to where it rests. */
  @ParameterizedTest(name = "{0}")
  @MethodSource("held")
  void theHingeIsInBalance(String name, FingerInPieces worn, Fastening fastening)
      throws DesignRefused, NotComputable {
    HeldFinger finger = finger(worn);
    Resting resting = finger.held(fastening, MOMENT).resting();
    Vector3D centre = finger.pieces().centre();
    double turning = 0;
    double largest = MOMENT.at(resting.angle());
    for (int e = 0; e < finger.fitting().patches().size(); e++) {
      SkinPatch patch = finger.fitting().patches().get(e);
      for (SkinVertex v : patch.parts()) {
        if (worn.distal(v.station())) {
          Vector3D push = v.out().multiply(-resting.force(e) * patch.share(v));
          turning += turned(centre, v.skin(), resting.angle()).cross(push).getY();
        }
      }
    }
    for (int k = 0; k < finger.fitting().strips().size(); k++) {
      TautBand band = finger.fitting().strips().get(k);
      double pull = resting.force(finger.pieces().firstStrip() + k);
      for (TautBand.BandBend bend : band.bends()) {
        if (bend.piece() < 0 && worn.distal(band.station())) {
          Vector3D push = bend.pull().multiply(pull);
          turning += turned(centre, bend.at(), resting.angle()).cross(push).getY();
        }
      }
    }
    assertThat(turning + MOMENT.at(resting.angle())).isCloseTo(0, within(1e-6 * largest));
  }

  /** From the hinge to a point of the distal part; flexion turns it about +y. */
  private static Vector3D turned(Vector3D centre, Vector3D at, double angle) {
    Vector3D arm = centre.vectorTo(at);
    double cos = Math.cos(angle);
    double sin = Math.sin(angle);
    return Vector3D.of(
        cos * arm.getX() + sin * arm.getZ(), arm.getY(), cos * arm.getZ() - sin * arm.getX());
  }

  /** Ten steps of the angle, by Simpson's rule: what a hand does along the way is stored. */
  @ParameterizedTest(name = "{0}")
  @MethodSource("held")
  void theWorkOfTheMomentIsStored(String name, FingerInPieces worn, Fastening fastening)
      throws DesignRefused, NotComputable {
    HeldFinger finger = finger(worn);
    HeldState held = finger.held(fastening, MOMENT);
    double end = held.resting().angle();
    Resting state = turnedTo(held.system(), held.laid(), 0);
    double first = energy(state);
    double before = moment(held.system(), state);
    double work = 0;
    for (int k = 0; k < 10; k++) {
      Resting middle = turnedTo(held.system(), state, (k + 0.5) * end / 10);
      state = turnedTo(held.system(), middle, (k + 1) * end / 10);
      double after = moment(held.system(), state);
      work += (before + 4 * moment(held.system(), middle) + after) / 6 * end / 10;
      before = after;
    }
    assertThat(before).isCloseTo(MOMENT.at(end), Percentage.withPercentage(0.1));
    assertThat(energy(state) - first).isPositive().isCloseTo(work, Percentage.withPercentage(1));
  }

  private static Resting turnedTo(HeldSystem system, Resting from, double angle) {
    Resting start =
        new Resting(
            angle, from.motion(), from.shape(), new double[0], new SpringAnswer[0], 0, 0, 0);
    return Equilibrium.heldAt(system, start);
  }

  private static double energy(Resting state) {
    return state.energy(0, state.forces().length) + state.bent();
  }

  /** What the springs hold the joint with. */
  private static double moment(HeldSystem system, Resting state) {
    double moment = 0;
    for (int e = 0; e < system.size(); e++) {
      moment +=
          state.force(e) * system.couplings().get(e).fingerRate(Coupling.Flexed.by(state.angle()));
    }
    return moment;
  }
}
