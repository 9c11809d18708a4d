package org.midlateral.mechanics.joint;

/**
 * Skin and what lies under it down to the bone, or a liner: a layer that stiffens as it is
 * squeezed, p = (E/b) (exp(b d/h) - 1).
 *
 * <p>That force rises exponentially with the squeeze of a finger pad: Pawluk and Howe, J. Biomech.
 * Eng. 121 (1999) 605-611.
 *
 * @param modulus E, pressure over strain when hardly squeezed (MPa)
 * @param stiffening b, the modulus grows by a factor e when the strain grows by 1/b; 0 for linear
 * @param thickness h (mm)
 */
public record SoftLayer(double modulus, double stiffening, double thickness) {

  public SoftLayer {
    if (!(modulus > 0) || !(stiffening >= 0) || !(thickness > 0)) {
      throw new IllegalArgumentException(
          "a soft layer needs a modulus and a thickness: "
              + modulus
              + ", "
              + stiffening
              + ", "
              + thickness);
    }
  }

  /** How far it is squeezed under a pressure (mm). */
  double squeeze(double pressure) {
    return stiffening == 0
        ? thickness * pressure / modulus
        : thickness * Math.log1p(stiffening * pressure / modulus) / stiffening;
  }

  /** How much farther per pressure (mm/MPa). */
  double give(double pressure) {
    return thickness / (modulus + stiffening * pressure);
  }

  /** The pressure that squeezes it so far (MPa). */
  double pressure(double squeeze) {
    double strain = squeeze / thickness;
    return stiffening == 0
        ? modulus * strain
        : modulus * Math.expm1(stiffening * strain) / stiffening;
  }

  /** The integral of the squeeze over the pressure, from 0 (MPa·mm). */
  double complement(double pressure) {
    if (stiffening == 0) {
      return thickness * pressure * pressure / (2 * modulus);
    }
    double r = stiffening * pressure / modulus;
    double log = Math.log1p(r);
    // (1 + r) log(1 + r) - r, without cancellation where r is small.
    double rest = r < 1e-4 ? r * r * (0.5 - r / 6) : (1 + r) * log - r;
    return thickness * modulus / (stiffening * stiffening) * rest;
  }

  /** The same layer so many times as stiff. */
  SoftLayer stiffer(double factor) {
    return new SoftLayer(factor * modulus, stiffening, thickness);
  }
}
