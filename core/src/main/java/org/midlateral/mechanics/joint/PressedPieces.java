package org.midlateral.mechanics.joint;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.midlateral.mechanics.algebra.GroupedRows;
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

  /** No node: what is not factored has none. */
  private static final int NOWHERE = -1;

  private final Fitting fitting;
  private final Vector3D centre;
  private final List<FactoredShell> bodies;
  private final List<LoadSet> loads = new ArrayList<>();
  private final List<NearestNode> nearest = new ArrayList<>();
  private final double[][] rigid;
  private final double[][] bending;
  private final GroupedRows rows;
  private final GroupedRows rigidRows;
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
    centre = worn.centre();
    for (FactoredShell body : bodies) {
      loads.add(new LoadSet(body.shell().model(), size()));
    }
    rigid = new double[size()][MOTIONS * bodyCount()];
    gripped = gripped(fitting);
    for (int piece = 0; piece < fitting.solids().size(); piece++) {
      int first = firstNode(piece);
      ShellModel model = bodies.get(body(piece)).shell().model();
      nearest.add(new NearestNode(model, first, first + nodes(piece)));
    }
    press();
    bending = shapes(left);
    rows = rows(bending);
    rigidRows = rows(new double[size()][0]);
  }

  /**
   * Pieces that are not factored: they bend as others do that are.
   *
   * @param before pieces that were factored
   */
  private PressedPieces(Fitting fitting, PressedPieces before) {
    this.fitting = fitting;
    bodies = List.of();
    centre = fitting.worn().centre();
    rigid = new double[size()][MOTIONS * bodyCount()];
    gripped = gripped(fitting);
    press();
    bending = new Carried(before, before.fitting, fitting).rows();
    rows = rows(bending);
    rigidRows = rows(new double[size()][0]);
  }

  /** The pieces of another fitting, which are taken to bend as these do. */
  PressedPieces carriedTo(Fitting other) {
    return new PressedPieces(other, this);
  }

  private static List<SkinPatch> gripped(Fitting fitting) {
    return fitting.patches().stream()
        .filter(p -> p.piece() == 0 && !fitting.worn().distal(p.station()))
        .filter(p -> Math.abs(p.angle()) < GRIP)
        .toList();
  }

  /** Number of bodies that move each for itself. */
  int bodyCount() {
    return fitting.worn().apart() ? 2 : 1;
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
    return firstGrip() + 2 * bodyCount();
  }

  /** Where the joint turns (mm). */
  Vector3D centre() {
    return centre;
  }

  /** What each rigid motion of each body does at each coupling, and each shape it bends into. */
  GroupedRows rows() {
    return rows;
  }

  /** The same of pieces that do not give way. */
  GroupedRows rigidRows() {
    return rigidRows;
  }

  /** The same of pieces that give way so many times as far under each force. */
  GroupedRows softerRows(double times) {
    double root = Math.sqrt(times);
    return rows(
        Arrays.stream(bending)
            .map(row -> Arrays.stream(row).map(x -> root * x).toArray())
            .toArray(double[][]::new));
  }

  /** Number of rigid motions. */
  int motions() {
    return MOTIONS * bodyCount();
  }

  /** Most couplings push on one body, and move with that alone. */
  private GroupedRows rows(double[][] shapes) {
    double[][] all = new double[size()][];
    int[] touched = new int[size()];
    for (int e = 0; e < all.length; e++) {
      all[e] = Arrays.copyOf(rigid[e], motions() + shapes[e].length);
      System.arraycopy(shapes[e], 0, all[e], motions(), shapes[e].length);
      for (int k = 0; k < motions(); k++) {
        touched[e] |= rigid[e][k] == 0 ? 0 : 1 << k / MOTIONS;
      }
    }
    return GroupedRows.of(all, touched);
  }

  /** The patches through which the skin grips the trough. */
  List<SkinPatch> gripped() {
    return gripped;
  }

  /** The shells that were factored: one for each body; none of pieces that bend as others do. */
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
    int node = bodies.isEmpty() ? NOWHERE : nearest.get(piece).to(at);
    push(coupling, body(piece), node, at, force);
  }

  private void push(int coupling, int body, int node, Vector3D at, Vector3D force) {
    if (!loads.isEmpty()) {
      loads.get(body).add(coupling, node, at, force);
    }
    double[] row = rigid[coupling];
    double[] push = force.toArray();
    double[] turn = centre.vectorTo(at).cross(force).multiply(1 / ARM).toArray();
    for (int k = 0; k < 3; k++) {
      row[MOTIONS * body + k] += push[k];
      row[MOTIONS * body + 3 + k] += turn[k];
    }
  }

  /**
   * The shapes that each body bends into, one body's after the other's: what pushes on one body
   * moves with its shapes alone.
   *
   * @param left out of the bodies' give at any coupling, as a share of the largest
   */
  private double[][] shapes(double left) {
    List<double[][]> compliances = new ArrayList<>();
    double[] give = new double[size()];
    for (int b = 0; b < bodies.size(); b++) {
      double[][] compliance = bodies.get(b).solver().compliance(loads.get(b));
      for (int e = 0; e < give.length; e++) {
        give[e] += compliance[e][e];
      }
      compliances.add(compliance);
    }
    double least = left / bodies.size() * Arrays.stream(give).max().orElse(0);
    double[][] shapes = new double[size()][0];
    for (double[][] compliance : compliances) {
      double[][] more = BendingModes.of(compliance, least);
      for (int e = 0; e < shapes.length; e++) {
        int before = shapes[e].length;
        shapes[e] = Arrays.copyOf(shapes[e], before + more[e].length);
        System.arraycopy(more[e], 0, shapes[e], before, more[e].length);
      }
    }
    return shapes;
  }

  /**
   * How pieces that were not factored bend: as others much like them do at the same places, the
   * places counted from the PIP axis. A thicker wall gives way less, by the third power, as one
   * that bends; a stiffer material by its modulus.
   *
   * @param before pieces that were factored
   * @param from those on the finger
   * @param to the others on the finger
   */
  private record Carried(PressedPieces before, Fitting from, Fitting to) {
    /** Places farther away do not count (mm), where there are nearer ones. */
    private static final double REACH = 5;

    /** A place so near to another is the same (mm). */
    private static final double SAME = 0.05;

    double[][] rows() {
      List<double[]> rows =
          new ArrayList<>(
              to.patches().stream()
                  .parallel()
                  .map(patch -> patch(patch, from.patches(), 0, give(patch.piece())))
                  .toList());
      double both = Math.sqrt(give(0) * give(to.worn().pieces().size() - 1));
      for (SkinPatch overlap : to.overlaps()) {
        rows.add(patch(overlap, from.overlaps(), before.firstOverlap(), both));
      }
      for (TautBand strip : to.strips()) {
        rows.add(strip(strip, give(0)));
      }
      for (int e = before.firstGrip(); e < before.size(); e++) {
        double[] row = new double[shapes()];
        add(row, e, e < before.firstGrip() + 2 ? give(0) : both);
        rows.add(row);
      }
      return rows.toArray(double[][]::new);
    }

    private int shapes() {
      return before.bending[0].length;
    }

    /** By how much more a piece gives way than the one it is like, as a root. */
    private double give(int piece) {
      double wall = from.worn().pieces().get(piece).wall() / to.worn().pieces().get(piece).wall();
      double modulus = from.worn().material().modulus() / to.worn().material().modulus();
      return Math.sqrt(wall * wall * wall * modulus);
    }

    private void add(double[] row, int coupling, double share) {
      double[] other = before.bending[coupling];
      for (int k = 0; k < row.length; k++) {
        row[k] += share * other[k];
      }
    }

    /** The patches about it, the nearer the more; the nearest alone where none is near. */
    private double[] patch(SkinPatch patch, List<SkinPatch> others, int first, double give) {
      double off = from.worn().skin().pipAxis() - to.worn().skin().pipAxis();
      double round = from.worn().skin().circumference(patch.station() + off) / (2 * Math.PI);
      double[] weights = new double[others.size()];
      double sum = 0;
      int nearest = -1;
      double least = Double.POSITIVE_INFINITY;
      for (int k = 0; k < weights.length; k++) {
        SkinPatch other = others.get(k);
        double along = other.station() - patch.station() - off;
        // What is farther along than the nearest, and than what counts, is so on the whole.
        if (other.piece() != patch.piece() || along * along >= Math.max(least, REACH * REACH)) {
          continue;
        }
        double turn = Math.abs(other.angle() - patch.angle());
        double across = round * Math.min(turn, 2 * Math.PI - turn);
        double square = along * along + across * across;
        if (square < least) {
          least = square;
          nearest = k;
        }
        if (square < REACH * REACH) {
          weights[k] = 1 / ((square + SAME * SAME) * (square + SAME * SAME));
          sum += weights[k];
        }
      }
      double[] row = new double[shapes()];
      if (sum == 0) {
        if (nearest >= 0) {
          add(row, first + nearest, give);
        }
        return row;
      }
      for (int k = 0; k < weights.length; k++) {
        if (weights[k] > 0) {
          add(row, first + k, give * weights[k] / sum);
        }
      }
      return row;
    }

    /** Between the two strips that it lies between. */
    private double[] strip(TautBand strip, double give) {
      double off = from.worn().skin().pipAxis() - to.worn().skin().pipAxis();
      double station = strip.station() + off;
      List<TautBand> others = from.strips();
      int after = 0;
      while (after < others.size() && others.get(after).station() < station) {
        after++;
      }
      int low = Math.max(0, Math.min(after - 1, others.size() - 1));
      int high = Math.min(after, others.size() - 1);
      double[] row = new double[shapes()];
      double length = others.get(high).station() - others.get(low).station();
      double share = length > 0 ? (station - others.get(low).station()) / length : 0;
      add(row, before.firstStrip() + low, give * (1 - share));
      add(row, before.firstStrip() + high, give * share);
      return row;
    }
  }
}
