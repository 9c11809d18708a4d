package org.midlateral.mechanics.finite;

import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.ejml.data.DMatrixRMaj;
import org.ejml.data.DMatrixSparseCSC;
import org.ejml.data.DMatrixSparseTriplet;
import org.ejml.interfaces.linsol.LinearSolverSparse;
import org.ejml.ops.DConvertMatrixStruct;
import org.ejml.sparse.FillReducing;
import org.ejml.sparse.csc.CommonOps_DSCC;
import org.ejml.sparse.csc.factory.LinearSolverFactory_DSCC;
import org.midlateral.mechanics.element.Isotropic;
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

/**
 * The same equations by our multifrontal Cholesky factorisation and by EJML's sparse one, its
 * unknowns numbered along the tube since it brings no order that saves fill-in: stiffness, factor
 * and one answer. A trough of half a tube, 75 mm long, radius 9 mm.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 2, time = 2)
@Measurement(iterations = 4, time = 2)
@Fork(1)
public class FactorisationBench {
  private static final double RADIUS = 9;
  private static final double LENGTH = 75;

  /** Six a node. */
  @Param({"3000", "10000", "30000"})
  private int unknowns;

  private ShellModel model;
  private ShellLoad load;
  private List<Constraint> held;

  /** A node pulled along the tube; another is pulled the other way. */
  private int pulled;

  @Setup
  public void layMesh() throws MechanismException {
    double width = RADIUS * Math.PI;
    double edge = Math.sqrt(width * LENGTH / (unknowns / 6.0));
    int across = (int) Math.round(width / edge) + 1;
    int along = (int) Math.round(unknowns / 6.0 / across);
    double[] xyz = new double[3 * across * along];
    int[] corners = new int[6 * (across - 1) * (along - 1)];
    for (int i = 0, at = 0; i < along; i++) {
      for (int j = 0; j < across; j++) {
        double angle = Math.PI * ((double) j / (across - 1) - 0.5);
        xyz[at++] = LENGTH * i / (along - 1);
        xyz[at++] = -RADIUS * Math.sin(angle);
        xyz[at++] = -RADIUS * Math.cos(angle);
      }
    }
    for (int i = 0, at = 0; i + 1 < along; i++) {
      for (int j = 0; j + 1 < across; j++) {
        int a = i * across + j;
        int b = a + across;
        for (int corner : new int[] {a, b, a + 1, a + 1, b, b + 1}) {
          corners[at++] = corner;
        }
      }
    }
    model = UniformShell.of(xyz, corners, 1.6, new Isotropic(400, 0.4));
    held = RigidMotion.held(model);
    pulled = model.nodeCount() / 3;
    load =
        PlainLoads.atNode(model, pulled, Vector3D.of(1, 0, 0), Vector3D.ZERO)
            .plus(PlainLoads.atNode(model, 2 * pulled, Vector3D.of(-1, 0, 0), Vector3D.ZERO));
    double ours = multifrontal();
    double theirs = sparse();
    if (Math.abs(ours - theirs) > 1e-6 * Math.abs(ours)) {
      throw new IllegalStateException(ours + " is not " + theirs);
    }
  }

  /** Displacement of the node that is pulled at, along the tube (mm). */
  @Benchmark
  public double multifrontal() throws MechanismException {
    return ShellSolver.of(model, held).solve(load).displacement(pulled).getX();
  }

  @Benchmark
  public double sparse() {
    int n = DegreeOfFreedom.COUNT * model.nodeCount();
    int[] number = new int[n];
    for (Constraint constraint : held) {
      number[DegreeOfFreedom.COUNT * constraint.node() + constraint.freedom().ordinal()] = -1;
    }
    int free = 0;
    for (int i = 0; i < n; i++) {
      number[i] = number[i] < 0 ? -1 : free++;
    }
    LinearSolverSparse<DMatrixSparseCSC, DMatrixRMaj> solver =
        LinearSolverFactory_DSCC.cholesky(FillReducing.NONE);
    if (!solver.setA(matrix(number, free))) {
      throw new IllegalStateException("the matrix is not positive definite");
    }
    DMatrixRMaj force = new DMatrixRMaj(free, 1);
    int at = number[DegreeOfFreedom.COUNT * pulled];
    force.set(at, 0, 1);
    force.set(number[DegreeOfFreedom.COUNT * 2 * pulled], 0, -1);
    DMatrixRMaj moved = new DMatrixRMaj(free, 1);
    solver.solve(force, moved);
    return moved.get(at, 0);
  }

  private DMatrixSparseCSC matrix(int[] number, int free) {
    MeshCurvature curvature = new MeshCurvature(model);
    DMatrixSparseTriplet triplets =
        new DMatrixSparseTriplet(free, free, 324 * model.triangleCount());
    double[] packed = new double[ShellTriangle.PACKED];
    for (int t = 0; t < model.triangleCount(); t++) {
      Arrays.fill(packed, 0);
      new ShellTriangle(model, curvature, t).stiffness(packed, 0);
      for (int i = 0, at = 0; i < 18; i++) {
        for (int j = 0; j <= i; j++, at++) {
          int row = number[unknown(t, i)];
          int column = number[unknown(t, j)];
          if (row >= 0 && column >= 0) {
            triplets.addItem(row, column, packed[at]);
            if (i != j) {
              triplets.addItem(column, row, packed[at]);
            }
          }
        }
      }
    }
    DMatrixSparseCSC matrix = DConvertMatrixStruct.convert(triplets, (DMatrixSparseCSC) null);
    matrix.sortIndices(null);
    CommonOps_DSCC.duplicatesAdd(matrix, null);
    return matrix;
  }

  private int unknown(int triangle, int i) {
    return DegreeOfFreedom.COUNT * model.corner(triangle, i / 6) + i % 6;
  }
}
