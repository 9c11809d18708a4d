package org.midlateral.viewer.scene;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.midlateral.digit.DigitSurface;
import org.midlateral.digit.Slice;
import org.midlateral.mesh.TriangleMesh;

/** The finger's skin as a surface to draw, from a little proximal of the palmar crease on. */
final class Skin {
  private static final int AROUND = 72;
  private static final double STEP = 1;
  private static final int PULP_RINGS = 24;

  /** How far the drawn finger goes on proximal of the palmar crease (mm). */
  static final double STUMP = 4;

  private Skin() {}

  /**
   * The skin, closed at both ends.
   *
   * @param digit its surface
   * @param crease station of the palmar crease (mm)
   */
  static TriangleMesh mesh(DigitSurface digit, double crease) {
    List<Double> stations = stations(digit, crease - STUMP);
    int rings = stations.size();
    double[] xyz = new double[3 * (rings * AROUND + 2)];
    for (int r = 0; r < rings; r++) {
      ring(digit.slice(stations.get(r)), xyz, 3 * r * AROUND);
    }
    put(digit.centre(stations.get(0)), xyz, 3 * rings * AROUND);
    put(digit.centre(digit.pulpEnd()), xyz, 3 * (rings * AROUND + 1));
    return new TriangleMesh(xyz, corners(rings));
  }

  private static List<Double> stations(DigitSurface digit, double from) {
    List<Double> stations = new ArrayList<>();
    int body = (int) Math.ceil((digit.tip() - from) / STEP);
    for (int i = 0; i < body; i++) {
      stations.add(from + (digit.tip() - from) * i / body);
    }
    double pulp = digit.pulpEnd() - digit.tip();
    for (int i = 0; i < PULP_RINGS; i++) {
      stations.add(digit.tip() + pulp * Math.sin(Math.PI / 2 * i / PULP_RINGS));
    }
    return stations;
  }

  private static void ring(Slice slice, double[] xyz, int from) {
    double[] jet = new double[18];
    for (int i = 0; i < AROUND; i++) {
      slice.jet(2 * Math.PI * i / AROUND - Math.PI, jet);
      System.arraycopy(jet, 0, xyz, from + 3 * i, 3);
    }
  }

  private static void put(Vector3D point, double[] xyz, int at) {
    xyz[at] = point.getX();
    xyz[at + 1] = point.getY();
    xyz[at + 2] = point.getZ();
  }

  private static int[] corners(int rings) {
    int[] corners = new int[6 * AROUND * rings];
    int at = 0;
    int stump = rings * AROUND;
    int last = (rings - 1) * AROUND;
    for (int i = 0; i < AROUND; i++) {
      int next = (i + 1) % AROUND;
      for (int r = 0; r + 1 < rings; r++) {
        int a = r * AROUND + i;
        int b = r * AROUND + next;
        at = triangle(corners, at, a, a + AROUND, b);
        at = triangle(corners, at, b, a + AROUND, b + AROUND);
      }
      at = triangle(corners, at, stump, i, next);
      at = triangle(corners, at, stump + 1, last + next, last + i);
    }
    return corners;
  }

  private static int triangle(int[] corners, int at, int a, int b, int c) {
    corners[at] = a;
    corners[at + 1] = b;
    corners[at + 2] = c;
    return at + 3;
  }
}
