package org.midlateral.mechanics.element;

import org.midlateral.measurement.Material;

/**
 * A linear elastic material, the same in all directions.
 *
 * @param modulus Young's modulus (MPa), above 0
 * @param poisson Poisson's ratio, above -1 and at most 0.5
 */
public record Isotropic(double modulus, double poisson) {
  public Isotropic {
    if (!(modulus > 0) || Double.isInfinite(modulus)) {
      throw new IllegalArgumentException("modulus must be a number above 0, not " + modulus);
    }
    if (!(poisson > -1 && poisson <= 0.5)) {
      throw new IllegalArgumentException("poisson must lie in (-1, 0.5], not " + poisson);
    }
  }

  /** A plastic of the table. */
  public static Isotropic of(Material material) {
    return new Isotropic(material.modulus(), material.poisson());
  }

  /** The shear modulus (MPa). */
  public double shearModulus() {
    return modulus / (2 * (1 + poisson));
  }
}
