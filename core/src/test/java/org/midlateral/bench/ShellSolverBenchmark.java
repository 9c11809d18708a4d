package org.midlateral.bench;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.midlateral.mechanics.element.Isotropic;
import org.midlateral.mechanics.finite.Constraint;
import org.midlateral.mechanics.finite.MechanismException;
import org.midlateral.mechanics.finite.PlainLoads;
import org.midlateral.mechanics.finite.RigidMotion;
import org.midlateral.mechanics.finite.ShellLoad;
import org.midlateral.mechanics.finite.ShellModel;
import org.midlateral.mechanics.finite.ShellSolver;
import org.midlateral.mechanics.finite.UniformShell;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** A trough of half a tube, 75 mm long: equations, factor and one answer, all in one. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 3)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class ShellSolverBenchmark {
  private static final double RADIUS = 9;
  private static final double LENGTH = 75;

  /** Six a node. */
  @Param({"10000", "60000"})
  public int unknowns;

  /** Half of a tube, or nearly the whole round. */
  @Param({"180", "350"})
  public double degrees;

  private ShellModel model;
  private ShellLoad load;
  private List<Constraint> held;

  /** Lays rows of points, every other one shifted by half a step: near-equilateral triangles. */
  @Setup
  public void layMesh() {
    double width = RADIUS * Math.toRadians(degrees);
    double edge = Math.sqrt(width * LENGTH / (unknowns / 6.0) * 2 / Math.sqrt(3));
    int across = (int) Math.round(width / edge) + 1;
    int along = (int) Math.round(unknowns / 6.0 / across);
    double[] xyz = new double[3 * across * along];
    for (int i = 0, at = 0; i < along; i++) {
      for (int j = 0; j < across; j++) {
        double shift = j == 0 || j == across - 1 ? 0 : (i % 2 - 0.5) / 2;
        double angle = Math.toRadians(degrees) * ((j + shift) / (across - 1) - 0.5);
        xyz[at++] = LENGTH * i / (along - 1);
        xyz[at++] = -RADIUS * Math.sin(angle);
        xyz[at++] = -RADIUS * Math.cos(angle);
      }
    }
    int[] corners = new int[6 * (across - 1) * (along - 1)];
    for (int i = 0, at = 0; i + 1 < along; i++) {
      for (int j = 0; j + 1 < across; j++) {
        int a = i * across + j;
        int b = a + across;
        int[] cell =
            i % 2 == 0
                ? new int[] {a, b, a + 1, a + 1, b, b + 1}
                : new int[] {a, b, b + 1, a, b + 1, a + 1};
        System.arraycopy(cell, 0, corners, at, 6);
        at += 6;
      }
    }
    model = UniformShell.of(xyz, corners, 1.6, new Isotropic(400, 0.4));
    int last = model.nodeCount() - 1;
    load =
        PlainLoads.atNode(model, 0, Vector3D.of(1, 0, 0), Vector3D.ZERO)
            .plus(PlainLoads.atNode(model, last, Vector3D.of(-1, 0, 0), Vector3D.ZERO));
    held = RigidMotion.held(model);
  }

  @Benchmark
  public Vector3D solve() throws MechanismException {
    return ShellSolver.of(model, held).solve(load).displacement(model.nodeCount() / 2);
  }
}
