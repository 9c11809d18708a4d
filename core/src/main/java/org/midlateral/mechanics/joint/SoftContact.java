package org.midlateral.mechanics.joint;

import java.util.List;

/**
 * Soft layers one on another under a small area: a spring that only pushes.
 *
 * @param layers skin, and a liner where there is one; all under the same pressure
 * @param area mm²
 */
record SoftContact(List<SoftLayer> layers, double area) implements SpringLaw {
  /**
   * Beyond this strain of the whole the force goes on straight, so that no trial step overflows.
   */
  private static final double STRAIGHT = 0.7;

  private static final int MOST_STEPS = 60;

  @Override
  public SpringAnswer at(double closing) {
    if (!(closing > 0)) {
      return SpringAnswer.NONE;
    }
    double thickness = 0;
    for (SoftLayer layer : layers) {
      thickness += layer.thickness();
    }
    double curved = Math.min(closing, STRAIGHT * thickness);
    double p = pressure(curved);
    double give = 0;
    double complement = 0;
    for (SoftLayer layer : layers) {
      give += layer.give(p);
      complement += layer.complement(p);
    }
    double straight = closing - curved;
    return new SpringAnswer(
        area * (p * curved - complement + straight * (p + straight / (2 * give))),
        area * (p + straight / give),
        area / give);
  }

  /** Newton's method on the squeeze over the pressure, which is concave. */
  private double pressure(double closing) {
    if (layers.size() == 1) {
      return layers.get(0).pressure(closing);
    }
    double p = 0;
    for (int k = 0; k < MOST_STEPS; k++) {
      double squeeze = 0;
      double give = 0;
      for (SoftLayer layer : layers) {
        squeeze += layer.squeeze(p);
        give += layer.give(p);
      }
      double step = (closing - squeeze) / give;
      p += step;
      if (Math.abs(step) <= 1e-14 * p) {
        break;
      }
    }
    return p;
  }
}
