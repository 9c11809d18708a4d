package org.midlateral.document.pattern;

import org.apache.commons.geometry.euclidean.threed.Vector3D;
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
    if (girth == 0) {
      return 0;
    }
    Vector3D volar = slice.pointByAngle(0);
    Vector3D end = slice.pointByAngle(slice.angle(girth));
    return girth + Math.signum(girth) * off * volar.angle(end);
  }

  /** Length once round, off the skin (mm): 2π more for each millimetre. */
  public static double round(double circumference, double off) {
    return circumference + 2 * Math.PI * off;
  }
}
