package org.midlateral.mechanics.closure;

/** Laplace's law for a band wound round a cylinder. */
public final class Laplace {
  /** 1 kPa in millimetres of mercury. */
  public static final double MMHG_PER_KPA = 7.50062;

  private static final double KPA_PER_MPA = 1000;

  private Laplace() {}

  /**
   * Pressure under a wound band, p = n T / (w r).
   *
   * @param layers n of the band
   * @param tension T it is laid with (N)
   * @param width w of the band (mm)
   * @param girth it is laid round (mm); r is girth / 2π
   * @return pressure (kPa)
   */
  public static double pressure(double layers, double tension, double width, double girth) {
    return KPA_PER_MPA * layers * tension * 2 * Math.PI / (width * girth);
  }
}
