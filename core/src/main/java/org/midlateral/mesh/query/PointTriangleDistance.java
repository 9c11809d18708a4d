package org.midlateral.mesh.query;

/**
 * Nearest points of points, segments and triangles (C. Ericson, Real-Time Collision Detection,
 * 2005, 5.1.5 and 5.1.9), in doubles. A scratch object for one thread's loop: each question leaves
 * its two nearest points in {@link #on} and {@link #other}.
 */
public final class PointTriangleDistance {
  final double[] on = new double[3];
  final double[] other = new double[3];

  /** Barycentric weights of the second and the third corner of the last nearest point. */
  private double second;

  private double third;

  /**
   * From a point to a triangle, corners at the offsets a, b, c of an array.
   *
   * @return the squared distance; the nearest point of the triangle is left in {@link #on}
   */
  public double square(double px, double py, double pz, double[] t, int a, int b, int c) {
    weigh(px, py, pz, t, a, b, c);
    double first = 1 - second - third;
    for (int i = 0; i < 3; i++) {
      on[i] = first * t[a + i] + second * t[b + i] + third * t[c + i];
    }
    double dx = px - on[0];
    double dy = py - on[1];
    double dz = pz - on[2];
    return dx * dx + dy * dy + dz * dz;
  }

  private void weigh(double px, double py, double pz, double[] t, int a, int b, int c) {
    double ux = t[b] - t[a];
    double uy = t[b + 1] - t[a + 1];
    double uz = t[b + 2] - t[a + 2];
    double vx = t[c] - t[a];
    double vy = t[c + 1] - t[a + 1];
    double vz = t[c + 2] - t[a + 2];
    double wx = px - t[a];
    double wy = py - t[a + 1];
    double wz = pz - t[a + 2];
    double uu = ux * ux + uy * uy + uz * uz;
    double uv = ux * vx + uy * vy + uz * vz;
    double vv = vx * vx + vy * vy + vz * vz;
    double d1 = ux * wx + uy * wy + uz * wz;
    double d2 = vx * wx + vy * wy + vz * wz;
    weighBy(d1, d2, d1 - uu, d2 - uv, d1 - uv, d2 - vv);
  }

  /** Ericson's d1 to d6: the point seen from corners a, b, c along the edges ab and ac. */
  private void weighBy(double d1, double d2, double d3, double d4, double d5, double d6) {
    double vc = d1 * d4 - d3 * d2;
    double vb = d5 * d2 - d1 * d6;
    double va = d3 * d6 - d5 * d4;
    if (d1 <= 0 && d2 <= 0) {
      weights(0, 0);
    } else if (d3 >= 0 && d4 <= d3) {
      weights(1, 0);
    } else if (vc <= 0 && d1 >= 0 && d3 <= 0) {
      weights(d1 / (d1 - d3), 0);
    } else if (d6 >= 0 && d5 <= d6) {
      weights(0, 1);
    } else if (vb <= 0 && d2 >= 0 && d6 <= 0) {
      weights(0, d2 / (d2 - d6));
    } else if (va <= 0 && d4 >= d3 && d5 >= d6) {
      double w = (d4 - d3) / ((d4 - d3) + (d5 - d6));
      weights(1 - w, w);
    } else {
      double scale = 1 / (va + vb + vc);
      weights(vb * scale, vc * scale);
    }
  }

  private void weights(double second, double third) {
    this.second = second;
    this.third = third;
  }

  /**
   * Between the segments a, b and c, d, given by offsets.
   *
   * @return the squared distance; the nearest points are left in {@link #on} and {@link #other}
   */
  public double square(double[] t, int a, int b, int c, int d) {
    double ux = t[b] - t[a];
    double uy = t[b + 1] - t[a + 1];
    double uz = t[b + 2] - t[a + 2];
    double vx = t[d] - t[c];
    double vy = t[d + 1] - t[c + 1];
    double vz = t[d + 2] - t[c + 2];
    double wx = t[a] - t[c];
    double wy = t[a + 1] - t[c + 1];
    double wz = t[a + 2] - t[c + 2];
    double uu = ux * ux + uy * uy + uz * uz;
    double vv = vx * vx + vy * vy + vz * vz;
    double uv = ux * vx + uy * vy + uz * vz;
    double uw = ux * wx + uy * wy + uz * wz;
    double vw = vx * wx + vy * wy + vz * wz;
    double cross = uu * vv - uv * uv;
    double s = cross > 0 ? clamp((uv * vw - uw * vv) / cross) : 0;
    double r = vv > 0 ? (uv * s + vw) / vv : 0;
    if (r < 0 || r > 1) {
      r = clamp(r);
      s = uu > 0 ? clamp((uv * r - uw) / uu) : 0;
    } else if (vv == 0 && uu > 0) {
      s = clamp(-uw / uu);
    }
    double sum = 0;
    for (int i = 0; i < 3; i++) {
      on[i] = t[a + i] + s * (t[b + i] - t[a + i]);
      other[i] = t[c + i] + r * (t[d + i] - t[c + i]);
      double step = on[i] - other[i];
      sum += step * step;
    }
    return sum;
  }

  private static double clamp(double x) {
    return Math.max(0, Math.min(1, x));
  }
}
