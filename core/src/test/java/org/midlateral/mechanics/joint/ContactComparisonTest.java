package org.midlateral.mechanics.joint;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.midlateral.Fingers;
import org.midlateral.measurement.DesignRefused;
import org.midlateral.measurement.HoldingDesign;
import org.midlateral.measurement.Measurements;
import org.midlateral.measurement.NotComputable;
import org.midlateral.mechanics.element.Isotropic;
import org.midlateral.mechanics.finite.SolidComparisonTest;
import org.midlateral.mechanics.held.ContactDeck;
import org.midlateral.mechanics.held.FingerShell;
import org.midlateral.mechanics.joint.JointAnswer.Resultants;

/**
 * A trough and a soft finger in contact, beside CalculiX's solids. The tissue there is a layer of
 * bricks that does not widen when squeezed, on rigid bone: on a round finger of radius r and bone
 * at r (1 - d) it gives way as a layer r log(1 / (1 - d)) thick does by its law. Skipped where the
 * program (Debian package calculix-ccx) is missing, but not on a build server.
 */
class ContactComparisonTest {
  /** The layer's thickness by its law, as a share of the radius. */
  private static final double THICKNESS = 0.2;

  private static final double KILOPASCAL = 30;

  /** Soft enough that its bending tells. */
  private static final Isotropic SHEET = new Isotropic(400, 0.4);

  @TempDir Path directory;

  @BeforeAll
  static void needsTheProgram() {
    SolidComparisonTest.needsTheProgram();
  }

