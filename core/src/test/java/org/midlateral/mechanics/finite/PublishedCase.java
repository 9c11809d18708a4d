package org.midlateral.mechanics.finite;

import java.util.stream.IntStream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.midlateral.mechanics.element.Isotropic;

/**
 * Published shell problems, each solved on a mesh of a given fineness and given as computed over
 * published displacement.
 *
 * @param name as in the table
 * @param source of the published value, and whether it was seen there
 * @param published the displacement
 * @param meshes finenesses of the table, rising; the last one is held to 2 %
 * @param computed the displacement on a mesh
 */
record PublishedCase(
    String name, String source, double published, int[] meshes, Computed computed) {

  /** A displacement computed on a mesh. */
  interface Computed {
    double on(int fineness) throws MechanismException;
  }

  private static final Vector3D DOWN = Vector3D.of(0, 0, -1);
  private static final double QUARTER_TURN = Math.PI / 2;

  static PublishedCase[] all() {
    return new PublishedCase[] {
      new PublishedCase(
          "Scordelis-Lo roof, quarter, N by N",
          "converged value of shear flexible isogeometric shells, p 3 to 5 (FinEtoolsFlexStructures, read there);"
              + " 0.3024 is the deep shell value of the same source",
          0.300592456,
          new int[] {4, 8, 16, 32},
          PublishedCase::roof),
      new PublishedCase(
          "pinched cylinder with diaphragms, octant, N by N",
          "FinEtoolsFlexStructures, read there",
          1.8248e-5,
          new int[] {8, 16, 32, 64},
          PublishedCase::cylinder),
      new PublishedCase(
          "pinched hemisphere with a hole, quarter, N by N",
          "FinEtoolsFlexStructures, read there",
          0.0924,
          new int[] {8, 16, 32, 64},
          PublishedCase::hemisphere),
      new PublishedCase(
          "twisted beam, 6N by N, load across the tip's wall",
          "MacNeal and Harder 1985, as in FinEtoolsFlexStructures, read there",
          1.754e-3,
          new int[] {2, 4, 8},
          n -> twisted(n, 0.32, Vector3D.of(0, 1, 0))),
      new PublishedCase(
          "twisted beam, 6N by N, load in the tip's plane",
          "MacNeal and Harder 1985, as in FinEtoolsFlexStructures, read there",
          5.424e-3,
          new int[] {2, 4, 8},
          n -> twisted(n, 0.32, Vector3D.of(0, 0, 1))),
      new PublishedCase(
          "twisted beam a hundredth as thick, 6N by N, load across the tip's wall",
          "MacNeal and Harder 1985, as in FinEtoolsFlexStructures, read there",
          1.294e-3,
          new int[] {8, 16, 32},
          n -> 1e-6 * twisted(n, 0.0032, Vector3D.of(0, 1, 0))),
      new PublishedCase(
          "twisted beam a hundredth as thick, 6N by N, load in the tip's plane",
          "MacNeal and Harder 1985, as in FinEtoolsFlexStructures, read there",
          5.256e-3,
          new int[] {8, 16, 32},
          n -> 1e-6 * twisted(n, 0.0032, Vector3D.of(0, 0, 1))),
      new PublishedCase(
          "Cook's membrane, N by N",
          "23.96 in finer references; from memory (23.91 read in older ones)",
          23.96,
          new int[] {4, 8, 16, 32},
          PublishedCase::cook),
      new PublishedCase(
          "curved beam, load in its plane, 6N by N",
          "MacNeal and Harder 1985; from memory",
          0.08734,
          new int[] {1, 2, 4, 8, 16},
          n -> arch(n, Vector3D.of(1, 0, 0))),
      new PublishedCase(
          "curved beam, load across its plane, 6N by N",
          "MacNeal and Harder 1985; from memory",
          0.5022,
          new int[] {1, 2, 4, 8, 16},
          n -> arch(n, Vector3D.of(0, 0, 1))),
      new PublishedCase(
          "simply supported square plate, even load, quarter, N by N",
          "Timoshenko and Woinowsky-Krieger, 0.00406 q a^4 / D; from memory",
          0.00406,
          new int[] {4, 8, 16},
          n -> plate(n, false)),
      new PublishedCase(
          "clamped square plate, even load, quarter, N by N",
          "Timoshenko and Woinowsky-Krieger, 0.00126 q a^4 / D; from memory",
          0.00126,
          new int[] {4, 8, 16},
          n -> plate(n, true)),
    };
  }

  /** Computed over published displacement on each mesh of the table. */
  double[] ratios() throws MechanismException {
    double[] ratios = new double[meshes.length];
    for (int i = 0; i < meshes.length; i++) {
      ratios[i] = computed.on(meshes[i]) / published;
    }
    return ratios;
  }

  private static int[] allTriangles(ShellModel model) {
    return IntStream.range(0, model.triangleCount()).toArray();
  }

  private static double totalArea(ShellModel model) {
    return IntStream.range(0, model.triangleCount()).mapToDouble(model::area).sum();
  }

  private static double roof(int n) throws MechanismException {
    double half = Math.toRadians(40);
    MappedGrid grid =
        MappedGrid.open(
            MappedGrid.even(n, 0, 25),
            MappedGrid.even(n, 0, half),
            (x, a) -> Vector3D.of(x, 25 * Math.sin(a), 25 * Math.cos(a)));
    ShellModel model = grid.shell(0.25, new Isotropic(4.32e8, 0));
    ShellLoad weight =
        PlainLoads.onTriangles(model, allTriangles(model), 0, DOWN.multiply(90 * totalArea(model)));
    Supports supports =
        new Supports().diaphragm(grid.lineU(0)).mirror(grid.lineU(25), 0).mirror(grid.lineV(0), 1);
    ShellResult result = ShellSolver.of(model, supports.list()).solve(weight);
    return -result.displacement(grid.nodeAt(25, half)).getZ();
  }

  private static double cylinder(int n) throws MechanismException {
    MappedGrid grid =
        MappedGrid.open(
            MappedGrid.even(n, 0, 300),
            MappedGrid.even(n, 0, QUARTER_TURN),
            (x, a) -> Vector3D.of(x, 300 * Math.sin(a), 300 * Math.cos(a)));
    ShellModel model = grid.shell(3, new Isotropic(3e6, 0.3));
    int pinched = grid.nodeAt(300, 0);
    ShellLoad load = PlainLoads.atNode(model, pinched, DOWN.multiply(0.25), Vector3D.ZERO);
    Supports supports =
        new Supports()
            .diaphragm(grid.lineU(0))
            .mirror(grid.lineU(300), 0)
            .mirror(grid.lineV(0), 1)
            .mirror(grid.lineV(QUARTER_TURN), 2);
    return -ShellSolver.of(model, supports.list()).solve(load).displacement(pinched).getZ();
  }

  private static double hemisphere(int n) throws MechanismException {
    MappedGrid grid =
        MappedGrid.open(
            MappedGrid.even(n, Math.toRadians(18), QUARTER_TURN),
            MappedGrid.even(n, 0, QUARTER_TURN),
            (a, b) ->
                Vector3D.of(Math.sin(a) * Math.cos(b), Math.sin(a) * Math.sin(b), Math.cos(a))
                    .multiply(10));
    ShellModel model = grid.shell(0.04, new Isotropic(6.825e7, 0.3));
    int pulled = grid.nodeAt(QUARTER_TURN, 0);
    int pushed = grid.nodeAt(QUARTER_TURN, QUARTER_TURN);
    ShellLoad load =
        PlainLoads.atNode(model, pulled, Vector3D.of(1, 0, 0), Vector3D.ZERO)
            .plus(PlainLoads.atNode(model, pushed, Vector3D.of(0, -1, 0), Vector3D.ZERO));
    Supports supports =
        new Supports()
            .mirror(grid.lineV(0), 1)
            .mirror(grid.lineV(QUARTER_TURN), 0)
            .hold(new int[] {pulled}, DegreeOfFreedom.ALONG_Z);
    return ShellSolver.of(model, supports.list()).solve(load).displacement(pulled).getX();
  }

  private static double twisted(int n, double wall, Vector3D force) throws MechanismException {
    MappedGrid grid =
        MappedGrid.open(
            MappedGrid.even(6 * n, 0, 12),
            MappedGrid.even(n, -0.55, 0.55),
            (x, s) -> {
              double turn = QUARTER_TURN * x / 12;
              return Vector3D.of(x, s * Math.cos(turn), s * Math.sin(turn));
            });
    ShellModel model = grid.shell(wall, new Isotropic(29e6, 0.22));
    int tip = grid.nodeAt(12, 0);
    int[] edge = new int[2 * n];
    for (int j = 0; j < n; j++) {
      edge[2 * j] = grid.node(6 * n, j);
      edge[2 * j + 1] = grid.node(6 * n, j + 1);
    }
    ShellLoad load = PlainLoads.onEdges(model, edge, force);
    ShellResult result =
        ShellSolver.of(model, new Supports().clamp(grid.lineU(0)).list()).solve(load);
    return result.displacement(tip).dot(force.normalize()) / force.norm();
  }

  private static double cook(int n) throws MechanismException {
    MappedGrid grid =
        MappedGrid.open(
            MappedGrid.even(n, 0, 1),
            MappedGrid.even(n, 0, 1),
            (a, b) -> Vector3D.of(48 * a, 44 * a + b * (44 - 28 * a), 0));
    ShellModel model = grid.shell(1, new Isotropic(1, 1 / 3.0));
    int[] edge = new int[2 * n];
    for (int j = 0; j < n; j++) {
      edge[2 * j] = grid.node(n, j);
      edge[2 * j + 1] = grid.node(n, j + 1);
    }
    ShellLoad load = PlainLoads.onEdges(model, edge, Vector3D.of(0, 1, 0));
    ShellResult result =
        ShellSolver.of(model, new Supports().clamp(grid.lineU(0)).list()).solve(load);
    return result.displacement(grid.nodeAt(1, 0.5)).getY();
  }

  private static double arch(int n, Vector3D force) throws MechanismException {
    MappedGrid grid =
        MappedGrid.open(
            MappedGrid.even(6 * n, 0, QUARTER_TURN),
            MappedGrid.even(n, 4.12, 4.32),
            (a, r) -> Vector3D.of(r * Math.sin(a), r * Math.cos(a), 0));
    ShellModel model = grid.shell(0.1, new Isotropic(1e7, 0.25));
    int[] edge = new int[2 * n];
    for (int j = 0; j < n; j++) {
      edge[2 * j] = grid.node(6 * n, j);
      edge[2 * j + 1] = grid.node(6 * n, j + 1);
    }
    ShellLoad load = PlainLoads.onEdges(model, edge, force);
    ShellResult result =
        ShellSolver.of(model, new Supports().clamp(grid.lineU(0)).list()).solve(load);
    return result.displacement(grid.node(6 * n, n)).dot(force);
  }

  /** Side 2, so that the quarter has side 1; in units of q a^4 / D. */
  private static double plate(int n, boolean clamped) throws MechanismException {
    double wall = 0.01;
    double modulus = 1e9;
    double rigidity = modulus * wall * wall * wall / 12 / (1 - 0.09);
    MappedGrid grid =
        MappedGrid.open(
            MappedGrid.even(n, 0, 1), MappedGrid.even(n, 0, 1), (x, y) -> Vector3D.of(x, y, 0));
    ShellModel model = grid.shell(wall, new Isotropic(modulus, 0.3));
    Supports supports = new Supports().mirror(grid.lineU(0), 0).mirror(grid.lineV(0), 1);
    for (int[] side : new int[][] {grid.lineU(1), grid.lineV(1)}) {
      supports.hold(side, DegreeOfFreedom.ALONG_Z);
      if (clamped) {
        supports.clamp(side);
      }
    }
    ShellLoad load = PlainLoads.onTriangles(model, allTriangles(model), 0, DOWN);
    ShellResult result = ShellSolver.of(model, supports.list()).solve(load);
    return -result.displacement(grid.nodeAt(0, 0)).getZ() * rigidity / 16;
  }
}
