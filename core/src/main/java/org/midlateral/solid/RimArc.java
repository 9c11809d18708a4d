package org.midlateral.solid;

import org.midlateral.accuracy.ErrorBudget;

/**
 * The half circle round a rim as a row of strips. Their corners stand on the circle at both ends
 * and at the crest, where the finished edge is, and between these a little outside, so that the
 * strips enclose the half disc's area: a section cut through the solid then has the area, and
 * nearly the second moments, of the round rim.
 *
 * @param strips their number, even and at least 6, since every second line stands half a step on
 */
record RimArc(int strips) {
  /** Width of a strip over the edge length, at most. */
  private static final double WIDEST = 0.5;

  /** The arc for a rim. */
  static RimArc of(double radius, double edgeLength) {
    int strips = 2 * (int) Math.ceil(Math.max(3, Math.PI * radius / (WIDEST * edgeLength) / 2));
    while (radius * (new RimArc(strips).stretch() - 1) > ErrorBudget.CHORD_ROUND_RIM) {
      strips += 2;
    }
    return new RimArc(strips);
  }

  /** Radius of a line's corners over the circle's; lines 0 and the last are the faces' edges. */
  double radius(int line) {
    return line % (strips / 2) == 0 ? 1 : stretch();
  }

  /**
   * With n strips of angle d and corners at 1, x, ... x, 1, x, ... x, 1, they enclose sin d (4 x +
   * (n - 4) x²) / 2 of a squared radius, which is to be pi / 2.
   */
  private double stretch() {
    double inside = strips - 4;
    double area = Math.PI / Math.sin(Math.PI / strips);
    return (Math.sqrt(4 + inside * area) - 2) / inside;
  }

  /** How far the strips stand off a circle of some radius, outside or inside (mm). */
  double error(double radius) {
    double angle = Math.PI / strips;
    double atEnd = Math.hypot(1 + stretch() * Math.cos(angle), stretch() * Math.sin(angle)) / 2;
    return radius * Math.max(stretch() - 1, 1 - Math.min(atEnd, stretch() * Math.cos(angle / 2)));
  }
}
