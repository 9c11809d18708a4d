package org.midlateral.mesh.query;

import java.util.Arrays;
import org.midlateral.mesh.ExactOrientation;
import org.midlateral.mesh.MeshTopology;

/**
 * Vertices whose triangles are known not to meet beyond what they share.
 *
 * <p>Seen along a coordinate axis, the triangles round a vertex that all turn the same way, and
 * that cross a ray from the vertex exactly once, lie side by side like the slices of a cake: no two
 * of them meet but in the vertex or in an edge they share. On a closed oriented mesh that is a
 * proof, and an exact one, since dropping a coordinate rounds nothing. A vertex that does not pass
 * is not at fault; its triangles are to be tried pair by pair.
 */
public final class VertexStars {
  private final double[] xyz;
  private final int[] corners;
  private final byte[] axis;
  private final boolean[] flat;

  /** Vertices whose triangles do not lie in one sheet. */
  private final boolean[] mixed;

  private VertexStars(double[] xyz, int[] corners, byte[] axis) {
    this.xyz = xyz;
    this.corners = corners;
    this.axis = axis;
    this.flat = new boolean[xyz.length / 3];
    this.mixed = new boolean[xyz.length / 3];
  }

  /**
   * Tries every vertex of a mesh.
   *
   * @param xyz coordinates, n by 3, row-major
   * @param corners of a closed, oriented surface ({@link MeshTopology#closed()}): the proof needs
   *     it
   * @param axes that the vertices face most
   * @param sheets by triangle, as in {@link HeightFieldPatches}: a vertex inside one is not asked
   *     for
   * @return by vertex, whether its triangles are known not to meet
   */
  static boolean[] of(double[] xyz, int[] corners, byte[] axes, int[] sheets) {
    VertexStars stars = new VertexStars(xyz, corners, axes);
    stars.findMixed(sheets);
    stars.tryAll();
    return stars.flat;
  }

  private void findMixed(int[] sheets) {
    int[] first = new int[mixed.length];
    for (int i = 0; i < corners.length; i++) {
      int sheet = sheets[i / 3] + 2;
      int v = corners[i];
      mixed[v] |= sheet == 1 || first[v] != 0 && first[v] != sheet;
      first[v] = sheet;
    }
  }

  /** The axis that the triangles round each vertex face most: 1 to 3, negative if from behind. */
  public static byte[] axes(double[] xyz, int[] corners) {
    byte[] axis = new byte[xyz.length / 3];
    double[] normal = new double[xyz.length];
    for (int t = 0; t < corners.length; t += 3) {
      int a = 3 * corners[t];
      int b = 3 * corners[t + 1];
      int c = 3 * corners[t + 2];
      double ux = xyz[b] - xyz[a];
      double uy = xyz[b + 1] - xyz[a + 1];
      double uz = xyz[b + 2] - xyz[a + 2];
      double vx = xyz[c] - xyz[a];
      double vy = xyz[c + 1] - xyz[a + 1];
      double vz = xyz[c + 2] - xyz[a + 2];
      for (int i = t; i < t + 3; i++) {
        int at = 3 * corners[i];
        normal[at] += uy * vz - uz * vy;
        normal[at + 1] += uz * vx - ux * vz;
        normal[at + 2] += ux * vy - uy * vx;
      }
    }
    for (int v = 0; v < axis.length; v++) {
      double x = Math.abs(normal[3 * v]);
      double y = Math.abs(normal[3 * v + 1]);
      double z = Math.abs(normal[3 * v + 2]);
      int most = x >= y && x >= z ? 0 : y >= z ? 1 : 2;
      axis[v] = (byte) (normal[3 * v + most] < 0 ? -1 - most : 1 + most);
    }
    return axis;
  }

  private void tryAll() {
    int[] crossings = new int[flat.length];
    Arrays.fill(flat, true);
    for (int t = 0; t < corners.length; t += 3) {
      for (int i = 0; i < 3; i++) {
        if (mixed[corners[t + i]]) {
          slice(corners[t + i], corners[t + (i + 1) % 3], corners[t + (i + 2) % 3], crossings);
        }
      }
    }
    for (int v = 0; v < flat.length; v++) {
      flat[v] &= mixed[v] && crossings[v] == 1;
    }
  }

  /** One triangle at a vertex: which way it turns, and whether it holds the ray along +x. */
  private void slice(int v, int a, int b, int[] crossings) {
    int x = Math.abs(axis[v]) % 3;
    int y = (x + 1) % 3;
    int side = axis[v] > 0 ? 1 : -1;
    flat[v] &= ExactOrientation.plane(xyz, v, a, b, x, y) == side;
    double level = xyz[3 * v + y];
    double from = xyz[3 * (side > 0 ? a : b) + y];
    double to = xyz[3 * (side > 0 ? b : a) + y];
    if (from < level && to >= level) {
      crossings[v]++;
    }
  }
}
