package org.midlateral.viewer.render;

import org.apache.commons.geometry.euclidean.threed.Vector3D;

/**
 * Where points in space appear in a picture.
 *
 * @param target what stands in the middle (mm)
 * @param right unit vector that points right in the picture
 * @param up unit vector that points up in the picture
 * @param toEye unit vector from the target to the eye
 * @param pixel size of a pixel (mm)
 * @param width of the picture (px)
 * @param height of the picture (px)
 */
public record Projection(
    Vector3D target,
    Vector3D right,
    Vector3D up,
    Vector3D toEye,
    double pixel,
    int width,
    int height) {

  /** From the picture's left edge to a point given by its coordinates (mm), in pixels. */
  public double x(double px, double py, double pz) {
    return width / 2.0 + along(right, px, py, pz) / pixel;
  }

  /** From the picture's top edge down to a point given by its coordinates (mm), in pixels. */
  public double y(double px, double py, double pz) {
    return height / 2.0 - along(up, px, py, pz) / pixel;
  }

  private double along(Vector3D axis, double px, double py, double pz) {
    return (px - target.getX()) * axis.getX()
        + (py - target.getY()) * axis.getY()
        + (pz - target.getZ()) * axis.getZ();
  }

  /**
   * Where a point appears.
   *
   * @param point in space (mm)
   * @return x to the right and y down (px), and the depth toward the eye (mm)
   */
  public Vector3D of(Vector3D point) {
    double px = point.getX();
    double py = point.getY();
    double pz = point.getZ();
    return Vector3D.of(x(px, py, pz), y(px, py, pz), along(toEye, px, py, pz));
  }
}
