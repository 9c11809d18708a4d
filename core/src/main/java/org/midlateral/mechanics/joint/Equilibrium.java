package org.midlateral.mechanics.joint;

import java.util.Arrays;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.LinearSolverFactory_DDRM;
import org.ejml.interfaces.linsol.LinearSolverDense;
import org.midlateral.mechanics.joint.SpringLaw.SpringAnswer;

/**
 * Finds where a joint rests in its pieces: the least of the energy of joint, springs and plastic.
 *
 * <p>Unknowns are the pieces' rigid motions, the amounts of the shapes that the plastic bends into,
 * and the joint's angle. Newton's method, in which only the springs that touch have a stiffness,
 * and a search along each step; the energy is convex but for the finger's turning, and continuous
 * in its slopes, so that it ends at the least from anywhere.
 */
final class Equilibrium {
  private static final int MOST_STEPS = 200;

  /** Forces balance to this share of the largest. */
  private static final double TOLERANCE = 1e-9;

  /** A smaller force (N) is none: a closure that is laid without pull leaves nothing to balance. */
  private static final double NO_FORCE = 1e-6;

  /** A pull so weak (N/mm) that no force shows it, for motions that nothing resists. */
  private static final double HOLD = 1e-9;

  /** No place is moved farther in one step (mm), a rotation counted at the usual arm. */
  private static final double LONGEST = 2;

  /** A step is given up where so small a share of it lowers no energy. */
  private static final double SHORTEST = 1e-12;

  private static final double ARMIJO = 1e-4;

  /** A step's equations serve for the next as well while each leaves so little out of balance. */
  private static final double QUICK = 0.1;

  private final HeldSystem system;
  private final boolean free;
  private final int n;

  /** Rigid motions first, then shapes; the angle, where it is free, would be the next. */
  private final int motions;

  private final int moves;

  /** What each of the moves does at each coupling; a row for each coupling. */
  private final double[][] rows;

  /** The largest in each column. */
  private final double[] reach;

  private double angle;
  private double[] moved;
  private double[] closings;
  private SpringAnswer[] answers;
  private double energy;

  private Equilibrium(HeldSystem system, Resting start, boolean free) {
    this.system = system;
    this.free = free;
    n = system.size();
    motions = system.motions();
    moves = motions + system.shapes();
    rows = rows(system, moves);
    reach = new double[moves];
    for (double[] row : rows) {
      for (int k = 0; k < moves; k++) {
        reach[k] = Math.max(reach[k], Math.abs(row[k]));
      }
    }
    angle = start.angle();
    moved = new double[moves];
    System.arraycopy(start.motion(), 0, moved, 0, motions);
    double[] shape = start.shape();
    System.arraycopy(shape, 0, moved, motions, Math.min(shape.length, moves - motions));
    closings = closings(angle, moved);
    answers = answers(closings);
    energy = energy(angle, moved, answers);
  }

  private static double[][] rows(HeldSystem system, int moves) {
    if (system.shapes() == 0) {
      return system.rigid();
    }
    int motions = system.motions();
    double[][] rows = new double[system.size()][moves];
    for (int e = 0; e < rows.length; e++) {
      System.arraycopy(system.rigid()[e], 0, rows[e], 0, motions);
      System.arraycopy(system.bending()[e], 0, rows[e], motions, moves - motions);
    }
    return rows;
  }

  /**
   * The least of the energy.
   *
   * @param start where to look from
   */
  static Resting of(HeldSystem system, Resting start) {
    return new Equilibrium(system, start, true).run();
  }

  /** The same with the joint held at the angle of the start, by a hand. */
  static Resting heldAt(HeldSystem system, Resting start) {
    return new Equilibrium(system, start, false).run();
  }

  private Resting run() {
    int steps = 0;
    double[] slope = slope();
    double miss = miss(slope);
    LinearSolverDense<DMatrixRMaj> equations = null;
    while (miss > TOLERANCE && steps < MOST_STEPS) {
      boolean fresh = equations == null;
      if (fresh) {
        equations = equations(slope.length);
      }
      boolean taken = take(step(equations, slope), slope);
      steps++;
      slope = slope();
      double before = miss;
      miss = miss(slope);
      if (fresh && !taken) {
        break;
      }
      if (miss > QUICK * before) {
        equations = null;
      }
    }
    double[] motion = new double[motions];
    double[] shape = new double[moves - motions];
    System.arraycopy(moved, 0, motion, 0, motions);
    System.arraycopy(moved, motions, shape, 0, shape.length);
    return new Resting(angle, motion, shape, closings, answers, bent(moved), steps, miss);
  }

