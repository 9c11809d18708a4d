package org.midlateral.viewer.section;

import java.util.List;
import org.midlateral.mechanics.Loop;

/** Distances in the plane of a section. */
final class Outlines {
  private Outlines() {}

  /** Distance of a point from a line (mm). */
  static double distance(Loop loop, double y, double n) {
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < loop.size(); i++) {
      double ey = loop.y(i + 1) - loop.y(i);
      double en = loop.n(i + 1) - loop.n(i);
      double square = ey * ey + en * en;
      double along = square > 0 ? ((y - loop.y(i)) * ey + (n - loop.n(i)) * en) / square : 0;
      double share = Math.max(0, Math.min(1, along));
      least = Math.min(least, Math.hypot(y - loop.y(i) - share * ey, n - loop.n(i) - share * en));
    }
    return least;
  }

  /** Least distance of the points of some lines from another line (mm). */
  static double distance(List<Loop> loops, Loop other) {
    double least = Double.POSITIVE_INFINITY;
    for (Loop loop : loops) {
      for (int i = 0; i < loop.size(); i++) {
        least = Math.min(least, distance(other, loop.y(i), loop.n(i)));
      }
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
