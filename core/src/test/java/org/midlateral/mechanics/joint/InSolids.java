package org.midlateral.mechanics.joint;

import java.io.IOException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.midlateral.Fingers;
import org.midlateral.measurement.DesignRefused;
import org.midlateral.measurement.Measurements;
import org.midlateral.measurement.NotComputable;
import org.midlateral.mechanics.element.Isotropic;
import org.midlateral.mechanics.held.ContactDeck;
import org.midlateral.mechanics.held.ContactDeck.Bone;
import org.midlateral.mechanics.held.ContactDeck.Cell;
import org.midlateral.mechanics.held.ContactDeck.Tissue;
import org.midlateral.mechanics.held.FingerShell;
import org.midlateral.mechanics.joint.JointAnswer.Resultants;

/**
 * A finger in a trough and a wrap as CalculiX's solids in contact have it.
 *
 * @param angle of the joint (degrees)
 * @param moment that holds it there (N·mm)
 * @param resultants of trough and wrap on the finger
 * @param peak largest mean pressure on a disc of 1 cm² (MPa)
 */
record InSolids(double angle, double moment, Resultants resultants, double peak) {
  /** Two layers laid with 0.5 N; it stretches as the usual one does. */
  private static final Fastening WRAP = new Fastening(25, 2, 0.5, 2, List.of());

  /** The layer's thickness, as a share of the mean radius. */
  private static final double THICKNESS = 0.2;

  private static final double KILOPASCAL = 30;

  /** The layer's shear modulus over its modulus, where the trough is gripped: incompressible. */
  private static final double SHEAR = 1 / 3.0;

  /** Edges of the solids' triangles, times those usual for the wall. */
  private static final double EDGES = 1.6;

  /** A finger in a trough moulded on it, with linear skin. */
  static HeldFinger finger(Measurements measured, Isotropic plastic)
      throws DesignRefused, NotComputable {
    return HeldFinger.of(
        WornFingers.moulded(measured, plastic),
        WornFingers.evenSkin(Fingers.design().holding(), KILOPASCAL, THICKNESS));
  }

  /** What is found here under the moment that the solids hold. */
  JointAnswer found(HeldFinger finger) throws NotComputable {
    return finger.hold(WRAP, new JointMoment(moment, 0));
  }

  /** Both beside each other, this first. */
  String line(JointAnswer found) {
    return String.format(
        Locale.ROOT,
        "%.2f N·mm at %.3f degrees, here %.3f; over 1 cm² %.2f kPa, here %.2f;"
            + " proximal %.3f N, here %.3f; distal %.3f N, here %.3f",
        moment,
        angle,
        found.angle(),
        1000 * peak,
        1000 * found.squareCentimetre().pressure(),
        resultants.proximal().force(),
        found.resultants().proximal().force(),
        resultants.distal().force(),
        found.resultants().distal().force());
  }

  /**
   * At the angle that a moment leads to here, under the forces of the bands found here.
   *
   * @param columns whether the tissue is independent columns, as it is here; else one skin
   */
  static InSolids of(HeldFinger finger, double moment, boolean columns, Path directory)
      throws DesignRefused, NotComputable, IOException, InterruptedException {
    HeldState held = finger.held(WRAP, new JointMoment(moment, 0));
    ContactDeck deck = deck(finger, held, columns);
    double angle = held.resting().angle();
    Map<Integer, Vector3D> forces = deck.turn(angle, directory);
    Vector3D centre = finger.pieces().centre();
    double holding = 0;
    NetForces net = new NetForces(finger.fitting().worn());
    for (Bone bone : deck.bones()) {
      Vector3D force = forces.get(bone.id());
      net.add(bone.station(), bone.place(), force.negate());
      if (bone.distal()) {
        holding += centre.vectorTo(deck.turned(bone.place(), angle)).cross(force).getY();
      }
    }
    for (int k = 0; k < finger.fitting().strips().size(); k++) {
      TautBand band = finger.fitting().strips().get(k);
      double pull = held.resting().force(finger.pieces().firstStrip() + k);
      net.add(band, pull);
      for (TautBand.BandBend bend : band.bends()) {
        if (bend.piece() < 0 && finger.fitting().worn().distal(band.station())) {
          Vector3D force = bend.pull().multiply(pull);
          holding -= centre.vectorTo(deck.turned(bend.at(), angle)).cross(force).getY();
        }
      }
    }
    return new InSolids(
        Math.toDegrees(angle), holding, net.resultants(), peak(deck.cells(), forces));
  }

  private static ContactDeck deck(HeldFinger finger, HeldState held, boolean columns)
      throws DesignRefused, NotComputable {
    FingerInPieces worn = finger.fitting().worn();
    FingerShell shell =
        FingerShell.of(FingerShell.mesh(worn.pieces().get(0), EDGES), worn.material());
    Vector3D raised = Vector3D.of(0, 0, held.laid().motion()[2]);
    ContactDeck deck =
        new ContactDeck(shell, new Tissue(THICKNESS, 0.001 * KILOPASCAL, columns), raised);
    for (int k = 0; k < finger.fitting().strips().size(); k++) {
      TautBand band = finger.fitting().strips().get(k);
      double pull = held.resting().force(finger.pieces().firstStrip() + k);
      for (TautBand.BandBend bend : band.bends()) {
        if (bend.piece() == 0) {
          deck.pull(band.station(), bend.at(), bend.pull().multiply(pull));
        }
      }
    }
    for (SkinVertex v : SkinVertex.of(shell.trough())) {
      if (!worn.distal(v.station()) && Math.abs(v.angle()) < Math.PI / 4) {
        double radius = worn.skin().circumference(v.station()) / (2 * Math.PI);
        double perArea = SHEAR * 0.001 * KILOPASCAL / (THICKNESS * radius);
        deck.grip(v.vertex(), perArea * v.area());
      }
    }
    return deck;
  }

  /** What a node is held with is shared between the bricks that it belongs to. */
  private static double peak(List<Cell> cells, Map<Integer, Vector3D> forces) {
    Map<Integer, Integer> shared = new HashMap<>();
    cells.forEach(cell -> cell.nodes().forEach(node -> shared.merge(node, 1, Integer::sum)));
    double[] pressed = new double[cells.size()];
    for (int k = 0; k < pressed.length; k++) {
      for (int node : cells.get(k).nodes()) {
        pressed[k] += forces.get(node).dot(cells.get(k).out()) / shared.get(node);
      }
    }
    double radius = Math.sqrt(100 / Math.PI);
    double largest = 0;
    for (Cell middle : cells) {
      double force = 0;
      for (int k = 0; k < pressed.length; k++) {
        double own = Math.sqrt(cells.get(k).area() / Math.PI);
        double within = radius + own - middle.skin().distance(cells.get(k).skin());
        force += Math.max(0, Math.min(1, within / (2 * own))) * pressed[k];
      }
      largest = Math.max(largest, force);
    }
    return largest / 100;
  }
}
