package org.midlateral.mechanics.held;

import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.midlateral.digit.DigitSurface;
import org.midlateral.measurement.NotComputable;
import org.midlateral.mechanics.finite.ShellModel;
import org.midlateral.mechanics.finite.ShellResult;
import org.midlateral.mechanics.finite.ShellSolver;
import org.midlateral.mechanics.finite.StrainField;
import org.midlateral.mechanics.finite.SurfacePoint;
import org.midlateral.mechanics.finite.WallFace;
import org.midlateral.mechanics.held.HeldAnswer.Opening;
import org.midlateral.mechanics.held.HeldAnswer.Strain;
import org.midlateral.solid.Solid;

/** A piece under the load of a held joint, solved. Immutable. */
public final class HeldShell {
  private final FingerShell shell;
  private final HeldJoint joint;
  private final BalancedLoad load;
  private final ShellSolver solver;
  private final ShellResult result;

  /** Made when first asked for; made twice it is the same. */
  private StrainField strains;

  private HeldShell(FactoredShell factored, HeldJoint joint) throws NotComputable {
    this.shell = factored.shell();
    this.joint = joint;
    load = new BalancedLoad(shell, joint);
    solver = factored.solver();
    result = solver.solve(load.load());
  }

  /**
   * Solves.
   *
   * @throws NotComputable where a zone lies off the trough
   */
  public static HeldShell solve(FactoredShell shell, HeldJoint joint) throws NotComputable {
    return new HeldShell(shell, joint);
  }

  /**
   * Factors and solves.
   *
   * @throws NotComputable where a zone lies off the trough, or a piece is not held
   */
  public static HeldShell solve(FingerShell shell, HeldJoint joint) throws NotComputable {
    return new HeldShell(FactoredShell.of(shell), joint);
  }

  /**
   * Whether the load can be put on a shell; not solved.
   *
   * @throws NotComputable where a zone lies off the trough
   */
  public static void tryLoad(FingerShell shell, HeldJoint joint) throws NotComputable {
    new BalancedLoad(shell, joint);
  }

  /** The figures. */
  public HeldAnswer answer() {
    Measures measures = measures();
    return new HeldAnswer(
        solver.unknowns(),
        load.proximal.norm(),
        load.distal.norm(),
        load.closure[0].add(load.closure[1]).norm(),
        measures.deflection,
        measures.lost,
        measures.opening,
        largestStrain(),
        result.largestReactionForce(),
        result.halfWork() / result.strainEnergy() - 1);
  }

  /** What it gives way by, without the strains. */
  public Measures measures() {
    return measures(shell, joint, result::displacement);
  }

  private StrainField strains() {
    StrainField made = strains;
    if (made == null) {
      made = new StrainField(result);
      strains = made;
    }
    return made;
  }

  /** The pieces on the coarse meshes that were computed: the trough, and what closes it. */
  public List<Solid> pieces() {
    return shell.solids();
  }

  /**
   * How far a vertex of one of the {@link #pieces} moves with the wall (mm), relative to where the
   * model is held.
   */
  public Vector3D displacement(int piece, int vertex) {
    ShellLayer layer = shell.layer(piece);
    Vector3D place = layer.solid.mesh().vertex(vertex);
    int own = vertex < 2 * layer.inner ? vertex % layer.inner : layer.nearestOnCrest(place);
    int node = shell.firstNode(piece) + own;
    return result.displacement(node, shell.model().node(node).vectorTo(place));
  }

  /**
   * A point of the trough.
   *
   * @param place where it is (mm)
   * @param moved how far it moves, relative to where the model is held (mm)
   */
  public record Moved(Vector3D place, Vector3D moved) {}

  /** The middle of the trough's wall on the volar midline at a station (mm). */
  public Moved floor(double station) {
    SurfacePoint spot = shell.onTrough(station, 0);
    return new Moved(
        shell.model().at(spot.triangle(), spot.weights()),
        spot.displacement(shell.model(), result::displacement));
  }

  /**
   * The principal strains furthest from zero at every vertex of a piece's printed surface.
   *
   * @param printed the trough, or the dorsal shell of a bonded pair
   * @return one for each vertex of its mesh
   * @throws IllegalArgumentException if the shell has no such piece
   */
  public double[] strainsOn(Solid printed) {
    return new PrintedStrain(shell, strains()).on(printed);
  }

