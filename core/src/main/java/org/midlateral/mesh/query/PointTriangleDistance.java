package org.midlateral.mesh.query;

/**
 * The place of a triangle that is nearest to a point, in doubles. A scratch object for one thread's
 * loop: each question leaves the place in {@link #on}.
 *
 * <p>The foot of the perpendicular onto the triangle's plane is the place if none of its weights is
 * negative. Else the place is on a side that the foot lies outside of, one opposite a corner with a
 * negative weight: seen from the place, the foot lies along the outward normal of a side, or in a
 * corner along a sum of two with positive shares, and so outside one of these sides. Where it lies
 * outside two sides f and g from one corner, the way to it from there is -m f - n g with m and n
 * positive; projected onto f and onto g it cannot come out positive on both, which would need
 * (f·g)² > f² g². So a side onto which it comes out positive holds the place, and without one the
 * corner.
 */
public final class PointTriangleDistance {
  /** Squared sine of an angle under which a triangle counts as without area: less is rounding. */
  private static final double FLAT = 1e-14;

  final double[] on = new double[3];

  /** Weights of the second and the third corner at the last place. */
  private double second;

  private double third;

  /**
   * From a point to a triangle, corners at the offsets a, b, c of an array.
   *
   * @return the squared distance; the nearest place of the triangle is left in {@link #on}
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
    double wu = wx * ux + wy * uy + wz * uz;
    double wv = wx * vx + wy * vy + wz * vz;
    weigh(uu, uv, vv, wu, wv);
  }

  /**
   * By the sides u and v from the first corner and the way w to the point: the foot's weights solve
   * (w - second u - third v)·u = 0 and likewise by v, and come times the determinant of that.
   */
  private void weigh(double uu, double uv, double vv, double wu, double wv) {
    double squares = uu * vv;
    double whole = squares - uv * uv;
    double atB = wu * vv - wv * uv;
    double atC = wv * uu - wu * uv;
    double atA = whole - atB - atC;
    boolean onU;
    boolean onV;
    if (whole > FLAT * squares) {
      if (atA >= 0 && atB >= 0 && atC >= 0) {
        second = atB / whole;
        third = atC / whole;
        return;
      }
      onU = atC < 0 && (atB >= 0 || wu > 0) && (atA >= 0 || wu < uu);
      onV = atB < 0 && (atA >= 0 || wv < vv);
    } else {
      // A triangle without area is its longest side.
      double opposite = uu - 2 * uv + vv;
      onU = uu >= vv && uu >= opposite;
      onV = vv >= opposite;
    }
    if (onU) {
      second = share(wu, uu);
      third = 0;
    } else if (onV) {
      second = 0;
      third = share(wv, vv);
    } else {
      third = share(uu - uv - wu + wv, uu - 2 * uv + vv);
      second = 1 - third;
    }
  }

  /**
   * How far along a side its foot lies, no farther than its ends; both numbers times its length.
   */
  private static double share(double along, double length) {
    if (along <= 0) {
      return 0;
    }
    return along < length ? along / length : 1;
  }
}
