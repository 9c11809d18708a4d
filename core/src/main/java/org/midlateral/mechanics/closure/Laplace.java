package org.midlateral.mechanics.closure;

/** Laplace's law for a band wound round a cylinder. */
public final class Laplace {
  /** 1 MPa in millimetres of mercury. */
  public static final double MMHG_PER_MPA = 7500.62;

  /** 1 MPa in kilopascals. */
  public static final double KPA_PER_MPA = 1000;

  private Laplace() {}

  /**
   * Pressure under a wound band, p = n T / (w r).
   *
   * @param layers n of the band
   * @param tension T it is laid with (N)
   * @param width w of the band (mm)
   * @param girth it is laid round (mm); r is girth / 2π
   * @return pressure (MPa)
   */
  public static double pressure(double layers, double tension, double width, double girth) {
    return layers * tension * 2 * Math.PI / (width * girth);
  }
}
