package org.midlateral.cut;

import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.solvers.BisectionSolver;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.CoordinateList;

/**
 * A distal corner on the +g side: the flank turns into the end through a 45 degree cut whose two
 * bends are arcs, so that the edge has one tangent everywhere.
 *
 * @param radius of both arcs (mm)
 * @param chamfer length of the straight part between them (mm)
 */
public record Corner(double radius, double chamfer) {
  /** No corner is left sharper than this (mm). */
  public static final double LEAST_RADIUS = 1.5;

  private static final double STEP = 0.2;

  /**
   * The corner whose 45 degree cut takes this length off flank and end before it is rounded. The
   * arcs take up most of the cut.
   */
  public static Corner cut(double length) {
    double radius = Math.max(LEAST_RADIUS, 1.5 * length);
    double tangent = radius * Math.tan(Math.PI / 8);
    return new Corner(radius, Math.max(0, length * Math.sqrt(2) - 2 * tangent));
  }

  /** Direction angle of the flank from the station axis toward -g (rad), 0 where it is straight. */
  private static double lean(DoubleUnaryOperator flank, double station) {
    double h = 1e-4;
    double rise = (flank.applyAsDouble(station + h) - flank.applyAsDouble(station - h)) / (2 * h);
    return Math.atan(-rise);
  }

  /** How far distally the corner reaches past the point at which it leaves the flank (mm). */
  private double gain(double lean) {
    double cut = Math.max(lean, Math.PI / 4);
    return radius * (Math.sin(cut) - Math.sin(lean))
        + (lean < Math.PI / 4 ? chamfer * Math.cos(cut) : 0)
        + radius * (1 - Math.sin(cut));
  }

  /**
   * Station at which the corner must leave the flank to end at the given station (mm).
   *
   * @param flank half-girth of the flank by station (mm)
   */
  public double start(DoubleUnaryOperator flank, double end) {
    return new BisectionSolver(1e-10)
        .solve(
            200, s -> s + gain(lean(flank, s)) - end, end - 2 * radius - chamfer - 1, end - 1e-3);
  }

  /**
   * Appends the corner from the flank's point at start to the end line.
   *
   * @return the girth at which it reaches the end line (mm)
   */
  public double append(DoubleUnaryOperator flank, double start, CoordinateList path) {
    double lean = lean(flank, start);
    double g = flank.applyAsDouble(start);
    double s = start;
    double cut = Math.max(lean, Math.PI / 4);
    double[] at = arc(g, s, lean, cut, path);
    if (lean < Math.PI / 4) {
      at = new double[] {at[0] - chamfer * Math.sin(cut), at[1] + chamfer * Math.cos(cut)};
      path.add(new Coordinate(at[0], at[1]), false);
    }
    return arc(at[0], at[1], cut, Math.PI / 2, path)[0];
  }

  private double[] arc(double g, double s, double from, double to, CoordinateList path) {
    int n = (int) Math.ceil(radius * (to - from) / STEP);
    double[] at = {g, s};
    for (int i = 1; i <= n; i++) {
      double angle = from + (to - from) * i / n;
      at[0] = g - radius * (Math.cos(from) - Math.cos(angle));
      at[1] = s + radius * (Math.sin(angle) - Math.sin(from));
      path.add(new Coordinate(at[0], at[1]), false);
    }
    return at;
  }
}
