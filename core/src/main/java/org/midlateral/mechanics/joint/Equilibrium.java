package org.midlateral.mechanics.joint;

import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.LinearSolverFactory_DDRM;
import org.ejml.interfaces.linsol.LinearSolverDense;
import org.midlateral.mechanics.joint.SpringLaw.Response;

/**
 * Finds where a joint rests in its pieces: the least of the energy of joint, springs and plastic.
 *
 * <p>Unknowns are the joint's angle, the pieces' rigid motions q, and forces c that shape the
 * plastic, one for each coupling: its places move by C c beyond the rigid motion and store c·C c/2,
 * and in the least c are the springs' own forces. Newton's method with the springs in contact as
 * active set, and a search along each step; the energy is convex but for the finger's turning, and
 * continuous in its slopes, so that it ends at the least from anywhere.
 */
final class Equilibrium {
  private static final int MOST_STEPS = 200;

  /** Forces balance to this share of the largest. */
  private static final double TOLERANCE = 1e-9;

  /** A pull so weak (N/mm) that no force shows it, for motions that nothing resists. */
  private static final double HOLD = 1e-9;

  /** No place is moved farther in one step (mm), a rotation counted at the usual arm. */
  private static final double LONGEST = 2;

  /** A step is given up where so small a share of it lowers no energy. */
  private static final double SHORTEST = 1e-12;

  private static final double ARMIJO = 1e-4;
  private static final double STIFF_ENOUGH = 1e-12;

  private final HeldSystem system;
  private final boolean free;
  private final int n;
  private final int m;

  private double angle;
  private final double[] motion;
  private final double[] forces;

  /** C times the forces. */
  private double[] bent;

  private Response[] answers;
  private double energy;

  /** A step of all unknowns, and what it does to the bent places. */
  private record Step(double angle, double[] motion, double[] forces, double[] bent) {}

  private Equilibrium(HeldSystem system, Resting start, boolean free) {
    this.system = system;
    this.free = free;
    n = system.size();
    m = system.motions();
    angle = start.angle();
    motion = start.motion();
    forces = start.shape();
    bent = bend(forces);
    answers = answers(angle, motion, bent);
    energy = energy(angle, forces, bent, answers);
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
    double miss = miss();
    while (miss > TOLERANCE && steps < MOST_STEPS) {
      Step step = step();
      double taken = take(step);
      steps++;
      miss = miss();
      if (taken == 0) {
        break;
      }
    }
    double stored = 0;
    for (int e = 0; e < n; e++) {
      stored += forces[e] * bent[e] / 2;
    }
    return new Resting(angle, motion, forces, closings(), answers, stored, steps, miss);
  }

  private double[] closings() {
    double[] closings = new double[n];
    for (int e = 0; e < n; e++) {
      closings[e] = closing(e, angle, motion, bent);
    }
    return closings;
  }

  private double closing(int e, double atAngle, double[] q, double[] u) {
    Coupling c = system.couplings().get(e);
    double x = c.finger(atAngle) - c.gap() - u[e];
    double[] row = system.rigid()[e];
    for (int k = 0; k < m; k++) {
      x -= row[k] * q[k];
    }
    return x;
  }

  private Response[] answers(double atAngle, double[] q, double[] u) {
    Response[] all = new Response[n];
    for (int e = 0; e < n; e++) {
      all[e] = system.couplings().get(e).law().at(closing(e, atAngle, q, u));
    }
    return all;
  }

  private double energy(double atAngle, double[] c, double[] u, Response[] all) {
    double sum = system.energy(atAngle);
    for (int e = 0; e < n; e++) {
      sum += all[e].energy();
      sum += system.compliance() == null ? 0 : c[e] * u[e] / 2;
    }
    return sum;
  }

  private double[] bend(double[] c) {
    double[] u = new double[n];
    if (system.compliance() == null) {
      return u;
    }
    for (int e = 0; e < n; e++) {
      if (c[e] != 0) {
        double[] row = system.compliance()[e];
        for (int k = 0; k < n; k++) {
          u[k] += c[e] * row[k];
        }
      }
    }
    return u;
  }

