package org.midlateral.pose;

import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.geometry.euclidean.threed.AffineTransformMatrix3D;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.midlateral.measurement.PrintProcess;
import org.midlateral.mesh.TriangleMesh;
import org.midlateral.solid.Solid;

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
 * @param footing area of its section {@value #FIRST_LAYER} mm above the bed, on which it stands
 *     (mm²)
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

  private static final int DIRECTIONS = 400;

  private static final List<Vector3D> AXES =
      List.of(
          Vector3D.Unit.PLUS_X,
          Vector3D.Unit.MINUS_X,
          Vector3D.Unit.PLUS_Y,
          Vector3D.Unit.MINUS_Y,
          Vector3D.Unit.PLUS_Z,
          Vector3D.Unit.MINUS_Z);

  /** A direction nearer to the length of a piece than this stands it on its end (a cosine). */
  private static final double ON_END = 0.999;

  /** The criterion in words, for reports. */
  public static final String CRITERION =
      "Least area to be supported, a square millimetre of the skin side counting as "
          + SKIN_WEIGHT
          + ", of the six axes and "
          + DIRECTIONS
          + " directions spread evenly. Of those within "
          + ALIKE
          + " mm² of the least: the broadest footing where the piece must stand on the bed, else"
          + " the lowest.";

  /** Height of the section that a piece stands on (mm); common practice, no source. */
  private static final double FIRST_LAYER = 0.2;

  /** The pose for a process. */
  public static PrintPose of(Solid solid, PrintProcess process) {
    FacedAreas faced = FacedAreas.of(solid);
    List<Vector3D> ups =
        IntStream.range(0, AXES.size() + DIRECTIONS).mapToObj(PrintPose::up).toList();
    if (!process.supports()) {
      return in(solid, Collections.min(ups, Comparator.comparingDouble(faced::height)), 1);
    }
    double steep = Math.sin(Math.toRadians(process.overhang()));
    double[] rough = ups.stream().mapToDouble(up -> faced.under(up, steep, SKIN_WEIGHT)).toArray();
    // Areas in bins are told apart no better than this; what they leave is looked at in full.
    double bound = Arrays.stream(rough).min().orElseThrow() + 2 * ALIKE;
    List<PrintPose> poses =
        IntStream.range(0, rough.length)
            .filter(i -> rough[i] <= bound)
            .mapToObj(i -> in(solid, ups.get(i), steep))
            .toList();
    double least = poses.stream().mapToDouble(PrintPose::cost).min().orElseThrow();
    Comparator<PrintPose> better =
        process.stands()
            ? Comparator.comparingDouble(PrintPose::footing)
            : Comparator.comparingDouble(PrintPose::height).reversed();
    return poses.stream().filter(pose -> pose.cost() <= least + ALIKE).max(better).orElseThrow();
  }

  private double cost() {
    return overhang + (SKIN_WEIGHT - 1) * skinOverhang;
  }

  /** The six axes, then a spiral that spaces directions evenly. */
  private static Vector3D up(int i) {
    if (i < AXES.size()) {
      return AXES.get(i);
    }
    double z = 1 - (2.0 * (i - AXES.size()) + 1) / DIRECTIONS;
    double turn = (i - AXES.size()) * Math.PI * (3 - Math.sqrt(5));
    double across = Math.sqrt(1 - z * z);
    return Vector3D.of(across * Math.cos(turn), across * Math.sin(turn), z);
  }

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

  /** What leans over in a pose, triangle by triangle. */
  private static PrintPose in(Solid solid, Vector3D up, double steep) {
    AffineTransformMatrix3D pose = turn(up);
    double[] rows = pose.toArray();
    TriangleMesh mesh = solid.mesh();
    double[] z = new double[mesh.vertexCount()];
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (int v = 0; v < z.length; v++) {
      z[v] = rows[8] * mesh.x(v) + rows[9] * mesh.y(v) + rows[10] * mesh.z(v);
      low = Math.min(low, z[v]);
      high = Math.max(high, z[v]);
    }
    double section = low + FIRST_LAYER;
    double[] normal = new double[3];
    double overhang = 0;
    double skin = 0;
    double footing = 0;
    for (int t = 0; t < mesh.triangleCount(); t++) {
      double twice = FacedAreas.normal(mesh, t, normal);
      double down = -(rows[8] * normal[0] + rows[9] * normal[1] + rows[10] * normal[2]);
      if (down > steep * twice) {
        overhang += twice / 2;
        skin += t < solid.innerTriangles() ? twice / 2 : 0;
      }
      double a = z[mesh.corner(t, 0)];
      double b = z[mesh.corner(t, 1)];
      double c = z[mesh.corner(t, 2)];
      // Few reach down to the section: the others are not put in order for it.
      if (a < section || b < section || c < section) {
        footing += down / 2 * shareBelow(new double[] {a, b, c}, section);
      }
    }
    double upright = Math.toDegrees(Math.asin(Math.min(1, Math.abs(rows[8]))));
    return new PrintPose(pose, overhang, skin, high - low, footing, upright);
  }

  /**
   * Share of a triangle's area that lies below a level. What lies below it, seen from above and
   * counted with its sign, is the section there: the surface below closes with it.
   */
  private static double shareBelow(double[] z, double level) {
    Arrays.sort(z);
    if (z[0] >= level) {
      return 0;
    }
    if (z[2] <= level) {
      return 1;
    }
    if (z[1] >= level) {
      return (level - z[0]) * (level - z[0]) / ((z[1] - z[0]) * (z[2] - z[0]));
    }
    return 1 - (z[2] - level) * (z[2] - level) / ((z[2] - z[0]) * (z[2] - z[1]));
  }
}
