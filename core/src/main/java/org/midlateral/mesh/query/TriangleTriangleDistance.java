package org.midlateral.mesh.query;

/**
 * The best gap so far between two triangles, and the two places it lies between: corner to face,
 * edge to edge, or 0 where the triangles meet. A scratch object for one thread's loop.
 */
final class TriangleTriangleDistance {
  /** The two triangles to be measured next. */
  final TriangleIntersection pair = new TriangleIntersection();

  /** Height of each of the six corners over the plane of the triangle it is not of (mm). */
  final double[] height = new double[6];

  /** The best squared gap so far (mm²), and the places it lies between. */
  double square = Double.POSITIVE_INFINITY;

  final double[] point = new double[3];
  final double[] otherPoint = new double[3];

  private final double[] p = pair.p;
  private final PointTriangleDistance distance = new PointTriangleDistance();
  private final CommonPerpendicular perpendicular = new CommonPerpendicular();

  /**
   * Measures the pair.
   *
   * @param mayMeet whether neither plane is known to separate the two
   * @param enough squared gap from which on the pair is of no interest
   * @return whether it is the best so far
   */
  boolean closer(boolean mayMeet, double enough) {
    if (mayMeet && pair.meet()) {
      square = Double.POSITIVE_INFINITY;
      pierce(0, 3);
      pierce(3, 0);
      features();
      square = 0;
      return true;
    }
    double before = square;
    if (separationAlongCentres() < enough) {
      features();
    }
    return square < before;
  }

  /** Squared distance between the two triangles' shadows on the line through their centres. */
  private double separationAlongCentres() {
    double x = p[9] + p[12] + p[15] - p[0] - p[3] - p[6];
    double y = p[10] + p[13] + p[16] - p[1] - p[4] - p[7];
    double z = p[11] + p[14] + p[17] - p[2] - p[5] - p[8];
    double high = Math.max(along(0, x, y, z), Math.max(along(3, x, y, z), along(6, x, y, z)));
    double low = Math.min(along(9, x, y, z), Math.min(along(12, x, y, z), along(15, x, y, z)));
    double clear = low - high;
    return clear > 0 ? clear * clear / (x * x + y * y + z * z) : 0;
  }

  private double along(int i, double x, double y, double z) {
    return p[i] * x + p[i + 1] * y + p[i + 2] * z;
  }

  /**
   * Tries each corner against the other's face, and each two edges for a way that is square to
   * both: the shortest way is one of these. Leaves out what the heights alone show to be farther
   * than the best.
   */
  private void features() {
    double limit = Math.sqrt(square);
    for (int i = 0; i < 3; i++) {
      if (Math.abs(height[i]) < limit) {
        corner(3 * i, 9, point, otherPoint);
      }
      if (Math.abs(height[3 + i]) < limit) {
        corner(9 + 3 * i, 0, otherPoint, point);
      }
    }
    for (int i = 0; i < 3; i++) {
      int j = i == 2 ? 0 : i + 1;
      if (near(i, j, limit)) {
        edgesFrom(3 * i, 3 * j, limit);
      }
    }
  }

  private void edgesFrom(int i, int j, double limit) {
    for (int k = 3; k < 6; k++) {
      int l = k == 5 ? 3 : k + 1;
      if (near(k, l, limit)) {
        edges(i, j, 3 * k, 3 * l);
      }
    }
  }

  /** Whether the edge between two corners comes near the plane of the other triangle. */
  private boolean near(int i, int j, double limit) {
    return Math.min(Math.abs(height[i]), Math.abs(height[j])) < limit || height[i] * height[j] < 0;
  }

  /** A corner of one triangle against the face of the other, both by offset. */
  private void corner(int i, int face, double[] own, double[] others) {
    double d = distance.square(p[i], p[i + 1], p[i + 2], p, face, face + 3, face + 6);
    if (d < square) {
      square = d;
      System.arraycopy(p, i, own, 0, 3);
      System.arraycopy(distance.on, 0, others, 0, 3);
    }
  }

  private void edges(int i, int j, int k, int l) {
    double d = perpendicular.square(p, i, j, k, l);
    if (d < square) {
      square = d;
      System.arraycopy(perpendicular.foot, 0, point, 0, 3);
      System.arraycopy(perpendicular.otherFoot, 0, otherPoint, 0, 3);
    }
  }

  /** Where edges of one triangle go through the plane of the other, by their first places. */
  private void pierce(int edges, int face) {
    for (int i = 0; i < 3; i++) {
      int m = edges + i;
      int n = edges + (i + 1) % 3;
      if (height[m] * height[n] < 0) {
        through(3 * m, 3 * n, height[m] / (height[m] - height[n]), 3 * face);
      }
    }
  }

  private void through(int m, int n, double r, int face) {
    double x = p[m] + r * (p[n] - p[m]);
    double y = p[m + 1] + r * (p[n + 1] - p[m + 1]);
    double z = p[m + 2] + r * (p[n + 2] - p[m + 2]);
    double d = distance.square(x, y, z, p, face, face + 3, face + 6);
    if (d < square) {
      square = d;
      System.arraycopy(distance.on, 0, point, 0, 3);
      System.arraycopy(distance.on, 0, otherPoint, 0, 3);
    }
  }
}