  private double[] closings(double atAngle, double[] at) {
    double[] all = new double[n];
    for (int e = 0; e < n; e++) {
      Coupling c = system.couplings().get(e);
      double[] row = rows[e];
      double x = c.finger(atAngle) - c.gap();
      for (int k = 0; k < moves; k++) {
        x -= row[k] * at[k];
      }
      all[e] = x;
    }
    return all;
  }

  private SpringAnswer[] answers(double[] at) {
    SpringAnswer[] all = new SpringAnswer[n];
    for (int e = 0; e < n; e++) {
      all[e] = system.couplings().get(e).law().at(at[e]);
    }
    return all;
  }

  private double bent(double[] at) {
    double stored = 0;
    for (int k = motions; k < moves; k++) {
      stored += at[k] * at[k] / 2;
    }
    return stored;
  }

  private double energy(double atAngle, double[] at, SpringAnswer[] all) {
    double sum = system.energy(atAngle) + bent(at);
    for (SpringAnswer one : all) {
      sum += one.energy();
    }
    return sum;
  }

  /** The energy's slope by each move, and last by the angle where it is free. */
  private double[] slope() {
    double[] slope = new double[moves + (free ? 1 : 0)];
    System.arraycopy(moved, motions, slope, motions, moves - motions);
    double turn = -system.pull(angle);
    for (int e = 0; e < n; e++) {
      double f = answers[e].force();
      if (f != 0) {
        double[] row = rows[e];
        for (int k = 0; k < moves; k++) {
          slope[k] -= f * row[k];
        }
        turn += f * system.couplings().get(e).fingerRate(angle);
      }
    }
    if (free) {
      slope[moves] = turn;
    }
    return slope;
  }

  /** The largest force out of balance, as a share of the largest force. */
  private double miss(double[] slope) {
    double largest = NO_FORCE;
    double arm = Math.max(NO_FORCE, Math.abs(system.pull(angle)));
    for (int e = 0; e < n; e++) {
      double f = answers[e].force();
      largest = Math.max(largest, Math.abs(f));
      arm = Math.max(arm, Math.abs(f * system.couplings().get(e).fingerRate(angle)));
    }
    double off = free ? Math.abs(slope[moves]) / arm : 0;
    for (int k = 0; k < moves; k++) {
      off = Math.max(off, Math.abs(slope[k]) / (largest * Math.max(1, reach[k])));
    }
    return off;
  }

  /** The equations of Newton's step, factored. */
  private LinearSolverDense<DMatrixRMaj> equations(int unknowns) {
    double[][] touching = new double[n][];
    // Three more, so that the last four are whole.
    double[] stiffness = new double[n + 3];
    int count = 0;
    double bend = system.fall(angle);
    DMatrixRMaj matrix = new DMatrixRMaj(unknowns, unknowns);
    for (int e = 0; e < n; e++) {
      Coupling c = system.couplings().get(e);
      double stiff = answers[e].stiffness();
      if (free) {
        bend += c.fingerBend(angle) * answers[e].force();
      }
      if (stiff > 0) {
        touching[count] = rows[e];
        stiffness[count++] = stiff;
        if (free) {
          addTurning(matrix.data, moves * unknowns, rows[e], stiff, c.fingerRate(angle));
        }
      }
    }
    addSquares(matrix.data, unknowns, touching, stiffness, count, moves);
    for (int k = 0; k < unknowns; k++) {
      for (int l = k + 1; l < unknowns; l++) {
        matrix.set(k, l, matrix.get(l, k));
      }
    }
    for (int k = 0; k < moves; k++) {
      matrix.add(k, k, k < motions ? HOLD : 1);
    }
    if (free) {
      double tissue = matrix.get(moves, moves);
      matrix.set(moves, moves, tissue + Math.max(bend, HOLD - tissue / 2));
    }
    return factored(matrix);
  }

  /** Adds what one spring has to do with the joint's turning: the last row. */
  private static void addTurning(
      double[] h, int last, double[] row, double stiffness, double rate) {
    double s = -stiffness * rate;
    for (int l = 0; l < row.length; l++) {
      h[last + l] += s * row[l];
    }
    h[last + row.length] += stiffness * rate * rate;
  }

