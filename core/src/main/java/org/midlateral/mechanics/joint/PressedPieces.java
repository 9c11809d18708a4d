package org.midlateral.mechanics.joint;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.midlateral.mechanics.finite.BendingModes;
import org.midlateral.mechanics.finite.LoadSet;
import org.midlateral.mechanics.finite.ShellModel;
import org.midlateral.mechanics.held.FactoredShell;
import org.midlateral.mechanics.held.NearestNode;
import org.midlateral.solid.Solid;

/**
 * The plastic and what the unit force of each coupling does on it.
 *
 * <p>The couplings stand in this order: skin patches, places where two pieces may touch, strips of
 * bands, and what keeps the pieces from sliding along the finger and round it.
 */
final class PressedPieces {
  /** Rigid motions of a body: along x, y and z, and about them. */
  static final int MOTIONS = 6;

  /** Rotations are measured as what they move at this arm (mm). */
  static final double ARM = 20;

  /** The skin grips the trough over its floor, so far to both sides (rad). */
  private static final double GRIP = Math.toRadians(45);

  private final Fitting fitting;
  private final Vector3D centre;
  private final List<FactoredShell> bodies;
  private final List<LoadSet> loads = new ArrayList<>();
  private final List<NearestNode> nearest = new ArrayList<>();
  private final double[][] rigid;
  private final double[][] bending;
  private final List<SkinPatch> gripped;

  /**
   * Condenses the pieces.
   *
   * @param bodies that move each for itself
   * @param left out of the plastic's give at each coupling, as a share of the largest
   */
  PressedPieces(Fitting fitting, List<FactoredShell> bodies, double left) {
    this.fitting = fitting;
    this.bodies = List.copyOf(bodies);
    FingerInPieces worn = fitting.worn();
    centre = worn.skin().centre(worn.skin().pipAxis());
    for (FactoredShell body : bodies) {
      loads.add(new LoadSet(body.shell().model(), size()));
    }
    rigid = new double[size()][MOTIONS * bodies.size()];
    gripped =
        fitting.patches().stream()
            .filter(p -> p.piece() == 0 && !worn.distal(p.station()))
            .filter(p -> Math.abs(p.angle()) < GRIP)
            .toList();
    for (int piece = 0; piece < fitting.solids().size(); piece++) {
      int first = firstNode(piece);
      ShellModel model = bodies.get(body(piece)).shell().model();
      nearest.add(new NearestNode(model, first, first + nodes(piece)));
    }
    press();
    bending = BendingModes.of(compliance(), left);
  }

  int firstOverlap() {
    return fitting.patches().size();
  }

  int firstStrip() {
    return firstOverlap() + fitting.overlaps().size();
  }

  int firstGrip() {
    return firstStrip() + fitting.strips().size();
  }

  /** Number of couplings: two grips for each body. */
  int size() {
    return firstGrip() + 2 * bodies.size();
  }

  /** Where the joint turns (mm). */
  Vector3D centre() {
    return centre;
  }

  /** What each rigid motion of each body does at each coupling. */
  double[][] rigid() {
    return rigid;
  }

  /** What the shapes that the pieces bend into do at each coupling. */
  double[][] bending() {
    return bending;
  }

  /** The patches through which the skin grips the trough. */
  List<SkinPatch> gripped() {
    return gripped;
  }

  /** The shells that were factored: one for each body. */
  List<FactoredShell> bodies() {
    return bodies;
  }

  /** The couplings' unit forces on a body. */
  LoadSet loads(int body) {
    return loads.get(body);
  }

  private int body(int piece) {
    return fitting.worn().apart() ? piece : 0;
  }

  /** Number of a piece's first node in its body. */
  private int firstNode(int piece) {
    return piece == 0 || fitting.worn().apart() ? 0 : nodes(0);
  }

  private int nodes(int piece) {
    Solid solid = fitting.solids().get(piece);
    return solid.innerVertices() + solid.edgeVertices();
  }

  private void press() {
    for (int e = 0; e < firstOverlap(); e++) {
      SkinPatch patch = fitting.patches().get(e);
      for (SkinVertex v : patch.parts()) {
        onInside(e, patch.piece(), v, v.out().multiply(patch.share(v)));
      }
    }
    for (int k = 0; k < fitting.overlaps().size(); k++) {
      SkinPatch patch = fitting.overlaps().get(k);
      for (SkinVertex v : patch.parts()) {
        onBoth(firstOverlap() + k, v, v.out().multiply(patch.share(v)));
      }
    }
    for (int k = 0; k < fitting.strips().size(); k++) {
      for (TautBand.BandBend bend : fitting.strips().get(k).bends()) {
        if (bend.piece() >= 0) {
          onNearest(firstStrip() + k, bend.piece(), bend.at(), bend.pull());
        }
      }
    }
    grip(firstGrip(), gripped, false);
    if (fitting.worn().apart()) {
      grip(firstGrip() + 2, fitting.overlaps(), true);
    }
  }

  /** Along the finger, and round it. */
  private void grip(int coupling, List<SkinPatch> where, boolean between) {
    double all = where.stream().mapToDouble(SkinPatch::area).sum();
    for (SkinPatch patch : where) {
      for (SkinVertex v : patch.parts()) {
        Vector3D along = fitting.worn().skin().tangent(v.station()).multiply(v.area() / all);
        Vector3D round = v.out().cross(along);
        if (between) {
          onBoth(coupling, v, along);
          onBoth(coupling + 1, v, round);
        } else {
          onInside(coupling, 0, v, along);
          onInside(coupling + 1, 0, v, round);
        }
      }
    }
  }

  /** On the dorsal shell, and back on the trough under it. */
  private void onBoth(int coupling, SkinVertex v, Vector3D force) {
    onInside(coupling, 1, v, force);
    onNearest(coupling, 0, v.inside(), force.negate());
  }

  private void onInside(int coupling, int piece, SkinVertex v, Vector3D force) {
    push(coupling, body(piece), firstNode(piece) + v.vertex(), v.inside(), force);
  }

  private void onNearest(int coupling, int piece, Vector3D at, Vector3D force) {
    push(coupling, body(piece), nearest.get(piece).to(at), at, force);
  }

  private void push(int coupling, int body, int node, Vector3D at, Vector3D force) {
    loads.get(body).add(coupling, node, at, force);
    double[] row = rigid[coupling];
    double[] push = force.toArray();
    double[] turn = centre.vectorTo(at).cross(force).multiply(1 / ARM).toArray();
    for (int k = 0; k < 3; k++) {
      row[MOTIONS * body + k] += push[k];
      row[MOTIONS * body + 3 + k] += turn[k];
    }
  }

  /** How far the couplings' places give way under each other's unit force (mm/N). */
  private double[][] compliance() {
    double[][] sum = bodies.get(0).solver().compliance(loads.get(0));
    for (int b = 1; b < bodies.size(); b++) {
      double[][] more = bodies.get(b).solver().compliance(loads.get(b));
      for (int i = 0; i < sum.length; i++) {
        for (int j = 0; j < sum.length; j++) {
          sum[i][j] += more[i][j];
        }
      }
    }
    return sum;
  }
}
