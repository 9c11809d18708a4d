package org.midlateral.viewer.view;

import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.midlateral.viewer.render.Orbit;
import org.midlateral.viewer.render.SceneItem;
import org.midlateral.viewer.render.SurfaceShape;

/** What lies under a point of a picture. */
final class Picking {
  private static final double FAR = 2000;

  private Picking() {}

  /**
   * The nearest surface under the pointer.
   *
   * @param item whose it is
   * @param triangle of its shape
   * @param weights of the triangle's three corners, summing to 1
   * @param point where (mm)
   * @param depth toward the eye, as a projection has it (mm)
   */
  record Hit(SceneItem item, int triangle, double[] weights, Vector3D point, double depth) {

    /** A value given at the vertices, at this point. */
    double value(double[] values) {
      double sum = 0;
      for (int c = 0; c < 3; c++) {
        sum += weights[c] * values[item.shape().corner(triangle, c)];
      }
      return sum;
    }
  }

  /** The hit nearest to the eye. */
  static Optional<Hit> hit(List<SceneItem> items, Orbit orbit, double x, double y, int w, int h) {
    Vector3D from = orbit.unproject(x, y, w, h).add(FAR, orbit.toEye());
    Vector3D along = orbit.toEye().negate();
    Hit nearest = null;
    for (SceneItem item : items) {
      Hit found = hit(item, from.subtract(item.place()), along);
      if (found != null && (nearest == null || found.depth > nearest.depth)) {
        nearest = found;
      }
    }
    return Optional.ofNullable(nearest);
  }

  /** Intersection of a line with a shape's triangles (Moeller and Trumbore 1997). */
  private static Hit hit(SceneItem item, Vector3D from, Vector3D along) {
    SurfaceShape shape = item.shape();
    double best = Double.POSITIVE_INFINITY;
    int triangle = -1;
    double[] weights = null;
    double[] found = new double[3];
    for (int t = 0; t < shape.triangleCount(); t++) {
      if (meet(shape, t, from, along, found) && found[0] < best) {
        best = found[0];
        triangle = t;
        weights = new double[] {1 - found[1] - found[2], found[1], found[2]};
      }
    }
    if (triangle < 0) {
      return null;
    }
    Vector3D point = from.add(best, along).add(item.place());
    return new Hit(item, triangle, weights, point, FAR - best);
  }

  private static boolean meet(SurfaceShape s, int t, Vector3D from, Vector3D d, double[] found) {
    int a = s.corner(t, 0);
    int b = s.corner(t, 1);
    int c = s.corner(t, 2);
    double e1x = s.at(b, 0) - s.at(a, 0);
    double e1y = s.at(b, 1) - s.at(a, 1);
    double e1z = s.at(b, 2) - s.at(a, 2);
    double e2x = s.at(c, 0) - s.at(a, 0);
    double e2y = s.at(c, 1) - s.at(a, 1);
    double e2z = s.at(c, 2) - s.at(a, 2);
    double px = d.getY() * e2z - d.getZ() * e2y;
    double py = d.getZ() * e2x - d.getX() * e2z;
    double pz = d.getX() * e2y - d.getY() * e2x;
    double det = e1x * px + e1y * py + e1z * pz;
    if (Math.abs(det) < 1e-12) {
      return false;
    }
    double rx = from.getX() - s.at(a, 0);
    double ry = from.getY() - s.at(a, 1);
    double rz = from.getZ() - s.at(a, 2);
    double u = (rx * px + ry * py + rz * pz) / det;
    if (u < 0 || u > 1) {
      return false;
    }
    double qx = ry * e1z - rz * e1y;
    double qy = rz * e1x - rx * e1z;
    double qz = rx * e1y - ry * e1x;
    double v = (d.getX() * qx + d.getY() * qy + d.getZ() * qz) / det;
    if (v < 0 || u + v > 1) {
      return false;
    }
    found[0] = (e2x * qx + e2y * qy + e2z * qz) / det;
    found[1] = u;
    found[2] = v;
    return found[0] > 0;
  }
}
