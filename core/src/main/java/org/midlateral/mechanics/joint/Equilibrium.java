package org.midlateral.mechanics.joint;

import java.util.Arrays;
import java.util.Optional;
import org.midlateral.mechanics.algebra.CholeskyFactor;
import org.midlateral.mechanics.algebra.GroupedRows;
import org.midlateral.mechanics.joint.Coupling.Flexed;
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

  /**
   * A stiffness under this share of the largest is lost in the rounding of both, and so is the
   * force in its direction: divided by less than this, it would be a step of its own.
   */
  private static final double ROUNDING = 1e-10;

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
  private final GroupedRows rows;

  /** The largest in each column. */
  private final double[] reach;

  private double angle;
  private Flexed joint;
  private double[] moved;
  private double[] closings;
  private SpringAnswer[] answers;
  private double energy;

  private Equilibrium(HeldSystem system, Resting start, boolean free) {
    this.system = system;
    this.free = free;
    n = system.size();
    motions = system.motions();
    moves = system.moves();
    rows = system.rows();
    reach = rows.largest();
    angle = start.angle();
    joint = Flexed.by(angle);
    moved = new double[moves];
    System.arraycopy(start.motion(), 0, moved, 0, motions);
    double[] shape = start.shape();
    System.arraycopy(shape, 0, moved, motions, Math.min(shape.length, moves - motions));
    closings = closings(joint, moved);
    answers = answers(closings);
    energy = energy(angle, moved, answers);
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
    CholeskyFactor equations = null;
    while (miss > TOLERANCE && steps < MOST_STEPS) {
      boolean fresh = equations == null;
      if (fresh) {
        Optional<CholeskyFactor> factored = equations(slope.length);
        if (factored.isEmpty()) {
          break;
        }
        equations = factored.get();
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

  private double[] closings(Flexed atAngle, double[] at) {
    double[] all = rows.times(at);
    for (int e = 0; e < n; e++) {
      Coupling c = system.couplings().get(e);
      all[e] = c.finger(atAngle) - c.gap() - all[e];
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
    double[] weights = new double[n];
    double turn = -system.pull(angle);
    for (int e = 0; e < n; e++) {
      double f = answers[e].force();
      weights[e] = -f;
      turn += f * system.couplings().get(e).fingerRate(joint);
    }
    double[] slope = Arrays.copyOf(rows.weighted(weights), moves + (free ? 1 : 0));
    for (int k = motions; k < moves; k++) {
      slope[k] += moved[k];
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
      arm = Math.max(arm, Math.abs(f * system.couplings().get(e).fingerRate(joint)));
    }
    double off = free ? Math.abs(slope[moves]) / arm : 0;
    for (int k = 0; k < moves; k++) {
      off = Math.max(off, Math.abs(slope[k]) / (largest * Math.max(1, reach[k])));
    }
    return off;
  }

  /** The equations of Newton's step, factored; empty where no stiffness makes them definite. */
  private Optional<CholeskyFactor> equations(int unknowns) {
    double[] stiffness = new double[n];
    double[] turning = new double[n];
    double bend = system.fall(angle);
    double tissue = 0;
    for (int e = 0; e < n; e++) {
      stiffness[e] = Math.max(0, answers[e].stiffness());
      if (free) {
        Coupling c = system.couplings().get(e);
        double rate = c.fingerRate(joint);
        bend += c.fingerBend(joint) * answers[e].force();
        turning[e] = -stiffness[e] * rate;
        tissue += stiffness[e] * rate * rate;
      }
    }
    double[][] matrix = new double[unknowns][unknowns];
    rows.addSquares(stiffness, matrix);
    if (free) {
      double[] last = rows.weighted(turning);
      for (int k = 0; k < moves; k++) {
        matrix[k][moves] = last[k];
      }
    }
    double hold = Math.max(HOLD, ROUNDING * largest(matrix));
    for (int k = 0; k < moves; k++) {
      matrix[k][k] += k < motions ? hold : 1;
    }
    if (free) {
      matrix[moves][moves] = tissue + Math.max(bend, HOLD - tissue / 2);
    }
    return factored(matrix);
  }

  /** The largest number on the diagonal: of what only stiffnesses add up to, the largest of all. */
  private static double largest(double[][] matrix) {
    double largest = 0;
    for (int k = 0; k < matrix.length; k++) {
      largest = Math.max(largest, matrix[k][k]);
    }
    return largest;
  }

  /** Where rounding leaves them indefinite, with ever more of the largest stiffness added. */
  private static Optional<CholeskyFactor> factored(double[][] matrix) {
    double most = largest(matrix);
    Optional<CholeskyFactor> factor = Optional.empty();
    for (double share = 0; factor.isEmpty() && share <= 1; share = Math.max(1e-14, 100 * share)) {
      double[][] held = new double[matrix.length][];
      for (int k = 0; k < held.length; k++) {
        held[k] = matrix[k].clone();
        held[k][k] += share * most;
      }
      factor = CholeskyFactor.of(held);
    }
    return factor;
  }

  private static double[] step(CholeskyFactor equations, double[] slope) {
    double[] lack = new double[slope.length];
    for (int k = 0; k < slope.length; k++) {
      lack[k] = -slope[k];
    }
    return equations.solve(lack);
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
      Flexed tryJoint = Flexed.by(tryAngle);
      double[] tryClosings = closings(tryJoint, tryMoved);
      SpringAnswer[] tryAnswers = answers(tryClosings);
      double tryEnergy = energy(tryAngle, tryMoved, tryAnswers);
      // Close to the least the energy's own rounding is larger than what it falls by.
      double rounding = 1e-13 * Math.abs(energy);
      if (tryEnergy <= energy + ARMIJO * share * falls + rounding) {
        angle = tryAngle;
        joint = tryJoint;
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
