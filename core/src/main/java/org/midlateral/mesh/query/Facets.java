package org.midlateral.mesh.query;

/**
 * Of every triangle of a mesh its plane and the ball around it: cheap lower bounds of the distance
 * between two triangles.
 */
final class Facets {
  /** Numbers for each triangle. */
  static final int SIZE = 8;

  private final double[] xyz;
  private final int[] corners;

  /** Unit normal, height of the plane, middle, radius of the ball round it; m by 8, row-major. */
  final double[] at;

  Facets(double[] xyz, int[] corners) {
    this.xyz = xyz;
    this.corners = corners;
    this.at = new double[SIZE * (corners.length / 3)];
    for (int t = 0; t < corners.length / 3; t++) {
      fill(SIZE * t, 3 * corners[3 * t], 3 * corners[3 * t + 1], 3 * corners[3 * t + 2]);
    }
  }

  private void fill(int f, int i, int j, int k) {
    double[] p = xyz;
    double ux = p[j] - p[i];
    double uy = p[j + 1] - p[i + 1];
    double uz = p[j + 2] - p[i + 2];
    double vx = p[k] - p[i];
    double vy = p[k + 1] - p[i + 1];
    double vz = p[k + 2] - p[i + 2];
    double nx = uy * vz - uz * vy;
    double ny = uz * vx - ux * vz;
    double nz = ux * vy - uy * vx;
    double length = Math.sqrt(nx * nx + ny * ny + nz * nz);
    // A triangle without area has no plane: zeros, which separate nothing.
    double scale = length > 0 ? 1 / length : 0;
    at[f] = nx * scale;
    at[f + 1] = ny * scale;
    at[f + 2] = nz * scale;
    at[f + 3] = scale * (nx * p[i] + ny * p[i + 1] + nz * p[i + 2]);
    double square = 0;
    for (int axis = 0; axis < 3; axis++) {
      at[f + 4 + axis] = (p[i + axis] + p[j + axis] + p[k + axis]) / 3;
    }
    for (int corner : new int[] {i, j, k}) {
      double dx = p[corner] - at[f + 4];
      double dy = p[corner + 1] - at[f + 5];
      double dz = p[corner + 2] - at[f + 6];
      square = Math.max(square, dx * dx + dy * dy + dz * dz);
    }
    at[f + 7] = Math.sqrt(square);
  }

  /** Whether the balls round two triangles come nearer to each other than a distance (mm). */
  boolean mayReach(int s, Facets other, int t, double distance) {
    double far = distance + at[SIZE * s + 7] + other.at[SIZE * t + 7];
    return betweenMiddles(s, other, t) < far * far;
  }

  private double betweenMiddles(int s, Facets other, int t) {
    int i = SIZE * s + 4;
    int j = SIZE * t + 4;
    double dx = at[i] - other.at[j];
    double dy = at[i + 1] - other.at[j + 1];
    double dz = at[i + 2] - other.at[j + 2];
    return dx * dx + dy * dy + dz * dz;
  }

  /**
   * A lower bound of the squared distance of two triangles (mm²): how far the second stays clear of
   * the first one's plane, and how far beside its ball; 0 if it reaches through the plane.
   *
   * @param height receives the heights of the second one's corners over the plane (mm)
   * @param place in it
   */
  double clear(int s, Facets other, int t, double[] height, int place) {
    int f = SIZE * s;
    double[] p = other.xyz;
    int i = 3 * other.corners[3 * t];
    int j = 3 * other.corners[3 * t + 1];
    int k = 3 * other.corners[3 * t + 2];
    double h0 = at[f] * p[i] + at[f + 1] * p[i + 1] + at[f + 2] * p[i + 2] - at[f + 3];
    double h1 = at[f] * p[j] + at[f + 1] * p[j + 1] + at[f + 2] * p[j + 2] - at[f + 3];
    double h2 = at[f] * p[k] + at[f + 1] * p[k + 1] + at[f + 2] * p[k + 2] - at[f + 3];
    height[place] = h0;
    height[place + 1] = h1;
    height[place + 2] = h2;
    boolean over = h0 > 0 && h1 > 0 && h2 > 0;
    if (!over && !(h0 < 0 && h1 < 0 && h2 < 0)) {
      return 0;
    }
    double nearer = over == h0 < h1 ? h0 : h1;
    double up = over == nearer < h2 ? nearer : h2;
    double middle = (h0 + h1 + h2) / 3;
    double across = betweenMiddles(s, other, t) - middle * middle;
    double radii = at[f + 7] + other.at[SIZE * t + 7];
    double beside = across > radii * radii ? Math.sqrt(across) - radii : 0;
    return up * up + beside * beside;
  }
}
