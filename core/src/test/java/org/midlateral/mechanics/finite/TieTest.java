package org.midlateral.mechanics.finite;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.midlateral.mechanics.element.Isotropic;

/** Two flat strips on one another, each meshed in its own way, bonded face to face. */
class TieTest {
  private static final double LENGTH = 30;
  private static final double WIDTH = 8;
  private static final double WALL = 1.5;
  private static final Isotropic MATERIAL = new Isotropic(1000, 0);

  static MappedGrid grid(int along, int across, double height) {
    return MappedGrid.open(
        MappedGrid.even(along, 0, LENGTH),
        MappedGrid.even(across, 0, WIDTH),
        (u, v) -> Vector3D.of(u, v, height));
  }

  /** The lower strip leads. */
  static ShellModel bonded(MappedGrid lower, MappedGrid upper) {
    ShellModel a = lower.shell(WALL, MATERIAL);
    ShellModel b = upper.shell(WALL, MATERIAL);
    int n = a.nodeCount();
    double[] xyz = new double[3 * (n + b.nodeCount())];
    int[] corners = new int[3 * (a.triangleCount() + b.triangleCount())];
    for (int i = 0; i < n + b.nodeCount(); i++) {
      Vector3D place = i < n ? a.node(i) : b.node(i - n);
      System.arraycopy(place.toArray(), 0, xyz, 3 * i, 3);
    }
    for (int k = 0; k < corners.length; k++) {
      int t = k / 3 - a.triangleCount();
      corners[k] = t < 0 ? a.corner(k / 3, k % 3) : n + b.corner(t, k % 3);
    }
    ShellModel loose = UniformShell.of(xyz, corners, WALL, MATERIAL);
    List<Tie> ties = new ArrayList<>();
    for (int i = n; i < loose.nodeCount(); i++) {
      SurfacePoint spot = below(a, loose.node(i));
      ties.add(loose.bond(spot.triangle(), spot.weights(), i));
    }
    return loose.tied(ties);
  }

  private static SurfacePoint below(ShellModel model, Vector3D p) {
    SurfacePoint best = null;
    for (int t = 0; t < model.triangleCount(); t++) {
      Vector3D a = model.node(model.corner(t, 0));
      Vector3D u = a.vectorTo(model.node(model.corner(t, 1)));
      Vector3D v = a.vectorTo(model.node(model.corner(t, 2)));
      Vector3D d = a.vectorTo(p);
      double twice = u.cross(v).getZ();
      double second = d.cross(v).getZ() / twice;
      double third = u.cross(d).getZ() / twice;
      SurfacePoint spot = new SurfacePoint(t, new double[] {1 - second - third, second, third});
      if (best == null || spot.depth() > best.depth()) {
        best = spot;
      }
    }
    return best;
  }

  private static List<Constraint> clamped(MappedGrid lower) {
    int[] nodes = new int[lower.v().length];
    for (int j = 0; j < nodes.length; j++) {
      nodes[j] = lower.node(0, j);
    }
    return new Supports().clamp(nodes).list();
  }

  /** A moment about y at the lower strip's free end, as an even edge moment shares it. */
  private static ShellLoad endMoment(ShellModel model, MappedGrid lower, double moment) {
    ShellLoad load = ShellLoad.none(model);
    int last = lower.v().length - 1;
    for (int j = 0; j <= last; j++) {
      double share = (j == 0 || j == last ? 0.5 : 1) / last;
      Vector3D part = Vector3D.of(0, moment * share, 0);
      load =
          load.plus(
              PlainLoads.atNode(model, lower.node(lower.u().length - 1, j), Vector3D.ZERO, part));
    }
    return load;
  }

  /**
   * E I of a section twice as thick, about the plane between the two: eight times a strip's. At the
   * loaded end, nodes that do not meet share an even stress only nearly evenly; half way along the
   * strip nothing is left of that.
   */
  @Test
  void bondedStripsBendAsOneOfTwiceTheWall() throws MechanismException {
    double coarse = bendingError(grid(15, 4, 0), grid(22, 7, WALL));
    double fine = bendingError(grid(30, 8, 0), grid(44, 14, WALL));
    assertThat(coarse).isLessThan(1e-5);
    assertThat(fine).isLessThan(1e-5);
  }

  /** How far the turn half way along is off, relative. */
  private static double bendingError(MappedGrid lower, MappedGrid upper) throws MechanismException {
    ShellModel model = bonded(lower, upper);
    double moment = 40;
    ShellResult result =
        ShellSolver.of(model, clamped(lower)).solve(endMoment(model, lower, moment));
    assertThat(result.halfWork()).isCloseTo(result.strainEnergy(), within(1e-9));
    double rigidity = MATERIAL.modulus() * WIDTH * Math.pow(2 * WALL, 3) / 12;
    int middle = lower.node(lower.u().length / 2, lower.v().length / 2);
    double turn = moment * lower.u()[lower.u().length / 2] / rigidity;
    return Math.abs(result.rotation(middle).getY() / turn - 1);
  }

  @Test
  void aLoadOnAFollowerIsCarriedByItsLeaders() throws MechanismException {
    MappedGrid lower = grid(10, 3, 0);
    MappedGrid upper = grid(13, 5, WALL);
    ShellModel model = bonded(lower, upper);
    int node = model.nodeCount() - 1;
    ShellLoad load =
        PlainLoads.atNode(model, node, Vector3D.of(0.4, -0.2, 1), Vector3D.of(1, 2, -0.5));
    ShellResult result = ShellSolver.of(model, clamped(lower)).solve(load);
    double[] sum = new double[3];
    for (Constraint c : clamped(lower)) {
      if (c.freedom().ordinal() < 3) {
        sum[c.freedom().ordinal()] += result.reaction(c);
      }
    }
    assertThat(sum[0]).isCloseTo(-0.4, within(1e-9));
    assertThat(sum[1]).isCloseTo(0.2, within(1e-9));
    assertThat(sum[2]).isCloseTo(-1, within(1e-9));
    double work =
        load.force(node).dot(result.displacement(node))
            + load.moment(node).dot(result.rotation(node));
    assertThat(work / 2).isCloseTo(result.strainEnergy(), within(1e-9 * result.strainEnergy()));
  }

  @Test
  void aFollowerCanNeitherLeadNorBeHeld() {
    MappedGrid lower = grid(4, 2, 0);
    ShellModel model = bonded(lower, grid(4, 2, WALL));
    int follower = model.nodeCount() - 1;
    assertThatThrownBy(
            () ->
                ShellSolver.of(model, List.of(Constraint.fixed(follower, DegreeOfFreedom.ALONG_X))))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("tied");
    int last = model.triangleCount() - 1;
    Tie toFollower = model.bond(last, new double[] {1, 0, 0}, 0);
    assertThatThrownBy(() -> model.tied(List.of(toFollower)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("leads and follows");
  }
}
