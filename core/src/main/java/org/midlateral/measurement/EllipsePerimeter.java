package org.midlateral.measurement;

import org.hipparchus.special.elliptic.legendre.LegendreEllipticIntegral;

/** Perimeter of an ellipse: 4 a E(m) with m = 1 - b²/a², a the longer half-axis (DLMF 19.30). */
public final class EllipsePerimeter {

  private EllipsePerimeter() {}

  /**
   * The perimeter.
   *
   * @param p one half-axis (mm)
   * @param q the other (mm)
   * @return perimeter (mm)
   */
  public static double of(double p, double q) {
    double a = Math.max(p, q);
    double ratio = Math.min(p, q) / a;
    return 4 * a * LegendreEllipticIntegral.bigE(1 - ratio * ratio);
  }
}
