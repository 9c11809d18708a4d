package org.midlateral.viewer.view;

import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.midlateral.viewer.render.Orbit;
import org.midlateral.viewer.render.SurfaceShape;
import org.midlateral.viewer.scene.DesignShapes;

/**
 * A box about a design, by which another is set beside it.
 *
 * @param low least coordinates (mm)
 * @param high largest ones (mm)
 */
record SideBySide(Vector3D low, Vector3D high) {
  /** Between the two as they are seen (mm). */
  private static final double APART = 16;

  static SideBySide about(DesignShapes design) {
    double[] low = {Double.MAX_VALUE, Double.MAX_VALUE, Double.MAX_VALUE};
    double[] high = {-Double.MAX_VALUE, -Double.MAX_VALUE, -Double.MAX_VALUE};
    add(design.skin(), low, high);
    design.pieces().forEach(piece -> add(piece.shape(), low, high));
    return new SideBySide(Vector3D.of(low), Vector3D.of(high));
  }

  private static void add(SurfaceShape shape, double[] low, double[] high) {
    for (int v = 0; v < shape.vertexCount(); v++) {
      for (int axis = 0; axis < 3; axis++) {
        low[axis] = Math.min(low[axis], shape.at(v, axis));
        high[axis] = Math.max(high[axis], shape.at(v, axis));
      }
    }
  }

  /** How far another must be moved to stand clear above this one, however both are looked at. */
  Vector3D above(SideBySide other, Orbit orbit) {
    double way = extent(orbit, 1) + other.extent(orbit, -1) + APART;
    return orbit.up().multiply(way);
  }

  /** How far it reaches up in the picture, or down for a sign of -1 (mm). */
  private double extent(Orbit orbit, int sign) {
    Vector3D up = orbit.up().multiply(sign);
    return larger(up.getX(), low.getX(), high.getX())
        + larger(up.getY(), low.getY(), high.getY())
        + larger(up.getZ(), low.getZ(), high.getZ());
  }

  private static double larger(double along, double low, double high) {
    return Math.max(along * low, along * high);
  }

  Vector3D middle() {
    return low.add(high).multiply(0.5);
  }
}
