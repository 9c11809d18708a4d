package org.midlateral.viewer.scene;

import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.midlateral.digit.NailPlate;
import org.midlateral.digit.Slice;
import org.midlateral.mesh.TriangleMesh;

/** The nail as it lies on the drawn finger. */
final class Nail {
  private static final int ALONG = 12;
  private static final int ACROSS = 14;
  private static final double LIFT = 0.35;

  private Nail() {}

  static TriangleMesh of(NailPlate plate) {
    double[] xyz = new double[3 * (ALONG + 1) * (ACROSS + 1)];
    for (int i = 0; i <= ALONG; i++) {
      double share = i / (double) ALONG;
      Slice slice = plate.digit().slice(plate.station(share));
      Vector3D centre = plate.digit().centre(slice.station());
      double half = plate.halfWidth(share);
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
