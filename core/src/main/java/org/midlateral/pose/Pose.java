package org.midlateral.pose;

/**
 * A turn of a solid: the matrix whose rows are the new axes, seen from the old ones.
 *
 * @param xx first row, along the new x
 * @param yx second row, along the new y
 * @param zx third row, along the new z
 */
public record Pose(
    double xx,
    double xy,
    double xz,
    double yx,
    double yy,
    double yz,
    double zx,
    double zy,
    double zz) {
  /** No turn. */
  public static final Pose AS_IS = new Pose(1, 0, 0, 0, 1, 0, 0, 0, 1);

  /**
   * The turn that makes a direction the new up, and keeps the longest way of a piece, the old x,
   * along the new x as far as it can.
   *
   * @param x of the direction, of unit length together with y and z
   */
  public static Pose up(double x, double y, double z) {
    if (Math.abs(x) > 0.999) {
      // Stood on its end: the old dorsal direction lies along the new x, up or down.
      return new Pose(0, 0, -Math.signum(x), 0, 1, 0, Math.signum(x), 0, 0);
    }
    double size = Math.sqrt(1 - x * x);
    double ax = size;
    double ay = -x * y / size;
    double az = -x * z / size;
    return new Pose(ax, ay, az, y * az - z * ay, z * ax - x * az, x * ay - y * ax, x, y, z);
  }

  /** The new x of a point (mm). */
  public double x(double x, double y, double z) {
    return xx * x + xy * y + xz * z;
  }

  /** The new y of a point (mm). */
  public double y(double x, double y, double z) {
    return yx * x + yy * y + yz * z;
  }

  /** The new z of a point (mm). */
  public double z(double x, double y, double z) {
    return zx * x + zy * y + zz * z;
  }
}