  /** The largest force out of balance, as a share of the largest force. */
  private double miss() {
    double largest = Double.MIN_NORMAL;
    double off = 0;
    double[] unbalanced = new double[m];
    double moment = -system.pull(angle);
    double arm = Math.abs(moment);
    for (int e = 0; e < n; e++) {
      double f = answers[e].force();
      largest = Math.max(largest, Math.abs(f));
      if (system.compliance() != null) {
        off = Math.max(off, Math.abs(f - forces[e]));
      }
      for (int k = 0; k < m; k++) {
        unbalanced[k] += system.rigid()[e][k] * f;
      }
      double turn = f * system.couplings().get(e).fingerRate(angle);
      moment += turn;
      arm = Math.max(arm, Math.abs(turn));
    }
    for (double u : unbalanced) {
      off = Math.max(off, Math.abs(u));
    }
    double turned = free ? Math.abs(moment) / Math.max(arm, Double.MIN_NORMAL) : 0;
    return Math.max(off / largest, turned);
  }

  private Step step() {
    int active = 0;
    int[] at = new int[n];
    for (int e = 0; e < n; e++) {
      if (answers[e].stiffness() > STIFF_ENOUGH) {
        at[active++] = e;
      }
    }
    boolean bends = system.compliance() != null;
    double[] change = new double[n];
    for (int e = 0; e < n; e++) {
      boolean known = answers[e].stiffness() <= STIFF_ENOUGH;
      change[e] = bends && known ? answers[e].force() - forces[e] : 0;
    }
    double[] known = bend(change);
    int unknowns = m + (free ? 1 : 0);
    // Columns: what the active springs lack, and what each motion does at them.
    DMatrixRMaj right = new DMatrixRMaj(active, unknowns + 1);
    for (int i = 0; i < active; i++) {
      int e = at[i];
      double lack = bends ? answers[e].force() - forces[e] : 0;
      right.set(i, 0, lack / answers[e].stiffness() - known[e]);
      for (int k = 0; k < m; k++) {
        right.set(i, k + 1, -system.rigid()[e][k]);
      }
      if (free) {
        right.set(i, m + 1, system.couplings().get(e).fingerRate(angle));
      }
    }
    DMatrixRMaj solved = bends ? solve(at, active, right) : scaled(at, active, right);
    double[] motions = motions(active, right, solved, change);
    for (int i = 0; i < active; i++) {
      double sum = solved.get(i, 0);
      for (int k = 0; k < unknowns; k++) {
        sum += solved.get(i, k + 1) * motions[k];
      }
      change[at[i]] = sum;
    }
    double[] q = new double[m];
    System.arraycopy(motions, 0, q, 0, m);
    double turn = free ? motions[m] : 0;
    return new Step(turn, q, bends ? change : new double[n], bends ? bend(change) : known);
  }

  /** What the active springs and the plastic behind them answer to each column. */
  private DMatrixRMaj solve(int[] at, int active, DMatrixRMaj right) {
    DMatrixRMaj give = new DMatrixRMaj(active, active);
    for (int i = 0; i < active; i++) {
      double[] row = system.compliance()[at[i]];
      for (int j = 0; j < active; j++) {
        give.set(i, j, row[at[j]]);
      }
      give.add(i, i, 1 / answers[at[i]].stiffness());
    }
    DMatrixRMaj solved = new DMatrixRMaj(active, right.numCols);
    if (active > 0) {
      LinearSolverDense<DMatrixRMaj> solver = LinearSolverFactory_DDRM.chol(active);
      if (!solver.setA(give)) {
        throw new IllegalStateException("the pieces' compliance is not positive");
      }
      solver.solve(right, solved);
    }
    return solved;
  }

  private DMatrixRMaj scaled(int[] at, int active, DMatrixRMaj right) {
    DMatrixRMaj solved = right.copy();
    for (int i = 0; i < active; i++) {
      for (int k = 0; k < right.numCols; k++) {
        solved.set(i, k, solved.get(i, k) * answers[at[i]].stiffness());
      }
    }
    return solved;
  }

