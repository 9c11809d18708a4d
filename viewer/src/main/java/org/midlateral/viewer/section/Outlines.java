package org.midlateral.viewer.section;

import java.util.List;
import org.midlateral.mechanics.Loop;

/** Distances in the plane of a section. */
final class Outlines {
  private Outlines() {}

  /** Least distance of the points of some lines from another line (mm). */
  static double distance(List<Loop> loops, Loop other) {
    double[] line = new double[2 * other.size() + 2];
    for (int i = 0; i <= other.size(); i++) {
      line[2 * i] = other.y(i);
      line[2 * i + 1] = other.n(i);
    }
    double least = Double.POSITIVE_INFINITY;
    for (Loop loop : loops) {
      for (int i = 0; i < loop.size(); i++) {
        least = Math.min(least, squared(line, loop.y(i), loop.n(i)));
      }
    }
    return Math.sqrt(least);
  }

  /** Square of the distance of a point from a line, given by its points one after another (mm²). */
  private static double squared(double[] line, double y, double n) {
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i + 3 < line.length; i += 2) {
      double ey = line[i + 2] - line[i];
      double en = line[i + 3] - line[i + 1];
      double ry = y - line[i];
      double rn = n - line[i + 1];
      double square = ey * ey + en * en;
      double along = square > 0 ? (ry * ey + rn * en) / square : 0;
      double share = Math.max(0, Math.min(1, along));
      double dy = ry - share * ey;
      double dn = rn - share * en;
      least = Math.min(least, dy * dy + dn * dn);
    }
    return least;
  }

  /** How far ahead of a point, along a unit direction, a line is first met (mm); or infinite. */
  static double ahead(Loop loop, double y, double n, double dy, double dn) {
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < loop.size(); i++) {
      double ey = loop.y(i + 1) - loop.y(i);
      double en = loop.n(i + 1) - loop.n(i);
      double det = dn * ey - dy * en;
      double ry = loop.y(i) - y;
      double rn = loop.n(i) - n;
      double along = (rn * ey - ry * en) / det;
      double share = (dy * rn - dn * ry) / det;
      if (share >= 0 && share <= 1 && along >= 0) {
        least = Math.min(least, along);
      }
    }
    return least;
  }
}
