package org.midlateral.mesh.plane;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Points with whole coordinates on one circle about the origin, exactly. */
final class IntegerCircle {
  /** 5 · 13 · 17: its square is a sum of two squares in 108 ways, signs and order counted. */
  static final int RADIUS = 1105;

  private static final List<double[]> POINTS = points();

  private IntegerCircle() {}

  /** All of them, counter-clockwise. */
  static List<double[]> points() {
    List<double[]> found = new ArrayList<>();
    for (int x = -RADIUS; x <= RADIUS; x++) {
      for (int y = -RADIUS; y <= RADIUS; y++) {
        if (x * x + y * y == RADIUS * RADIUS) {
          found.add(new double[] {x, y});
        }
      }
    }
    found.sort(Comparator.comparingDouble(p -> Math.atan2(p[1], p[0])));
    return found;
  }

  /** The one at an angle (rad), or the next before it. */
  static double[] at(double angle) {
    double share = angle / (2 * Math.PI);
    return POINTS.get((int) ((share - Math.floor(share)) * POINTS.size()));
  }
}