  /** The motions that bring the pieces and the joint into balance. */
  private double[] motions(int active, DMatrixRMaj right, DMatrixRMaj solved, double[] change) {
    int unknowns = m + (free ? 1 : 0);
    DMatrixRMaj matrix = new DMatrixRMaj(unknowns, unknowns);
    DMatrixRMaj lack = new DMatrixRMaj(unknowns, 1);
    for (int i = 0; i < active; i++) {
      for (int k = 0; k < unknowns; k++) {
        double r = right.get(i, k + 1);
        lack.add(k, 0, -r * solved.get(i, 0));
        for (int l = 0; l < unknowns; l++) {
          matrix.add(k, l, r * solved.get(i, l + 1));
        }
      }
    }
    double bend = system.fall(angle);
    double[] now = system.compliance() == null ? ownForces() : forces;
    for (int e = 0; e < n; e++) {
      double f = now[e] + change[e];
      Coupling c = system.couplings().get(e);
      for (int k = 0; k < m; k++) {
        lack.add(k, 0, system.rigid()[e][k] * f);
      }
      if (free) {
        lack.add(m, 0, -c.fingerRate(angle) * f);
        bend += c.fingerBend(angle) * answers[e].force();
      }
    }
    for (int k = 0; k < m; k++) {
      matrix.add(k, k, HOLD);
    }
    if (free) {
      lack.add(m, 0, system.pull(angle));
      double tissue = matrix.get(m, m);
      matrix.set(m, m, tissue + Math.max(bend, HOLD - tissue / 2));
    }
    return balance(matrix, lack);
  }

  private double[] ownForces() {
    double[] own = new double[n];
    for (int e = 0; e < n; e++) {
      own[e] = answers[e].force();
    }
    return own;
  }

  private static double[] balance(DMatrixRMaj matrix, DMatrixRMaj lack) {
    int unknowns = matrix.numRows;
    if (unknowns == 0) {
      return new double[0];
    }
    DMatrixRMaj found = new DMatrixRMaj(unknowns, 1);
    double most = 0;
    for (int k = 0; k < unknowns; k++) {
      most = Math.max(most, matrix.get(k, k));
    }
    for (double more = 0; ; more = more == 0 ? 1e-14 * most : 100 * more) {
      DMatrixRMaj held = matrix.copy();
      for (int k = 0; k < unknowns; k++) {
        held.add(k, k, more);
      }
      LinearSolverDense<DMatrixRMaj> solver = LinearSolverFactory_DDRM.chol(unknowns);
      if (solver.setA(held)) {
        solver.solve(lack, found);
        return found.data;
      }
    }
  }

  /** Goes along a step as far as the energy falls; gives the share of it that was taken. */
  private double take(Step step) {
    double slope = slope(step);
    double longest = Math.abs(step.angle) * PressedPieces.ARM;
    for (double moved : step.motion) {
      longest = Math.max(longest, Math.abs(moved));
    }
    double first = Math.min(1, LONGEST / longest);
    for (double share = first; share > SHORTEST * first; share /= 2) {
      double tryAngle = angle + share * step.angle;
      double[] tryMotion = sum(motion, step.motion, share);
      double[] tryForces = sum(forces, step.forces, share);
      double[] tryBent = sum(bent, step.bent, share);
      Response[] tryAnswers = answers(tryAngle, tryMotion, tryBent);
      double tryEnergy = energy(tryAngle, tryForces, tryBent, tryAnswers);
      // Close to the least the energy's own rounding is larger than what it falls by.
      double rounding = 1e-13 * Math.abs(energy);
      if (tryEnergy <= energy + ARMIJO * share * slope + rounding) {
        angle = tryAngle;
        System.arraycopy(tryMotion, 0, motion, 0, m);
        System.arraycopy(tryForces, 0, forces, 0, n);
        bent = tryBent;
        answers = tryAnswers;
        energy = tryEnergy;
        return share;
      }
    }
    return 0;
  }

  private double slope(Step step) {
    double turn = -system.pull(angle);
    double slope = 0;
    for (int e = 0; e < n; e++) {
      double f = answers[e].force();
      turn += f * system.couplings().get(e).fingerRate(angle);
      if (system.compliance() != null) {
        slope += step.bent[e] * (forces[e] - f);
      }
      for (int k = 0; k < m; k++) {
        slope -= f * system.rigid()[e][k] * step.motion[k];
      }
    }
    return slope + turn * step.angle;
  }

  private static double[] sum(double[] a, double[] b, double share) {
    double[] sum = new double[a.length];
    for (int i = 0; i < a.length; i++) {
      sum[i] = a[i] + share * b[i];
    }
    return sum;
  }
}
