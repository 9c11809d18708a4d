package org.midlateral.pose;

import java.util.Arrays;
import org.apache.commons.geometry.euclidean.threed.AffineTransformMatrix3D;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.midlateral.measurement.PrintProcess;
import org.midlateral.mesh.TriangleMesh;
import org.midlateral.solid.Solid;

/** What of a solid leans over, and on what it stands, whichever way it is turned. */
final class TurnedSolid {
  /** Height of the section that a piece stands on (mm); common practice, no source. */
  private static final double FIRST_LAYER = 0.2;

  private final TriangleMesh mesh;
  private final int skinTriangles;
  private final double steep;

  /** Normals of the triangles, as long as twice their area, and that length. */
  private final double[] nx;

  private final double[] ny;
  private final double[] nz;
  private final double[] twice;

  TurnedSolid(Solid solid, PrintProcess process) {
    this.mesh = solid.mesh();
    this.skinTriangles = solid.innerTriangles();
    this.steep = process.supports() ? Math.sin(Math.toRadians(process.overhang())) : 1;
    int triangles = mesh.triangleCount();
    this.nx = new double[triangles];
    this.ny = new double[triangles];
    this.nz = new double[triangles];
    this.twice = new double[triangles];
    double[] normal = new double[3];
    for (int t = 0; t < triangles; t++) {
      twice[t] = FacedAreas.normal(mesh, t, normal);
      nx[t] = normal[0];
      ny[t] = normal[1];
      nz[t] = normal[2];
    }
  }

  /** Cosine against straight down beyond which a face needs support. */
  double steep() {
    return steep;
  }

  /** Area that needs support, the skin side's weighted (mm²). */
  double cost(Vector3D up) {
    double skin = leaning(up, 0, skinTriangles);
    return PrintPose.SKIN_WEIGHT * skin + leaning(up, skinTriangles, twice.length);
  }

  private double leaning(Vector3D up, int from, int to) {
    double x = up.getX();
    double y = up.getY();
    double z = up.getZ();
    double sum = 0;
    for (int t = from; t < to; t++) {
      sum += -(x * nx[t] + y * ny[t] + z * nz[t]) > steep * twice[t] ? twice[t] : 0;
    }
    return sum / 2;
  }

  /** The pose that makes a direction the new up. */
  PrintPose pose(Vector3D up) {
    AffineTransformMatrix3D pose = PrintPose.turn(up);
    double[] rows = pose.toArray();
    Vector3D axis = Vector3D.of(rows[8], rows[9], rows[10]);
    double[] z = new double[mesh.vertexCount()];
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (int v = 0; v < z.length; v++) {
      z[v] = rows[8] * mesh.x(v) + rows[9] * mesh.y(v) + rows[10] * mesh.z(v);
      low = Math.min(low, z[v]);
      high = Math.max(high, z[v]);
    }
    double skin = leaning(axis, 0, skinTriangles);
    double overhang = skin + leaning(axis, skinTriangles, twice.length);
    double upright = Math.toDegrees(Math.asin(Math.min(1, Math.abs(rows[8]))));
    return new PrintPose(pose, overhang, skin, high - low, footing(axis, z, low), upright);
  }

  private double footing(Vector3D up, double[] z, double low) {
    double level = low + FIRST_LAYER;
    double footing = 0;
    for (int t = 0; t < twice.length; t++) {
      double a = z[mesh.corner(t, 0)];
      double b = z[mesh.corner(t, 1)];
      double c = z[mesh.corner(t, 2)];
      if (a < level || b < level || c < level) {
        double down = -(up.getX() * nx[t] + up.getY() * ny[t] + up.getZ() * nz[t]);
        footing += down / 2 * shareBelow(new double[] {a, b, c}, level);
      }
    }
    return footing;
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
