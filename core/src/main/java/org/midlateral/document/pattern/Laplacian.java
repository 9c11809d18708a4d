package org.midlateral.document.pattern;

import java.util.Comparator;
import java.util.stream.IntStream;
import org.ejml.data.DMatrixRMaj;
import org.ejml.data.DMatrixSparseCSC;
import org.ejml.data.DMatrixSparseTriplet;
import org.ejml.interfaces.linsol.LinearSolverSparse;
import org.ejml.ops.DConvertMatrixStruct;
import org.ejml.sparse.FillReducing;
import org.ejml.sparse.csc.factory.LinearSolverFactory_DSCC;
import org.midlateral.mesh.TriangleMesh;

/**
 * The cotangent Laplacian of a mesh, factored once, and the places in the plane that balance a
 * pull. One vertex stays at the origin: the pull leaves a shift of the whole free.
 */
final class Laplacian {
  private final int[] row;
  private final LinearSolverSparse<DMatrixSparseCSC, DMatrixRMaj> solver;

  /**
   * Sets it up.
   *
   * @param cotangent of the angle at each corner of each triangle
   * @param along the finger, of each vertex: numbered that way the factor keeps a narrow band
   */
  Laplacian(TriangleMesh mesh, double[] cotangent, MidSurface.Values along) {
    int n = mesh.vertexCount();
    row = new int[n];
    int[] order =
        IntStream.range(0, n)
            .boxed()
            .sorted(Comparator.comparingDouble(along::at))
            .mapToInt(Integer::intValue)
            .toArray();
    for (int i = 0; i < n; i++) {
      row[order[i]] = i;
    }
    solver = LinearSolverFactory_DSCC.cholesky(FillReducing.NONE);
    if (!solver.setA(matrix(mesh, cotangent))) {
      throw new IllegalStateException("a surface of sliver triangles cannot be laid flat");
    }
  }

  private DMatrixSparseCSC matrix(TriangleMesh mesh, double[] cotangent) {
    int n = row.length;
    DMatrixSparseTriplet entries = new DMatrixSparseTriplet(n, n, 4 * cotangent.length);
    for (int t = 0; t < mesh.triangleCount(); t++) {
      for (int c = 0; c < 3; c++) {
        double w = cotangent[3 * t + c];
        int i = row[mesh.corner(t, (c + 1) % 3)];
        int j = row[mesh.corner(t, (c + 2) % 3)];
        entries.addItem(i, i, w);
        entries.addItem(j, j, w);
        entries.addItem(i, j, -w);
        entries.addItem(j, i, -w);
      }
    }
    // A spring to the origin: with a balanced pull it carries nothing, so its stiffness is free.
    entries.addItem(0, 0, 1);
    DMatrixSparseCSC summed = new DMatrixSparseCSC(n, n);
    DConvertMatrixStruct.convert(entries, summed);
    summed.sortIndices(null);
    summed = withoutDuplicates(summed);
    return summed;
  }

  /** Adds up the entries of the same place; the conversion keeps them apart. */
  private static DMatrixSparseCSC withoutDuplicates(DMatrixSparseCSC a) {
    DMatrixSparseCSC sum = new DMatrixSparseCSC(a.numRows, a.numCols, a.nz_length);
    int n = 0;
    for (int col = 0; col < a.numCols; col++) {
      sum.col_idx[col] = n;
      for (int k = a.col_idx[col]; k < a.col_idx[col + 1]; k++) {
        if (n > sum.col_idx[col] && sum.nz_rows[n - 1] == a.nz_rows[k]) {
          sum.nz_values[n - 1] += a.nz_values[k];
        } else {
          sum.nz_rows[n] = a.nz_rows[k];
          sum.nz_values[n++] = a.nz_values[k];
        }
      }
    }
    sum.col_idx[a.numCols] = n;
    sum.nz_length = n;
    sum.indicesSorted = true;
    return sum;
  }

  /**
   * Solves for both coordinates.
   *
   * @param pull right-hand side, x and y in turn, each summing to zero
   * @param place receives the solution, x and y in turn (mm)
   */
  void solve(double[] pull, double[] place) {
    DMatrixRMaj right = new DMatrixRMaj(row.length, 2);
    for (int v = 0; v < row.length; v++) {
      right.data[2 * row[v]] = pull[2 * v];
      right.data[2 * row[v] + 1] = pull[2 * v + 1];
    }
    DMatrixRMaj solution = new DMatrixRMaj(row.length, 2);
    solver.solve(right, solution);
    for (int v = 0; v < row.length; v++) {
      place[2 * v] = solution.data[2 * row[v]];
      place[2 * v + 1] = solution.data[2 * row[v] + 1];
    }
  }
}
