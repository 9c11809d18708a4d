package org.midlateral.mechanics.finite;

import java.io.IOException;
import java.nio.file.Path;
import java.util.function.DoubleUnaryOperator;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.midlateral.mechanics.element.Isotropic;

/**
 * A trough, or a closed tube, with the load of a held joint: the ends of the floor pressed down,
 * the rims (closed: the roof's inside) pulled up about the joint.
 *
 * <p>On the grid u is the place along the finger (mm) and v the angle from the volar midline
 * (degrees), turning so that the front is outside.
 *
 * @param radius of the mid-surface by place (mm)
 * @param wall thickness (mm)
 * @param length along the finger (mm)
 * @param joint place of the joint's axis (mm)
 * @param halfAngle from the midline to a rim (degrees); 180 closes the tube
 * @param step edge of a cell (mm)
 */
public record Tube(
    DoubleUnaryOperator radius,
    double wall,
    double length,
    double joint,
    double halfAngle,
    double step) {
  static final double ZONE = 8;
  static final double PULL = 12;
  static final double SPREAD = 30;
  static final double TOTAL = 5;

  boolean closed() {
    return halfAngle == 180;
  }

  MappedGrid grid() {
    double a = joint - PULL / 2;
    double b = joint + PULL / 2;
    double[] u = MappedGrid.lines(step, 0, ZONE, a, joint, b, length - ZONE, length);
    double turn = Math.toDegrees(step / radius.applyAsDouble(0));
    double s = SPREAD;
    double h = halfAngle;
    double[] through =
        closed()
            ? new double[] {-180, s - 180, -90, -s, 0, s, 90, 180 - s, 180}
            : new double[] {-h, -s, 0, s, h};
    return new MappedGrid(u, MappedGrid.lines(turn, through), closed(), this::point);
  }

  private Vector3D point(double x, double degrees) {
    double angle = Math.toRadians(degrees);
    double r = radius.applyAsDouble(x);
    return Vector3D.of(x, -r * Math.sin(angle), -r * Math.cos(angle));
  }

  public ShellModel model() {
    return grid().shell(wall, new Isotropic(400, 0.4));
  }

  private double proximalMiddle() {
    return ZONE / 2;
  }

  private double distalMiddle() {
    return length - ZONE / 2;
  }

  private double proximalForce() {
    return TOTAL * (distalMiddle() - joint) / (distalMiddle() - proximalMiddle());
  }

  private int[] proximalFloor() {
    return grid().triangles(0, ZONE, -SPREAD, SPREAD);
  }

  private int[] distalFloor() {
    return grid().triangles(length - ZONE, length, -SPREAD, SPREAD);
  }

  /** The inside of the roof about the joint, both sides of the dorsal midline. */
  private int[] roof() {
    MappedGrid grid = grid();
    double a = joint - PULL / 2;
    double b = joint + PULL / 2;
    return IntStream.concat(
            IntStream.of(grid.triangles(a, b, -180, SPREAD - 180)),
            IntStream.of(grid.triangles(a, b, 180 - SPREAD, 180)))
        .toArray();
  }

  /** The edges of both rims about the joint, pairs of nodes. */
  private int[] rims() {
    MappedGrid grid = grid();
    int from = MappedGrid.line(grid.u(), joint - PULL / 2);
    int to = MappedGrid.line(grid.u(), joint + PULL / 2);
    int[] rims = new int[4 * (to - from)];
    for (int i = from, at = 0; i < to; i++) {
      for (int j : new int[] {0, grid.v().length - 1}) {
        rims[at++] = grid.node(i, j);
        rims[at++] = grid.node(i + 1, j);
      }
    }
    return rims;
  }

  ShellLoad load(ShellModel model) {
    double proximal = proximalForce();
    ShellLoad pull =
        closed()
            ? PlainLoads.onTriangles(model, roof(), WallFace.BACK.height, up(TOTAL))
            : PlainLoads.onEdges(model, rims(), up(TOTAL));
    return pull.plus(
            PlainLoads.onTriangles(model, proximalFloor(), WallFace.BACK.height, up(-proximal)))
        .plus(
            PlainLoads.onTriangles(
                model, distalFloor(), WallFace.BACK.height, up(proximal - TOTAL)));
  }

  private static Vector3D up(double force) {
    return Vector3D.of(0, 0, force);
  }

  public ShellResult solve() throws MechanismException {
    ShellModel model = model();
    return ShellSolver.of(model, RigidMotion.held(model)).solve(load(model));
  }

  /** The displacements of the mid-surface's nodes from quadratic solids. */
  public Vector3D[] solveAsSolid(Path directory) throws IOException, InterruptedException {
    ShellModel model = model();
    SolidDeck deck = new SolidDeck(model, grid()::normal);
    if (closed()) {
      deck.loadBack(roof(), up(TOTAL));
    } else {
      deck.loadRim(rims(), up(TOTAL));
    }
    deck.loadBack(proximalFloor(), up(-proximalForce()));
    deck.loadBack(distalFloor(), up(proximalForce() - TOTAL));
    return deck.solve(directory, RigidMotion.held(model));
  }

  /**
   * What is held against a reference.
   *
   * @param rise of the floor at the joint over the chord through the zones' middles (mm)
   * @param lost slopes of the floor's chords over the two zones, summed (degrees)
   * @param openings change of the distance between the rims (closed: the sides) at the proximal
   *     end, the joint and the distal end (mm)
   */
  public record Measures(double rise, double lost, double[] openings) {}

  public Measures measures(IntFunction<Vector3D> displacement) {
    MappedGrid grid = grid();
    double[] u = grid.u();
    double[] floor = new double[u.length];
    for (int i = 0; i < floor.length; i++) {
      floor[i] = displacement.apply(grid.nodeAt(u[i], 0)).getZ();
    }
    double proximal = at(u, floor, proximalMiddle());
    double distal = at(u, floor, distalMiddle());
    double share = (joint - proximalMiddle()) / (distalMiddle() - proximalMiddle());
    double rise = at(u, floor, joint) - (proximal + share * (distal - proximal));
    double slopes =
        at(u, floor, ZONE) - at(u, floor, 0) - at(u, floor, length) + at(u, floor, length - ZONE);
    double side = closed() ? 90 : halfAngle;
    double[] openings =
        IntStream.range(0, 3)
            .mapToDouble(
                k -> {
                  double x = new double[] {0, joint, length}[k];
                  return displacement.apply(grid.nodeAt(x, -side)).getY()
                      - displacement.apply(grid.nodeAt(x, side)).getY();
                })
            .toArray();
    return new Measures(rise, Math.toDegrees(slopes / ZONE), openings);
  }

  private static double at(double[] x, double[] f, double place) {
    int i = 1;
    while (x[i] < place - 1e-9) {
      i++;
    }
    double s = (place - x[i - 1]) / (x[i] - x[i - 1]);
    return f[i - 1] + s * (f[i] - f[i - 1]);
  }
}
