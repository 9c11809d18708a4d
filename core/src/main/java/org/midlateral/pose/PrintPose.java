package org.midlateral.pose;

import org.apache.commons.geometry.euclidean.threed.AffineTransformMatrix3D;
import org.apache.commons.geometry.euclidean.threed.Vector3D;

/**
 * How a solid is turned for printing, and what of it leans over then.
 *
 * <p>The criterion is {@link #CRITERION} What stood on the skin side must be smoothed before it is
 * worn, which is why it counts for more. Where a process needs no support, all poses are alike.
 *
 * @param pose the turn from the finger's frame to the bed's
 * @param overhang area that leans over further than the process bears (mm²)
 * @param skinOverhang the part of it that lies on the skin side (mm²)
 * @param height of the turned piece (mm)
 * @param footing area of its section 0.2 mm above the bed, on which it stands (mm²)
 * @param upright how far the finger's length is from lying down: 0 laid down, 90 on end (degrees)
 */
public record PrintPose(
    AffineTransformMatrix3D pose,
    double overhang,
    double skinOverhang,
    double height,
    double footing,
    double upright) {

  /** What area of the skin side counts against other area. */
  public static final int SKIN_WEIGHT = 5;

  /** Support that poses may need above the least and still be chosen for more (mm²). */
  public static final int ALIKE = 50;

  /** A direction nearer to the length of a piece than this stands it on its end (a cosine). */
  private static final double ON_END = 0.999;

  /**
   * The turn that makes a direction the new up, and keeps the longest way of a piece, the old x,
   * along the new x as far as it can.
   *
   * @param up of unit length
   */
  static AffineTransformMatrix3D turn(Vector3D up) {
    double along = up.getX();
    if (Math.abs(along) > ON_END) {
      // Stood on its end: the old dorsal direction lies along the new x, up or down.
      Vector3D z = along > 0 ? Vector3D.Unit.PLUS_X : Vector3D.Unit.MINUS_X;
      return rows(Vector3D.Unit.PLUS_Y.cross(z), Vector3D.Unit.PLUS_Y, z);
    }
    Vector3D y = up.cross(Vector3D.Unit.PLUS_X).normalize();
    return rows(y.cross(up), y, up);
  }

  private static AffineTransformMatrix3D rows(Vector3D x, Vector3D y, Vector3D z) {
    return AffineTransformMatrix3D.fromColumnVectors(x, y, z).linearTranspose();
  }
}
