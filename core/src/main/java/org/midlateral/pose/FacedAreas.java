package org.midlateral.pose;

import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.midlateral.mesh.TriangleMesh;
import org.midlateral.solid.Solid;

/**
 * The area of a solid by the way it faces, gathered in small bins of directions, so that hundreds
 * of poses can be tried without going through the triangles again.
 */
final class FacedAreas {
  private static final int FINE = 10;
  private static final int SAMPLE = 8;

  /** Twice the area times the mean normal of each bin: of the skin side, then of the rest. */
  private final double[] skin = new double[4 * 6 * FINE * FINE];

  private final double[] rest = new double[skin.length];
  private final double[] places;

  private FacedAreas(double[] places) {
    this.places = places;
  }

  static FacedAreas of(Solid solid) {
    TriangleMesh mesh = solid.mesh();
    double[] places = new double[3 * ((mesh.vertexCount() + SAMPLE - 1) / SAMPLE)];
    for (int i = 0; i < places.length / 3; i++) {
      places[3 * i] = mesh.x(SAMPLE * i);
      places[3 * i + 1] = mesh.y(SAMPLE * i);
      places[3 * i + 2] = mesh.z(SAMPLE * i);
    }
    FacedAreas faced = new FacedAreas(places);
    double[] normal = new double[3];
    for (int t = 0; t < mesh.triangleCount(); t++) {
      double twice = normal(mesh, t, normal);
      faced.add(t < solid.innerTriangles() ? faced.skin : faced.rest, normal, twice);
    }
    return faced;
  }

  /** Normal of a triangle, as long as twice its area; returns that length (mm²). */
  static double normal(TriangleMesh mesh, int t, double[] normal) {
    int a = mesh.corner(t, 0);
    int b = mesh.corner(t, 1);
    int c = mesh.corner(t, 2);
    double ux = mesh.x(b) - mesh.x(a);
    double uy = mesh.y(b) - mesh.y(a);
    double uz = mesh.z(b) - mesh.z(a);
    double vx = mesh.x(c) - mesh.x(a);
    double vy = mesh.y(c) - mesh.y(a);
    double vz = mesh.z(c) - mesh.z(a);
    normal[0] = uy * vz - uz * vy;
    normal[1] = uz * vx - ux * vz;
    normal[2] = ux * vy - uy * vx;
    return Math.sqrt(normal[0] * normal[0] + normal[1] * normal[1] + normal[2] * normal[2]);
  }

  private void add(double[] bins, double[] normal, double twice) {
    int axis = 0;
    for (int i = 1; i < 3; i++) {
      axis = Math.abs(normal[i]) > Math.abs(normal[axis]) ? i : axis;
    }
    double most = Math.abs(normal[axis]);
    if (!(most > 0)) {
      return;
    }
    int u = bin(normal[(axis + 1) % 3] / most);
    int v = bin(normal[(axis + 2) % 3] / most);
    int face = 2 * axis + (normal[axis] < 0 ? 1 : 0);
    int at = 4 * ((face * FINE + u) * FINE + v);
    bins[at] += normal[0];
    bins[at + 1] += normal[1];
    bins[at + 2] += normal[2];
    bins[at + 3] += twice;
  }

  private static int bin(double share) {
    return Math.min(FINE - 1, (int) ((share + 1) / 2 * FINE));
  }

  /**
   * Area that faces down more than a bound, the skin side's weighted (mm²).
   *
   * @param up a unit vector
   * @param steep cosine against straight down
   */
  double under(Vector3D up, double steep, double weight) {
    return weight * under(skin, up, steep) + under(rest, up, steep);
  }

  private static double under(double[] bins, Vector3D up, double steep) {
    double sum = 0;
    for (int i = 0; i < bins.length; i += 4) {
      if (bins[i + 3] == 0) {
        continue;
      }
      double down = -(up.getX() * bins[i] + up.getY() * bins[i + 1] + up.getZ() * bins[i + 2]);
      sum += down > steep * bins[i + 3] ? bins[i + 3] / 2 : 0;
    }
    return sum;
  }

  /** Height along a direction, by a sample of the vertices (mm). */
  double height(Vector3D up) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < places.length; i += 3) {
      double z = up.getX() * places[i] + up.getY() * places[i + 1] + up.getZ() * places[i + 2];
      low = z < low ? z : low;
      high = z > high ? z : high;
    }
    return high - low;
  }
}
