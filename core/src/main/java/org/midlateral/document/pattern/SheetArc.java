package org.midlateral.document.pattern;

import org.midlateral.digit.Slice;

/** Lengths round the finger some distance off the skin: in the middle or over a moulded sheet. */
public final class SheetArc {
  private SheetArc() {}

  /**
   * Length of the parallel curve from the volar midline: girth + distance × turn of the normal,
   * which is exact for a convex section.
   *
   * @param slice the skin's section
   * @param girth of the end of the arc, on the skin (mm)
   * @param off distance from the skin (mm)
   * @return length off the skin (mm)
   */
  public static double length(Slice slice, double girth, double off) {
    double[] volar = new double[18];
    double[] end = new double[18];
    slice.jet(0, volar);
    slice.jet(slice.angle(girth), end);
    double x = volar[4] * end[5] - volar[5] * end[4];
    double y = volar[5] * end[3] - volar[3] * end[5];
    double z = volar[3] * end[4] - volar[4] * end[3];
    double along = volar[3] * end[3] + volar[4] * end[4] + volar[5] * end[5];
    double turn = Math.atan2(Math.sqrt(x * x + y * y + z * z), along);
    return girth + Math.signum(girth) * off * turn;
  }

  /** Length once round, off the skin (mm): 2π more for each millimetre. */
  public static double round(double circumference, double off) {
    return circumference + 2 * Math.PI * off;
  }
}
