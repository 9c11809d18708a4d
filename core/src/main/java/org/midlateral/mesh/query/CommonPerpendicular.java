package org.midlateral.mesh.query;

/**
 * The shortest way between two edges where it is square to both, in doubles. Any other shortest way
 * ends in a corner. A scratch object for one thread's loop: each question leaves the two ends in
 * {@link #foot} and {@link #otherFoot}.
 */
final class CommonPerpendicular {
  final double[] foot = new double[3];
  final double[] otherFoot = new double[3];

  /**
   * Between the edges a, b and c, d, given by offsets into an array.
   *
   * <p>With u and v the edges and w the way from a to c, the ends a + s u and c + r v solve (w + r
   * v - s u)·u = 0 and likewise by v; parallel edges leave that open.
   *
   * @return the squared distance; infinity where no such way ends within both edges
   */
  double square(double[] p, int a, int b, int c, int d) {
    double ux = p[b] - p[a];
    double uy = p[b + 1] - p[a + 1];
    double uz = p[b + 2] - p[a + 2];
    double vx = p[d] - p[c];
    double vy = p[d + 1] - p[c + 1];
    double vz = p[d + 2] - p[c + 2];
    double wx = p[c] - p[a];
    double wy = p[c + 1] - p[a + 1];
    double wz = p[c + 2] - p[a + 2];
    double uu = ux * ux + uy * uy + uz * uz;
    double uv = ux * vx + uy * vy + uz * vz;
    double vv = vx * vx + vy * vy + vz * vz;
    double uw = ux * wx + uy * wy + uz * wz;
    double vw = vx * wx + vy * wy + vz * wz;
    double whole = uu * vv - uv * uv;
    double s = uw * vv - vw * uv;
    double r = uw * uv - vw * uu;
    if (!(whole > 0) || s < 0 || s > whole || r < 0 || r > whole) {
      return Double.POSITIVE_INFINITY;
    }
    return between(p, a, b, s / whole, c, d, r / whole);
  }

  private double between(double[] p, int a, int b, double s, int c, int d, double r) {
    double sum = 0;
    for (int i = 0; i < 3; i++) {
      foot[i] = p[a + i] + s * (p[b + i] - p[a + i]);
      otherFoot[i] = p[c + i] + r * (p[d + i] - p[c + i]);
      double step = foot[i] - otherFoot[i];
      sum += step * step;
    }
    return sum;
  }
}
