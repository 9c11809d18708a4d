package org.midlateral.viewer.section;

import java.util.List;

/**
 * Area and second moment of a section, by Green's theorem over its loops.
 *
 * @param area mm²
 * @param height of the centroid over the centreline, dorsally (mm)
 * @param inertia second moment about the medio-lateral axis through the centroid (mm⁴)
 */
public record AreaMoments(double area, double height, double inertia) {

  /** The moments of what some loops enclose, those around holes running the other way. */
  public static AreaMoments of(List<Loop> loops) {
    double area = 0;
    double first = 0;
    double second = 0;
    for (Loop loop : loops) {
      for (int i = 0; i < loop.size(); i++) {
        double y0 = loop.at(i, 0);
        double z0 = loop.at(i, 1);
        double y1 = loop.at(i + 1, 0);
        double z1 = loop.at(i + 1, 1);
        double cross = y0 * z1 - y1 * z0;
        area += cross / 2;
        first += cross * (z0 + z1) / 6;
        second += cross * (z0 * z0 + z0 * z1 + z1 * z1) / 12;
      }
    }
    double height = area == 0 ? 0 : first / area;
    return new AreaMoments(area, height, second - area * height * height);
  }
}
