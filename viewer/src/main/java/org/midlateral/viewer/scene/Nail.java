package org.midlateral.viewer.scene;

import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.midlateral.digit.DigitSurface;
import org.midlateral.digit.Slice;
import org.midlateral.measurement.Measurements;
import org.midlateral.mesh.TriangleMesh;

/**
 * The nail, so that nobody asks which end is the tip: over the distal part of the dorsum, as long
 * as half of the distal segment and as wide as a third of the girth there. Its size is drawn from
 * the measurements and is no measurement itself (common practice, no source).
 */
final class Nail {
  private static final int ALONG = 12;
  private static final int ACROSS = 14;
  private static final double LIFT = 0.35;

  /** Its ends, from the DIP crease to the end of the pulp. */
  private static final double BEGINS = 0.4;

  private static final double ENDS = 0.84;

  /** Half of its width over half of the girth. */
  private static final double WIDE = 0.3;

  private Nail() {}

  static TriangleMesh of(Measurements measured, DigitSurface digit) {
    double crease = measured.webToPip() + measured.pipToDip();
    double from = crease + BEGINS * measured.dipToTip();
    double to = Math.min(crease + ENDS * measured.dipToTip(), digit.pulpEnd() - 0.5);
    double[] xyz = new double[3 * (ALONG + 1) * (ACROSS + 1)];
    for (int i = 0; i <= ALONG; i++) {
      double share = i / (double) ALONG;
      Slice slice = digit.slice(from + (to - from) * share);
      Vector3D centre = digit.centre(slice.station());
      // Rounded at both ends.
      double round = Math.sqrt(1 - Math.pow(Math.abs(2 * share - 1), 4) * 0.75);
      double half = WIDE * round * slice.circumference() / 2;
      for (int k = 0; k <= ACROSS; k++) {
        double off = half * (2.0 * k / ACROSS - 1);
        double girth = slice.circumference() / 2 - Math.abs(off);
        Vector3D skin = slice.point(slice.angle(off < 0 ? -girth : girth));
        Vector3D p = skin.add(LIFT, skin.subtract(centre).normalize());
        int at = 3 * (i * (ACROSS + 1) + k);
        xyz[at] = p.getX();
        xyz[at + 1] = p.getY();
        xyz[at + 2] = p.getZ();
      }
    }
    return new TriangleMesh(xyz, corners());
  }

  private static int[] corners() {
    int[] corners = new int[6 * ALONG * ACROSS];
    int n = 0;
    for (int i = 0; i < ALONG; i++) {
      for (int k = 0; k < ACROSS; k++) {
        int a = i * (ACROSS + 1) + k;
        int b = a + ACROSS + 1;
        for (int corner : new int[] {a, b, a + 1, a + 1, b, b + 1}) {
          corners[n++] = corner;
        }
      }
    }
    return corners;
  }
}
