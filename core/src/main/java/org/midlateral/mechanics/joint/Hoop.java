package org.midlateral.mechanics.joint;

import java.util.List;

/**
 * One strip of a band laid once round finger and pieces, as a spring: it answers to what moves the
 * places it lies on apart. Where it lies on skin it squeezes it, evenly, with p = n T / (w r).
 *
 * @param bands layers of the band times the share of its width that this strip is
 * @param tension T of one whole band, as it was laid (N)
 * @param stiffness of one whole band (N/mm); 0 for one that never pulls harder
 * @param reference length beyond that on the finger untouched at which it has this tension (mm)
 * @param curving by how much faster its length grows, per length (1/mm): the straight parts turn as
 *     the finger rises out of the trough
 * @param skin what lies under it; empty where it lies on plastic alone
 * @param arc angle over which it lies on skin (rad)
 * @param area of skin under it (mm²)
 */
record Hoop(
    double bands,
    double tension,
    double stiffness,
    double reference,
    double curving,
    List<SoftLayer> skin,
    double arc,
    double area)
    implements SpringLaw {
  private static final int MOST_STEPS = 60;

  /** Its length beyond that on the finger untouched, the skin not yet squeezed (mm). */
  private double length(double x) {
    return x > 0 ? x + curving * x * x / 2 : x;
  }

  /** The reference of a band that is laid where the places it lies on have moved apart so far. */
  double laid(double x) {
    return length(x) - arc * squeeze(tension);
  }

  /** Pull of one whole band (N). */
  double tension(double x) {
    return pull(length(x));
  }

  /** Pressure on the skin under it (MPa). */
  double pressure(double x) {
    return skin.isEmpty() ? 0 : pressureUnder(tension(x));
  }

  /** How far the skin under it is squeezed (mm). */
  double squeezed(double x) {
    return squeeze(tension(x));
  }

  private double pressureUnder(double pull) {
    return bands * pull * arc / area;
  }

  private double squeeze(double pull) {
    double sum = 0;
    for (SoftLayer layer : skin) {
      sum += layer.squeeze(pressureUnder(pull));
    }
    return sum;
  }

  private double give(double pull) {
    double sum = 0;
    for (SoftLayer layer : skin) {
      sum += layer.give(pressureUnder(pull));
    }
    return skin.isEmpty() ? 0 : sum * bands * arc / area;
  }

  /** Newton's method from no pull at all, on a concave function. */
  private double pull(double length) {
    if (stiffness == 0) {
      return tension;
    }
    double taut = tension + stiffness * (length - reference);
    if (!(taut > 0)) {
      return 0;
    }
    double pull = 0;
    for (int k = 0; k < MOST_STEPS; k++) {
      double miss = taut - pull - stiffness * arc * squeeze(pull);
      double step = miss / (1 + stiffness * arc * give(pull));
      pull += step;
      if (Math.abs(step) <= 1e-14 * pull) {
        break;
      }
    }
    return pull;
  }

  @Override
  public SpringAnswer at(double x) {
    double length = length(x);
    double rate = x > 0 ? 1 + curving * x : 1;
    double bend = x > 0 ? curving : 0;
    double pull = pull(length);
    if (pull == 0) {
      return SpringAnswer.NONE;
    }
    double harder = stiffness == 0 ? 0 : stiffness / (1 + stiffness * arc * give(pull));
    double energy =
        stiffness == 0
            ? bands * tension * (length - reference)
            : bands * pull * pull / (2 * stiffness) + skinEnergy(pull);
    return new SpringAnswer(
        energy, bands * pull * rate, bands * (harder * rate * rate + pull * bend));
  }

  private double skinEnergy(double pull) {
    if (skin.isEmpty()) {
      return 0;
    }
    double p = pressureUnder(pull);
    double sum = 0;
    for (SoftLayer layer : skin) {
      sum += p * layer.squeeze(p) - layer.complement(p);
    }
    return area * sum;
  }

  /** The same strip with another pull and stiffness, laid elsewhere. */
  Hoop with(double otherTension, double otherStiffness, double otherReference) {
    return new Hoop(bands, otherTension, otherStiffness, otherReference, curving, skin, arc, area);
  }
}
