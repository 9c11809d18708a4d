package org.midlateral.mechanics.joint;

/** A spring whose force never falls as it is closed, so that its energy is convex. */
interface SpringLaw {
  /**
   * What it answers to a closing.
   *
   * @param closing mm
   */
  SpringAnswer at(double closing);

  /**
   * An answer.
   *
   * @param energy stored (N·mm)
   * @param force its derivative by the closing (N)
   * @param stiffness its second derivative (N/mm); at a kink that of either side
   */
  record SpringAnswer(double energy, double force, double stiffness) {
    static final SpringAnswer NONE = new SpringAnswer(0, 0, 0);
  }

  /** A spring that pulls as it pushes. */
  static SpringLaw linear(double stiffness) {
    return x -> new SpringAnswer(stiffness * x * x / 2, stiffness * x, stiffness);
  }

  /** A spring that only pushes. */
  static SpringLaw stop(double stiffness) {
    SpringLaw linear = linear(stiffness);
    return x -> x > 0 ? linear.at(x) : SpringAnswer.NONE;
  }

  /** One force, whatever the closing (N). */
  static SpringLaw constant(double force) {
    return x -> new SpringAnswer(force * x, force, 0);
  }
}
