package org.midlateral.mechanics.element;

import java.util.Arrays;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.decomposition.TriangularSolver_DDRM;
import org.ejml.dense.row.misc.UnrolledCholesky_DDRM;

/**
 * The parabola z = a + bx + cy + dx²/2 + ey²/2 + fxy nearest to some points by least squares, from
 * the normal equations: the points stand no more than some lengths 1 about the origin, so that
 * squaring costs no figure that counts. To be cleared and filled again.
 */
public final class NearestParabola {
  private static final int TERMS = 6;

  /** Pull of the parabola toward the plane, where there are too few points for it. */
  private static final double PULL = 1e-4;

  private final DMatrixRMaj squares = new DMatrixRMaj(TERMS, TERMS);
  private final DMatrixRMaj factor = new DMatrixRMaj(TERMS, TERMS);
  private final double[] terms = new double[TERMS];
  private final double[] parabola = new double[TERMS];

  /** Forgets all points. */
  public void clear() {
    squares.zero();
    Arrays.fill(parabola, 0);
    for (int k = 3; k < TERMS; k++) {
      squares.data[(TERMS + 1) * k] = PULL * PULL;
    }
  }

  /** Takes up a point. */
  public void add(double x, double y, double z) {
    terms[0] = 1;
    terms[1] = x;
    terms[2] = y;
    terms[3] = x * x / 2;
    terms[4] = y * y / 2;
    terms[5] = x * y;
    for (int i = 0; i < TERMS; i++) {
      for (int j = 0; j <= i; j++) {
        squares.data[TERMS * i + j] += terms[i] * terms[j];
      }
      parabola[i] += terms[i] * z;
    }
  }

  /** Finds the parabola; no where there are not even three points that span a plane. */
  public boolean solve() {
    if (!UnrolledCholesky_DDRM.lower(squares, factor)) {
      return false;
    }
    TriangularSolver_DDRM.solveL(factor.data, parabola, TERMS);
    TriangularSolver_DDRM.solveTranL(factor.data, parabola, TERMS);
    return true;
  }

  /** Second derivative along x. */
  public double xx() {
    return parabola[3];
  }

  /** Second derivative along y. */
  public double yy() {
    return parabola[4];
  }

  /** Mixed second derivative. */
  public double xy() {
    return parabola[5];
  }
}
