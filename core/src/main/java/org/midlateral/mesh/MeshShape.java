package org.midlateral.mesh;

import java.util.Arrays;
import org.apache.commons.geometry.euclidean.threed.Bounds3D;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.midlateral.accuracy.ErrorBudget;

/**
 * Sizes of a mesh and of its triangles.
 *
 * @param volume enclosed, by the divergence theorem; negative if the surface is inside out (mm³)
 * @param area of the surface (mm²)
 * @param degenerateTriangles triangles whose corners lie on one line, exactly
 * @param repeatedVertices vertices at the place of an earlier one, exactly
 * @param smallestAngle of any triangle, at most 60 (degrees)
 * @param sharpShare share of the triangles that have an angle under {@value
 *     ErrorBudget#SHARP_ANGLE} degrees, 0 to 1
 * @param bounds the box around the vertices (mm)
 */
public record MeshShape(
    double volume,
    double area,
    int degenerateTriangles,
    int repeatedVertices,
    double smallestAngle,
    double sharpShare,
    Bounds3D bounds) {

  /** Measures a mesh. */
  public static MeshShape of(TriangleMesh mesh) {
    return of(mesh.coordinates(), mesh.triangles());
  }

  public static MeshShape of(double[] xyz, int[] corners) {
    Triangles sum = new Triangles(xyz);
    for (int t = 0; t < corners.length; t += 3) {
      sum.add(corners[t], corners[t + 1], corners[t + 2]);
    }
    int count = Math.max(1, corners.length / 3);
    return new MeshShape(
        sum.volume / 6,
        sum.area / 2,
        sum.degenerate,
        repeated(xyz),
        Math.toDegrees(Math.asin(Math.sqrt(sum.leastSine))),
        (double) sum.sharp / count,
        box(xyz));
  }

  /** Running sums over triangles. */
  private static final class Triangles {
    private static final double SHARP_SINE =
        Math.pow(Math.sin(Math.toRadians(ErrorBudget.SHARP_ANGLE)), 2);

    private final double[] xyz;
    private double volume;
    private double area;
    private int degenerate;
    private int sharp;

    /** Square of the smallest sine so far; no triangle's smallest angle is over 60 degrees. */
    private double leastSine = 0.75;

    Triangles(double[] xyz) {
      this.xyz = xyz;
    }

    void add(int a, int b, int c) {
      double ux = xyz[3 * b] - xyz[3 * a];
      double uy = xyz[3 * b + 1] - xyz[3 * a + 1];
      double uz = xyz[3 * b + 2] - xyz[3 * a + 2];
      double vx = xyz[3 * c] - xyz[3 * a];
      double vy = xyz[3 * c + 1] - xyz[3 * a + 1];
      double vz = xyz[3 * c + 2] - xyz[3 * a + 2];
      double nx = uy * vz - uz * vy;
      double ny = uz * vx - ux * vz;
      double nz = ux * vy - uy * vx;
      // Heights are taken from the first vertex of the mesh, which keeps the terms small.
      volume +=
          nx * (xyz[3 * a] - xyz[0])
              + ny * (xyz[3 * a + 1] - xyz[1])
              + nz * (xyz[3 * a + 2] - xyz[2]);
      double square = nx * nx + ny * ny + nz * nz;
      area += Math.sqrt(square);
      double wx = vx - ux;
      double wy = vy - uy;
      double wz = vz - uz;
      double uu = ux * ux + uy * uy + uz * uz;
      double vv = vx * vx + vy * vy + vz * vz;
      double ww = wx * wx + wy * wy + wz * wz;
      angle(square, uu * vv, vv * ww, ww * uu);
      if (square <= 1e-20 * uu * vv && onOneLine(a, b, c)) {
        degenerate++;
      }
    }

    /**
     * The smallest angle lies between the two longest sides: its sine is twice the area by both.
     */
    private void angle(double square, double uv, double vw, double wu) {
      double longest = Math.max(uv, Math.max(vw, wu));
      double sine = longest > 0 ? square / longest : 0;
      leastSine = Math.min(leastSine, sine);
      sharp += sine < SHARP_SINE ? 1 : 0;
    }

    private boolean onOneLine(int a, int b, int c) {
      return ExactOrientation.plane(xyz, a, b, c, 0, 1) == 0
          && ExactOrientation.plane(xyz, a, b, c, 1, 2) == 0
          && ExactOrientation.plane(xyz, a, b, c, 2, 0) == 0;
    }
  }

  /** Counts repeated places with an open-addressed table of vertex numbers. */
  private static int repeated(double[] xyz) {
    int vertices = xyz.length / 3;
    int mask = Integer.highestOneBit(Math.max(4, 4 * vertices) - 1) - 1;
    int[] table = new int[mask + 1];
    Arrays.fill(table, -1);
    int repeated = 0;
    for (int v = 0; v < vertices; v++) {
      int slot = hash(xyz, v) & mask;
      while (table[slot] >= 0 && !same(xyz, table[slot], v)) {
        slot = (slot + 1) & mask;
      }
      repeated += table[slot] >= 0 ? 1 : 0;
      table[slot] = v;
    }
    return repeated;
  }

  private static int hash(double[] xyz, int v) {
    long bits = 0;
    for (int i = 3 * v; i < 3 * v + 3; i++) {
      // Adding zero makes one of the two zeros, which are the same place.
      bits = (bits ^ Double.doubleToRawLongBits(xyz[i] + 0.0)) * 0x9e3779b97f4a7c15L;
      bits ^= bits >>> 29;
    }
    return (int) (bits >>> 20);
  }

  private static boolean same(double[] xyz, int v, int w) {
    return xyz[3 * v] == xyz[3 * w]
        && xyz[3 * v + 1] == xyz[3 * w + 1]
        && xyz[3 * v + 2] == xyz[3 * w + 2];
  }

  private static Bounds3D box(double[] xyz) {
    double[] min = {xyz[0], xyz[1], xyz[2]};
    double[] max = min.clone();
    for (int i = 3; i < xyz.length; i++) {
      min[i % 3] = Math.min(min[i % 3], xyz[i]);
      max[i % 3] = Math.max(max[i % 3], xyz[i]);
    }
    return Bounds3D.from(Vector3D.of(min), Vector3D.of(max));
  }
}
