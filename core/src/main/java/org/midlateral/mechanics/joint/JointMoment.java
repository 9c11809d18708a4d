package org.midlateral.mechanics.joint;

import java.util.OptionalDouble;
import org.midlateral.digit.DigitSurface;
import org.midlateral.measurement.HoldingDesign.GaugeReading;
import org.midlateral.measurement.HoldingDesign.JointDesign;
import org.midlateral.measurement.Order;

/**
 * The moment with which the tissue flexes a joint, over the angle to which it has flexed from its
 * extension limit: M(a) = M0 exp(-k a / M0). It falls off as the joint gives way and rises steeply
 * beyond the limit.
 *
 * <p>That the passive moment of a finger joint is exponential near the ends of its range is common
 * to all published fits (Knutson and others, J. Biomech. 33 (2000) 1675-1681; from memory).
 *
 * @param atLimit M0 (N·mm), at least 0
 * @param slope k at the limit (N·mm/rad), at least 0; 0 for a moment that never falls
 */
public record JointMoment(double atLimit, double slope) {
  /** Moment of a joint of the usual size that has regained its extension (N·mm); from memory. */
  private static final double USUAL = 20;

  /** The usual circumference of a PIP joint (mm). */
  private static final double USUAL_SIZE = 60;

  /** Angle over which the moment falls by a factor e, where no slope is stated (rad). */
  private static final double SPAN = Math.toRadians(13);

  private static final int MOST_STEPS = 50;

  public JointMoment {
    if (!(atLimit >= 0) || !(slope >= 0)) {
      throw new IllegalArgumentException(
          "a joint's moment and slope must not be negative: " + atLimit + ", " + slope);
    }
  }

  /**
   * That of the finger of an order, whatever is made for it.
   *
   * @param digit its skin
   */
  public static JointMoment of(Order order, DigitSurface digit) {
    JointDesign joint = order.design().holding().joint();
    OptionalDouble stated = order.design().support().moment();
    boolean read = joint.gauge().force().isPresent() && joint.gauge().distance().isPresent();
    return of(
        joint.moment().isEmpty() && !read && stated.isPresent()
            ? joint.withMoment(stated.getAsDouble())
            : joint,
        digit.circumference(digit.pipAxis()),
        order.measurements().pipExtensionDeficit());
  }

  /**
   * That of a finger: as stated, else as the gauge tells, else by its size. Tissue of one strength
   * pulls with the cube of the size.
   *
   * @param circumference of the PIP joint (mm)
   * @param deficit flexion at the extension limit (rad)
   */
  static JointMoment of(JointDesign design, double circumference, double deficit) {
    GaugeReading gauge = design.gauge();
    if (design.moment().isEmpty() && gauge.force().isPresent() && gauge.distance().isPresent()) {
      double read = gauge.force().getAsDouble() * gauge.distance().getAsDouble();
      return read(read, gauge.angle().orElse(deficit) - deficit, perRadian(design));
    }
    double size = circumference / USUAL_SIZE;
    double atLimit = design.moment().orElse(USUAL * size * size * size);
    return new JointMoment(atLimit, perRadian(design).orElse(atLimit / SPAN));
  }

  private static OptionalDouble perRadian(JointDesign design) {
    return design.slope().isEmpty()
        ? design.slope()
        : OptionalDouble.of(Math.toDegrees(design.slope().getAsDouble()));
  }

  /**
   * From one reading of a gauge.
   *
   * @param moment what was read: force times distance from the axis (N·mm)
   * @param flexed angle from the extension limit at which it was read (rad)
   * @param slope at the limit (N·mm/rad); empty for the usual span
   */
  public static JointMoment read(double moment, double flexed, OptionalDouble slope) {
    if (slope.isEmpty()) {
      double atLimit = moment * Math.exp(flexed / SPAN);
      return new JointMoment(atLimit, atLimit / SPAN);
    }
    double steep = slope.getAsDouble() * flexed;
    double atLimit = moment;
    // M0 log(M0 / read) = slope times angle: Newton's method on a convex function, from its right.
    for (int k = 0; k < MOST_STEPS; k++) {
      double log = Math.log(atLimit / moment);
      double step = (atLimit * log - steep) / (log + 1);
      atLimit -= step;
      if (Math.abs(step) <= 1e-13 * atLimit) {
        break;
      }
    }
    return new JointMoment(atLimit, slope.getAsDouble());
  }

  /** The moment at an angle (N·mm). */
  public double at(double angle) {
    return atLimit == 0 ? 0 : atLimit * Math.exp(-slope * angle / atLimit);
  }

  /** By how much the moment falls per angle (N·mm/rad). */
  double fall(double angle) {
    return atLimit == 0 ? 0 : slope * Math.exp(-slope * angle / atLimit);
  }

  /** What is left of the tissue's energy at an angle, less that at the limit (N·mm). */
  double energy(double angle) {
    if (atLimit == 0) {
      return 0;
    }
    double steep = slope / atLimit;
    return steep == 0 ? -atLimit * angle : atLimit * Math.expm1(-steep * angle) / steep;
  }

  /** The same joint pulling more or less strongly, with the same course over the angle. */
  public JointMoment times(double factor) {
    return new JointMoment(factor * atLimit, factor * slope);
  }
}
