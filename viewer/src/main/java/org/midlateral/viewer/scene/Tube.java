package org.midlateral.viewer.scene;

import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.midlateral.mesh.TriangleMesh;

/** A line thick enough to see: a round tube about a path. */
public final class Tube {
  private static final int SIDES = 6;

  private Tube() {}

  /**
   * The tube.
   *
   * @param path points along it (mm)
   * @param closed whether the last point is followed by the first
   * @param radius mm
   */
  public static TriangleMesh along(List<Vector3D> path, boolean closed, double radius) {
    int n = path.size();
    double[] xyz = new double[3 * n * SIDES];
    for (int i = 0; i < n; i++) {
      Vector3D before = path.get(closed ? (i + n - 1) % n : Math.max(0, i - 1));
      Vector3D after = path.get(closed ? (i + 1) % n : Math.min(n - 1, i + 1));
      Vector3D along = after.subtract(before).normalize();
      Vector3D aside = Math.abs(along.getX()) < 0.9 ? Vector3D.Unit.PLUS_X : Vector3D.Unit.PLUS_Y;
      Vector3D u = along.cross(aside).normalize();
      Vector3D v = along.cross(u);
      for (int k = 0; k < SIDES; k++) {
        double t = 2 * Math.PI * k / SIDES;
        Vector3D p = path.get(i).add(radius * Math.cos(t), u).add(radius * Math.sin(t), v);
        xyz[3 * (i * SIDES + k)] = p.getX();
        xyz[3 * (i * SIDES + k) + 1] = p.getY();
        xyz[3 * (i * SIDES + k) + 2] = p.getZ();
      }
    }
    return new TriangleMesh(xyz, corners(closed ? n : n - 1, n));
  }

  private static int[] corners(int links, int n) {
    int[] corners = new int[6 * links * SIDES];
    int at = 0;
    for (int i = 0; i < links; i++) {
      int from = i * SIDES;
      int to = (i + 1) % n * SIDES;
      for (int k = 0; k < SIDES; k++) {
        int next = (k + 1) % SIDES;
        int[] quad = {from + k, from + next, to + k, from + next, to + next, to + k};
        System.arraycopy(quad, 0, corners, at, 6);
        at += 6;
      }
    }
    return corners;
  }
}