  /** Adds the springs' own squares to the lower triangle, four at a time, to two rows at once. */
  private static void addSquares(
      double[] h, int width, double[][] springs, double[] stiffness, int count, int moves) {
    double[] none = new double[moves];
    for (int e = 0; e < count; e += 4) {
      double[] a = springs[e];
      double[] b = e + 1 < count ? springs[e + 1] : none;
      double[] c = e + 2 < count ? springs[e + 2] : none;
      double[] d = e + 3 < count ? springs[e + 3] : none;
      double[] w = Arrays.copyOfRange(stiffness, e, e + 4);
      // Of an odd number of rows the first, of one number, has no partner.
      int k = moves % 2;
      if (k == 1) {
        h[0] += w[0] * a[0] * a[0] + w[1] * b[0] * b[0] + w[2] * c[0] * c[0] + w[3] * d[0] * d[0];
      }
      for (; k < moves; k += 2) {
        addToPair(h, width, a, b, c, d, w, k);
      }
    }
  }

  /** Adds to row k and the next, which is longer by one. */
  private static void addToPair(
      double[] h, int width, double[] a, double[] b, double[] c, double[] d, double[] w, int k) {
    int first = k * width;
    int second = first + width;
    double s = w[0] * a[k];
    double t = w[1] * b[k];
    double u = w[2] * c[k];
    double v = w[3] * d[k];
    double s2 = w[0] * a[k + 1];
    double t2 = w[1] * b[k + 1];
    double u2 = w[2] * c[k + 1];
    double v2 = w[3] * d[k + 1];
    for (int l = 0; l <= k; l++) {
      double al = a[l];
      double bl = b[l];
      double cl = c[l];
      double dl = d[l];
      h[first + l] += s * al + t * bl + u * cl + v * dl;
      h[second + l] += s2 * al + t2 * bl + u2 * cl + v2 * dl;
    }
    h[second + k + 1] += s2 * a[k + 1] + t2 * b[k + 1] + u2 * c[k + 1] + v2 * d[k + 1];
  }

  private static LinearSolverDense<DMatrixRMaj> factored(DMatrixRMaj matrix) {
    int unknowns = matrix.numRows;
    LinearSolverDense<DMatrixRMaj> solver = LinearSolverFactory_DDRM.chol(unknowns);
    double most = 0;
    for (int k = 0; k < unknowns; k++) {
      most = Math.max(most, matrix.get(k, k));
    }
    for (double more = 0; ; more = more == 0 ? 1e-14 * most : 100 * more) {
      DMatrixRMaj held = matrix.copy();
      for (int k = 0; k < unknowns; k++) {
        held.add(k, k, more);
      }
      if (solver.setA(held)) {
        return solver;
      }
    }
  }

  private static double[] step(LinearSolverDense<DMatrixRMaj> equations, double[] slope) {
    DMatrixRMaj lack = new DMatrixRMaj(slope.length, 1);
    for (int k = 0; k < slope.length; k++) {
      lack.set(k, 0, -slope[k]);
    }
    DMatrixRMaj found = new DMatrixRMaj(slope.length, 1);
    equations.solve(lack, found);
    return found.data;
  }

  /** Goes along a step as far as the energy falls; gives whether it went at all. */
  private boolean take(double[] step, double[] slope) {
    double falls = 0;
    double longest = free ? Math.abs(step[moves]) * PressedPieces.ARM : 0;
    for (int k = 0; k < step.length; k++) {
      falls += slope[k] * step[k];
      longest = k < motions ? Math.max(longest, Math.abs(step[k])) : longest;
    }
    double first = Math.min(1, LONGEST / longest);
    for (double share = first; share > SHORTEST * first; share /= 2) {
      double tryAngle = angle + (free ? share * step[moves] : 0);
      double[] tryMoved = moved.clone();
      for (int k = 0; k < moves; k++) {
        tryMoved[k] += share * step[k];
      }
      double[] tryClosings = closings(tryAngle, tryMoved);
      SpringAnswer[] tryAnswers = answers(tryClosings);
      double tryEnergy = energy(tryAngle, tryMoved, tryAnswers);
      // Close to the least the energy's own rounding is larger than what it falls by.
      double rounding = 1e-13 * Math.abs(energy);
      if (tryEnergy <= energy + ARMIJO * share * falls + rounding) {
        angle = tryAngle;
        moved = tryMoved;
        closings = tryClosings;
        answers = tryAnswers;
        energy = tryEnergy;
        return true;
      }
    }
    return false;
  }
}
