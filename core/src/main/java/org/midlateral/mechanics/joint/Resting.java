package org.midlateral.mechanics.joint;

import org.midlateral.mechanics.joint.SpringLaw.SpringAnswer;

/** Where a joint rests. Immutable. */
final class Resting {
  private final double angle;
  private final double[] motion;
  private final double[] shape;
  private final double[] closings;
  private final SpringAnswer[] answers;
  private final double bent;
  private final int steps;
  private final double miss;

  /**
   * A state.
   *
   * @param angle to which the joint has flexed (rad)
   * @param motion rigid motions of the pieces (mm)
   * @param shape amounts of the shapes that the plastic bends into
   * @param closings of the couplings (mm)
   * @param answers of the couplings to them
   * @param bent energy stored in the plastic (N·mm)
   * @param steps of the search
   * @param miss largest force out of balance, as a share of the largest
   */
  Resting(
      double angle,
      double[] motion,
      double[] shape,
      double[] closings,
      SpringAnswer[] answers,
      double bent,
      int steps,
      double miss) {
    this.angle = angle;
    this.motion = motion.clone();
    this.shape = shape.clone();
    this.closings = closings.clone();
    this.answers = answers.clone();
    this.bent = bent;
    this.steps = steps;
    this.miss = miss;
  }

  /** A place to begin the search from. */
  static Resting start(HeldSystem system, double angle, double[] motion) {
    double[] none = new double[system.size()];
    return new Resting(angle, motion, none, none, new SpringAnswer[0], 0, 0, 0);
  }

  double angle() {
    return angle;
  }

  /** The same place to begin a search from, the joint turned to an angle (rad). */
  Resting turnedTo(double other) {
    return new Resting(other, motion, shape, closings, answers, bent, steps, miss);
  }

  double[] motion() {
    return motion.clone();
  }

  double[] shape() {
    return shape.clone();
  }

  /** How far a coupling is closed (mm). */
  double closing(int coupling) {
    return closings[coupling];
  }

  /** Force of a coupling (N). */
  double force(int coupling) {
    return answers[coupling].force();
  }

  double[] forces() {
    double[] forces = new double[answers.length];
    for (int e = 0; e < forces.length; e++) {
      forces[e] = answers[e].force();
    }
    return forces;
  }

  /** Energy of some couplings (N·mm). */
  double energy(int from, int to) {
    double sum = 0;
    for (int e = from; e < to; e++) {
      sum += answers[e].energy();
    }
    return sum;
  }

  /** Energy stored in the plastic (N·mm). */
  double bent() {
    return bent;
  }

  int steps() {
    return steps;
  }

  double miss() {
    return miss;
  }
}
