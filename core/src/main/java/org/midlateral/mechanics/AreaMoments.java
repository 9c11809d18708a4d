package org.midlateral.mechanics;

import java.util.List;

/**
 * Area and its moments, about the area's own centroid.
 *
 * @param area mm²
 * @param y medio-lateral coordinate of the centroid (mm)
 * @param n dorsal coordinate of the centroid (mm)
 * @param aboutY second moment about the medio-lateral axis, which resists flexion (mm⁴)
 * @param aboutN second moment about the dorsal axis (mm⁴)
 * @param product product of inertia (mm⁴)
 */
public record AreaMoments(
    double area, double y, double n, double aboutY, double aboutN, double product) {

  /** No area. */
  public static final AreaMoments NONE = new AreaMoments(0, 0, 0, 0, 0, 0);

  /** The moments of a region by Green's theorem over its loops, holes being clockwise. */
  public static AreaMoments of(List<Loop> loops) {
    double[] sum = new double[6];
    for (Loop loop : loops) {
      for (int i = 0; i < loop.size(); i++) {
        add(sum, loop.y(i), loop.n(i), loop.y(i + 1), loop.n(i + 1));
      }
    }
    double area = sum[0] / 2;
    if (!(area > 0)) {
      return NONE;
    }
    double y = sum[1] / 6 / area;
    double n = sum[2] / 6 / area;
    return new AreaMoments(
        area,
        y,
        n,
        sum[3] / 12 - area * n * n,
        sum[4] / 12 - area * y * y,
        sum[5] / 24 - area * y * n);
  }

  private static void add(double[] sum, double y0, double n0, double y1, double n1) {
    double cross = y0 * n1 - y1 * n0;
    sum[0] += cross;
    sum[1] += cross * (y0 + y1);
    sum[2] += cross * (n0 + n1);
    sum[3] += cross * (n0 * n0 + n0 * n1 + n1 * n1);
    sum[4] += cross * (y0 * y0 + y0 * y1 + y1 * y1);
    sum[5] += cross * (y0 * n1 + 2 * y0 * n0 + 2 * y1 * n1 + y1 * n0);
  }
}