  private Strain largestStrain() {
    StrainField strains = strains();
    int node = 0;
    WallFace side = WallFace.FRONT;
    for (int i = 0; i < shell.model().nodeCount(); i++) {
      for (WallFace s : WallFace.values()) {
        if (Math.abs(strains.at(i, s)) > Math.abs(strains.at(node, side))) {
          node = i;
          side = s;
        }
      }
    }
    double[] place = shell.skinPlace(node);
    return new Strain(
        strains.at(node, side), place[0], place[1], side, node >= shell.layer(0).nodeCount());
  }

  /**
   * How a piece gives way; see {@link HeldAnswer}.
   *
   * @param deflection of the floor at the PIP axis (mm)
   * @param lost extension (degrees)
   * @param opening of the rims (mm)
   */
  public record Measures(double deflection, double lost, Opening opening) {}

  /** The measures of any motion of the shell's nodes. */
  static Measures measures(FingerShell shell, HeldJoint joint, SurfacePoint.Motion motion) {
    return new Measures(
        deflection(shell, joint, motion),
        Math.toDegrees(turn(shell, joint.proximal(), motion) - turn(shell, joint.distal(), motion)),
        new Opening(
            opening(shell, shell.trough().piece().outline().flankStart(), motion),
            opening(shell, joint.axis(), motion),
            opening(shell, shell.trough().piece().outline().flankEnd(), motion)));
  }

  /** Across the centreline at the PIP axis; free of rigid motion. */
  private static double deflection(FingerShell shell, HeldJoint joint, SurfacePoint.Motion motion) {
    DigitSurface digit = shell.digit();
    ShellModel model = shell.model();
    Vector3D along = digit.tangent(joint.axis());
    Vector3D up = digit.dorsal(joint.axis());
    double[] stations = {joint.proximal().middle(), joint.axis(), joint.distal().middle()};
    double[] x = new double[3];
    double[] rise = new double[3];
    for (int k = 0; k < 3; k++) {
      SurfacePoint floor = shell.onTrough(stations[k], 0);
      x[k] = model.at(floor.triangle(), floor.weights()).dot(along);
      rise[k] = floor.displacement(model, motion).dot(up);
    }
    double share = (x[1] - x[0]) / (x[2] - x[0]);
    return rise[1] - (1 - share) * rise[0] - share * rise[2];
  }

  /** How far the floor's chord over a zone turns, its distal end rising (rad). */
  private static double turn(FingerShell shell, HeldJoint.Zone zone, SurfacePoint.Motion motion) {
    ShellModel model = shell.model();
    SurfacePoint from = shell.onTrough(zone.from(), 0);
    SurfacePoint to = shell.onTrough(zone.to(), 0);
    Vector3D chord =
        model.at(from.triangle(), from.weights()).vectorTo(model.at(to.triangle(), to.weights()));
    Vector3D up = chord.cross(Vector3D.Unit.PLUS_Y).normalize();
    Vector3D apart = to.displacement(model, motion).subtract(from.displacement(model, motion));
    return apart.dot(up) / chord.norm();
  }

  private static double opening(FingerShell shell, double station, SurfacePoint.Motion motion) {
    Vector3D[] place = new Vector3D[2];
    Vector3D[] moved = new Vector3D[2];
    for (int side = 0; side < 2; side++) {
      HeldJoint.Zone point = new HeldJoint.Zone(station - 1e-9, station + 1e-9);
      List<RimSegment> parts = RimSegment.of(shell, point, 2 * side - 1);
      RimSegment part = parts.get(0);
      double second = (part.from() + part.to()) / 2;
      ShellModel model = shell.model();
      place[side] =
          model
              .node(part.crestA())
              .multiply(1 - second)
              .add(model.node(part.crestB()).multiply(second));
      moved[side] =
          motion
              .at(part.crestA(), Vector3D.ZERO)
              .multiply(1 - second)
              .add(motion.at(part.crestB(), Vector3D.ZERO).multiply(second));
    }
    return moved[0].vectorTo(moved[1]).dot(place[0].vectorTo(place[1]).normalize());
  }
}