  static Stream<Arguments> fingers() {
    return Stream.of(
        Arguments.of("ring", Fingers.ring(), 22.0), Arguments.of("slim", Fingers.slim(), 14.0));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("fingers")
  void agreesWithSolidsInContact(String name, Measurements measured, double moment)
      throws DesignRefused, NotComputable, IOException, InterruptedException {
    FingerInPieces worn = WornFingers.moulded(measured, SHEET);
    HoldingDesign even = WornFingers.evenSkin(Fingers.design().holding(), KILOPASCAL, THICKNESS);
    HeldFinger finger = HeldFinger.of(worn, even);
    Fastening wrap = new Fastening(25, 2, 0.5, 0, List.of());
    JointMoment pull = new JointMoment(moment, 0);
    HeldFinger.Held held = finger.held(wrap, pull);
    JointAnswer answer = finger.hold(wrap, pull);
    double found = held.resting().angle();

    ContactDeck deck = deck(finger, held);
    double[] angles = {0.85 * found, found, 1.15 * found};
    List<Map<Integer, Vector3D>> steps = deck.turn(angles, directory);
    double[] moments = new double[3];
    for (int k = 0; k < 3; k++) {
      moments[k] = moment(finger, held, deck, steps.get(k));
    }
    double angle =
        angles[0] + (moment - moments[0]) / (moments[2] - moments[0]) * (angles[2] - angles[0]);
    Resultants solids = resultants(finger, held, deck, steps.get(1));
    double peak = peak(deck, steps.get(1));
    System.out.printf(
        "%s: %.3f degrees, solids %.3f (%+.1f %%); over 1 cm² %.2f kPa, solids %.2f (%+.1f %%);"
            + " proximal %.3f N, solids %.3f; distal %.3f N, solids %.3f; moments %.2f %.2f %.2f%n",
        name,
        Math.toDegrees(found),
        Math.toDegrees(angle),
        100 * (found / angle - 1),
        1000 * answer.squareCentimetre().pressure(),
        1000 * peak,
        100 * (answer.squareCentimetre().pressure() / peak - 1),
        answer.resultants().proximal().force(),
        solids.proximal().force(),
        answer.resultants().distal().force(),
        solids.distal().force(),
        moments[0],
        moments[1],
        moments[2]);
    assertThat(found).isCloseTo(angle, Percentage.withPercentage(5));
    assertThat(answer.squareCentimetre().pressure()).isCloseTo(peak, Percentage.withPercentage(10));
    Percentage three = Percentage.withPercentage(3);
    assertThat(answer.resultants().proximal().force()).isCloseTo(solids.proximal().force(), three);
    assertThat(answer.resultants().distal().force()).isCloseTo(solids.distal().force(), three);
    assertThat(answer.resultants().middle().force()).isCloseTo(solids.middle().force(), three);
  }

  private static ContactDeck deck(HeldFinger finger, HeldFinger.Held held) throws NotComputable {
    Fitting fitting = finger.fitting();
    FingerShell shell = FingerShell.of(fitting.solids().get(0), fitting.worn().material());
    double[] laid = held.laid().motion();
    ContactDeck deck =
        new ContactDeck(
            shell, 1 - Math.exp(-THICKNESS), 0.001 * KILOPASCAL, Vector3D.of(0, 0, laid[2]));
    for (int k = 0; k < fitting.strips().size(); k++) {
      double pull = held.resting().force(finger.pieces().firstStrip() + k);
      for (TautBand.Bend bend : fitting.strips().get(k).bends()) {
        if (bend.piece() == 0) {
          deck.pull(bend.at(), bend.pull().multiply(pull));
        }
      }
    }
    double all = 0;
    double grip = 0;
    for (SkinPatch patch : finger.pieces().gripped()) {
      all += patch.area();
      double radius = fitting.worn().skin().circumference(patch.station()) / (2 * Math.PI);
      grip += patch.area() * 0.001 * KILOPASCAL / 3 / (THICKNESS * radius);
    }
    for (SkinPatch patch : finger.pieces().gripped()) {
      for (SkinVertex v : patch.parts()) {
        deck.grip(v.vertex(), grip * v.area() / all);
      }
    }
    return deck;
  }

  /** What turns the distal bone, tissue and bands together; it holds the joint against this. */
  private static double moment(
      HeldFinger finger, HeldFinger.Held held, ContactDeck deck, Map<Integer, Vector3D> reactions) {
    Vector3D centre = finger.pieces().centre();
    double moment = 0;
    for (ContactDeck.Bone bone : deck.bones()) {
      if (bone.distal()) {
        moment += centre.vectorTo(bone.place()).cross(reactions.get(bone.id())).getY();
      }
    }
    for (int k = 0; k < finger.fitting().strips().size(); k++) {
      TautBand band = finger.fitting().strips().get(k);
      double pull = held.resting().force(finger.pieces().firstStrip() + k);
      for (TautBand.Bend bend : band.bends()) {
        if (bend.piece() < 0 && finger.fitting().worn().distal(band.station())) {
          moment -= centre.vectorTo(bend.at()).cross(bend.pull().multiply(pull)).getY();
        }
      }
    }
    return moment;
  }

  private static Resultants resultants(
      HeldFinger finger, HeldFinger.Held held, ContactDeck deck, Map<Integer, Vector3D> reactions) {
    NetForces net = new NetForces(finger.fitting().worn());
    for (ContactDeck.Bone bone : deck.bones()) {
      net.add(bone.station(), bone.place(), reactions.get(bone.id()).negate());
    }
    for (int k = 0; k < finger.fitting().strips().size(); k++) {
      net.add(
          finger.fitting().strips().get(k), held.resting().force(finger.pieces().firstStrip() + k));
    }
    return net.resultants();
  }

  /** The largest force on a disc of 1 cm² of the skin, over that. */
  private static double peak(ContactDeck deck, Map<Integer, Vector3D> reactions) {
    double radius = Math.sqrt(100 / Math.PI);
    double largest = 0;
    for (ContactDeck.Bone middle : deck.bones()) {
      double force = 0;
      for (ContactDeck.Bone bone : deck.bones()) {
        double own = Math.sqrt(bone.area() / Math.PI);
        double share = (radius + own - middle.skin().distance(bone.skin())) / (2 * own);
        force += Math.max(0, Math.min(1, share)) * reactions.get(bone.id()).dot(bone.out());
      }
      largest = Math.max(largest, force);
    }
    return largest / 100;
  }
}
