package org.midlateral.mechanics.finite;

import java.util.Arrays;
import java.util.concurrent.RecursiveTask;
import org.midlateral.mechanics.algebra.DenseCholesky;
import org.midlateral.work.Interruption;

/**
 * The Cholesky factor of a patch: a column for each of its own unknowns, and its halves' factors.
 *
 * <p>Multifrontal: a patch's dense matrix gathers its triangles, or what its halves left over, and
 * hands on what is left when its own unknowns are eliminated (I. S. Duff and J. K. Reid, ACM Trans.
 * Math. Softw. 9 (1983) 302-325). The sums run in a fixed order, so the threads change no digit.
 */
final class FactoredFront {
  private final Front part;
  private final FactoredFront left;
  private final FactoredFront right;
  private final double[][] columns;

  /** What is left over for the patch around this one; dropped once handed on. */
  private double[][] remainder;

  /** A node of its own that can move without strain, or {@link #HELD}. */
  private final int loose;

  private static final int HELD = -1;

  private FactoredFront(
      Front part,
      FactoredFront left,
      FactoredFront right,
      double[][] columns,
      double[][] remainder,
      int loose) {
    this.part = part;
    this.left = left;
    this.right = right;
    this.columns = columns;
    this.remainder = remainder;
    this.loose = loose;
  }

  /**
   * Factors a patch, halves in parallel.
   *
   * @param part the patch
   * @param connections what each triangle touches
   * @param stiffness each triangle's packed lower triangle
   * @param diagonal the assembled diagonal, by freedom
   * @throws MechanismException if a part can move without strain
   */
  static FactoredFront of(
      Front part, Connectivity connections, double[] stiffness, double[] diagonal)
      throws MechanismException {
    FactoredFront whole =
        new Task(part, connections, stiffness, diagonal, Interruption.current()).invoke();
    if (whole.loose != HELD) {
      throw new MechanismException(whole.loose);
    }
    return whole;
  }

  /**
   * Forward substitution.
   *
   * @param x the right hand side by freedom; overwritten
   */
  void forward(double[] x) {
    if (!part.smallest()) {
      left.forward(x);
      right.forward(x);
    }
    double[] local = gather(x);
    for (int j = 0; j < part.own(); j++) {
      double[] column = columns[j];
      double value = local[j] / column[j];
      local[j] = value;
      for (int i = j + 1; i < local.length; i++) {
        local[i] -= value * column[i];
      }
    }
    for (int i = 0; i < local.length; i++) {
      x[part.freedoms()[i]] = local[i];
    }
  }

  /** The patch that was factored. */
  Front part() {
    return part;
  }

  /** The factor of one half; null for a smallest patch. */
  FactoredFront left() {
    return left;
  }

  /** The factor of the other half; null for a smallest patch. */
  FactoredFront right() {
    return right;
  }

  /** A column of the factor, by the patch's freedoms; not to be changed. */
  double[] column(int own) {
    return columns[own];
  }

  /** Back substitution, on what {@link #forward} left. */
  void backward(double[] x) {
    double[] local = gather(x);
    for (int j = part.own() - 1; j >= 0; j--) {
      double[] column = columns[j];
      double sum = local[j];
      for (int i = j + 1; i < local.length; i++) {
        sum -= column[i] * local[i];
      }
      local[j] = sum / column[j];
      x[part.freedoms()[j]] = local[j];
    }
    if (!part.smallest()) {
      left.backward(x);
      right.backward(x);
    }
  }

  private double[] gather(double[] x) {
    double[] local = new double[part.size()];
    for (int i = 0; i < local.length; i++) {
      local[i] = x[part.freedoms()[i]];
    }
    return local;
  }

  /** A patch and everything inside it. */
  private static final class Task extends RecursiveTask<FactoredFront> {
    private static final long serialVersionUID = 1;

    /** A pivot this small beside the stiffness it started from is rounding. */
    private static final double ROUNDING = 1e-13;

    private final transient Front part;
    private final transient Connectivity connections;
    private final transient double[] stiffness;
    private final transient double[] diagonal;
    private final transient Interruption asked;

    Task(
        Front part,
        Connectivity connections,
        double[] stiffness,
        double[] diagonal,
        Interruption asked) {
      this.part = part;
      this.connections = connections;
      this.stiffness = stiffness;
      this.diagonal = diagonal;
      this.asked = asked;
    }

    /** The factor; of a patch that is not held, the one that tells where. */
    @Override
    protected FactoredFront compute() {
      FactoredFront left = null;
      FactoredFront right = null;
      if (!part.smallest()) {
        asked.check();
        Task other = new Task(part.right(), connections, stiffness, diagonal, asked);
        other.fork();
        left = new Task(part.left(), connections, stiffness, diagonal, asked).compute();
        right = other.join();
        if (left.loose != HELD || right.loose != HELD) {
          return left.loose != HELD ? left : right;
        }
      }
      double[][] matrix = new double[part.size()][part.size()];
      if (part.smallest()) {
        addTriangles(matrix);
      } else {
        left.handOn(matrix, part.leftPlaces());
        right.handOn(matrix, part.rightPlaces());
      }
      int loose = eliminate(matrix);
      double[][] columns = Arrays.copyOf(matrix, part.own());
      return new FactoredFront(part, left, right, columns, matrix, loose);
    }

    /** Eliminates its own unknowns; gives a node that is not held, or {@link #HELD}. */
    private int eliminate(double[][] matrix) {
      double[] least = new double[part.own()];
      for (int i = 0; i < least.length; i++) {
        least[i] = ROUNDING * diagonal[part.freedoms()[i]];
      }
      int failed = DenseCholesky.eliminate(matrix, part.own(), least);
      return failed < 0 ? HELD : part.freedoms()[failed] / DegreeOfFreedom.COUNT;
    }

    private void addTriangles(double[][] matrix) {
      int[] places = part.trianglePlaces();
      int first = 0;
      for (int triangle : part.triangles()) {
        int at = connections.offset(triangle);
        int size = connections.freedoms(triangle);
        for (int i = 0; i < size; i++) {
          int row = places[first + i];
          for (int j = 0; j <= i; j++, at++) {
            int column = places[first + j];
            if (row >= 0 && column >= 0) {
              matrix[Math.min(row, column)][Math.max(row, column)] += stiffness[at];
            }
          }
        }
        first += size;
      }
    }
  }

  private void handOn(double[][] matrix, int[] places) {
    int own = part.own();
    for (int j = own; j < remainder.length; j++) {
      double[] column = remainder[j];
      int at = places[j - own];
      for (int i = j; i < column.length; i++) {
        int row = places[i - own];
        matrix[Math.min(row, at)][Math.max(row, at)] += column[i];
      }
    }
    remainder = null;
  }
}
