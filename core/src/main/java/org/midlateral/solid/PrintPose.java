package org.midlateral.solid;

/**
 * How a solid is turned for printing, and what of it leans over then.
 *
 * <p>Criterion: of {@value #DIRECTIONS} directions spread evenly over the sphere, and the six axes,
 * the one that, taken as up, leaves the least area to be supported, where a square millimetre of
 * the skin side counts as {@value #SKIN_WEIGHT}, since what stood there must be smoothed before it
 * is worn; between equals, the lower piece. Where a process needs no support it is the lowest pose.
 *
 * @param pose the turn
 * @param overhang area that leans over further than the process bears (mm²)
 * @param skinOverhang the part of it that lies on the skin side (mm²)
 * @param height of the turned piece (mm)
 */
public record PrintPose(Pose pose, double overhang, double skinOverhang, double height) {
  /** Directions tried, besides the axes. */
  public static final int DIRECTIONS = 400;

  /** What area of the skin side counts against other area. */
  public static final double SKIN_WEIGHT = 5;

  /** What a millimetre of height counts against area to be supported (mm²). */
  private static final double HEIGHT_WEIGHT = 1;

  /**
   * The pose for a process.
   *
   * @param lean a face that leans further than this from upright needs support (rad)
   * @param supports whether faces need support at all
   */
  public static PrintPose of(Solid solid, double lean, boolean supports) {
    FacedAreas faced = FacedAreas.of(solid);
    double steep = Math.sin(lean);
    double[] best = {0, 0, 1};
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < DIRECTIONS + 6; i++) {
      double[] up = direction(i);
      double support = supports ? faced.under(up, steep, SKIN_WEIGHT) : 0;
      // No height makes up for support that costs more by itself.
      double cost =
          support < least ? support + HEIGHT_WEIGHT * faced.height(up) : Double.POSITIVE_INFINITY;
      if (cost < least) {
        least = cost;
        best = up;
      }
    }
    return in(solid, Pose.up(best[0], best[1], best[2]), supports ? steep : 1);
  }

  /** The six axes, then a spiral that spaces directions evenly. */
  private static double[] direction(int i) {
    if (i < 6) {
      double[] axis = new double[3];
      axis[i / 2] = i % 2 == 0 ? 1 : -1;
      return axis;
    }
    double z = 1 - (2.0 * (i - 6) + 1) / DIRECTIONS;
    double turn = (i - 6) * Math.PI * (3 - Math.sqrt(5));
    double across = Math.sqrt(1 - z * z);
    return new double[] {across * Math.cos(turn), across * Math.sin(turn), z};
  }

  /** What leans over in a pose, triangle by triangle. */
  private static PrintPose in(Solid solid, Pose pose, double steep) {
    TriangleMesh mesh = solid.mesh();
    double[] normal = new double[3];
    double overhang = 0;
    double skin = 0;
    for (int t = 0; t < mesh.triangleCount(); t++) {
      double twice = FacedAreas.normal(mesh, t, normal);
      double down = -pose.z(normal[0], normal[1], normal[2]);
      if (down > steep * twice) {
        overhang += twice / 2;
        skin += t < solid.innerTriangles() ? twice / 2 : 0;
      }
    }
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (int v = 0; v < mesh.vertexCount(); v++) {
      double z = pose.z(mesh.x(v), mesh.y(v), mesh.z(v));
      low = Math.min(low, z);
      high = Math.max(high, z);
    }
    return new PrintPose(pose, overhang, skin, high - low);
  }
}
