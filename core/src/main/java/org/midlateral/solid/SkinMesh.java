package org.midlateral.solid;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.midlateral.digit.DigitSurface;
import org.midlateral.digit.Slice;
import org.midlateral.mesh.TriangleMesh;

/** The finger's skin as a closed mesh, with a ring of vertices at each measured level. */
public final class SkinMesh {
  /** Points of a ring: its perimeter falls short of the section's by under 0.02 % . */
  public static final int AROUND = 96;

  private static final int PULP_RINGS = 24;

  private final TriangleMesh mesh;

  private SkinMesh(TriangleMesh mesh) {
    this.mesh = mesh;
  }

  /**
   * The skin from a proximal station to the end of the pulp.
   *
   * @param from station of the flat proximal end (mm)
   * @param levels stations that get a ring of their own (mm)
   * @param around points of a ring
   * @param step largest distance of two rings, the pulp's apart (mm)
   */
  public static SkinMesh of(
      DigitSurface digit, double from, List<Double> levels, int around, double step) {
    TreeSet<Double> at = new TreeSet<>(levels);
    at.add(from);
    at.add(digit.tip());
    int n = (int) Math.ceil((digit.tip() - from) / step);
    for (int i = 0; i <= n; i++) {
      double s = from + (digit.tip() - from) * i / n;
      Double near = at.floor(s + step / 3);
      if (near == null || near < s - step / 3) {
        at.add(s);
      }
    }
    double pulp = digit.pulpEnd() - digit.tip();
    for (int i = 1; i < PULP_RINGS; i++) {
      at.add(digit.tip() + pulp * Math.sin(Math.PI / 2 * i / PULP_RINGS));
    }
    return new SkinMesh(rings(digit, new ArrayList<>(at), around));
  }

  private static TriangleMesh rings(DigitSurface digit, List<Double> stations, int around) {
    int rings = stations.size();
    double[] xyz = new double[3 * (rings * around + 2)];
    int at = 0;
    for (double s : stations) {
      ring(digit.slice(s), around, xyz, at);
      at += 3 * around;
    }
    put(digit.centre(stations.get(0)), xyz, at);
    put(digit.centre(digit.pulpEnd()), xyz, at + 3);
    int[] corners = new int[6 * rings * around];
    int used = 0;
    for (int i = 0; i < around; i++) {
      int j = (i + 1) % around;
      for (int r = 0; r + 1 < rings; r++) {
        int a = r * around;
        int b = a + around;
        used = put(corners, used, a + i, a + j, b + j);
        used = put(corners, used, a + i, b + j, b + i);
      }
      used = put(corners, used, rings * around, j, i);
      int last = (rings - 1) * around;
      used = put(corners, used, rings * around + 1, last + i, last + j);
    }
    return new TriangleMesh(xyz, corners);
  }

  private static void put(Vector3D point, double[] xyz, int at) {
    xyz[at] = point.getX();
    xyz[at + 1] = point.getY();
    xyz[at + 2] = point.getZ();
  }

  private static int put(int[] corners, int used, int a, int b, int c) {
    corners[used] = a;
    corners[used + 1] = b;
    corners[used + 2] = c;
    return used + 3;
  }

  /** The closed surface (mm). */
  public TriangleMesh mesh() {
    return mesh;
  }

  /** Perimeter of the ring that stands in such a mesh at a level (mm). */
  public static double perimeter(DigitSurface digit, double station) {
    double[] xyz = new double[3 * AROUND];
    ring(digit.slice(station), AROUND, xyz, 0);
    double sum = 0;
    for (int i = 0; i < AROUND; i++) {
      int p = 3 * i;
      int q = 3 * ((i + 1) % AROUND);
      double dx = xyz[q] - xyz[p];
      double dy = xyz[q + 1] - xyz[p + 1];
      double dz = xyz[q + 2] - xyz[p + 2];
      sum += Math.sqrt(dx * dx + dy * dy + dz * dz);
    }
    return sum;
  }

  private static void ring(Slice slice, int around, double[] xyz, int from) {
    for (int i = 0; i < around; i++) {
      put(slice.point(2 * Math.PI * i / around - Math.PI), xyz, from + 3 * i);
    }
  }
}
