package org.midlateral.solid;

import java.util.Arrays;

/**
 * Adds points to a triangulated domain where flat triangles would stand too far from the surfaces
 * they are lifted to (G9). An edge stands off them at its middle as {@link Lifted#chord} tells; a
 * triangle at its middle by four ninths of what its edges do together. Half of it will be taken off
 * by {@link Balance}, except at the loops, whose points stay where they are.
 */
final class Refinement {
  /** Chord error aimed at (mm); the bound on what is measured is a little larger. */
  private static final double LIMIT = 0.0165;

  /** Edges are not halved under this length (mm). */
  private static final double SHORTEST = 0.4;

  /**
   * An edge is halved no further than to this share of its triangle's longest, which goes first.
   */
  private static final double SLENDER = 0.85;

  private static final int MOST_ROUNDS = 8;

  private final Lifted points;
  private final Chart chart;
  private final Balance balance;
  private final double limit;
  private final Triangulation net;

  /** Corners of the triangles at the last look. */
  private int[] seen = {};

  /** Of the triangle looked at last: its sides as {@link Lifted#chord} tells of them. */
  private final double[][] side = new double[3][3];

  private Refinement(Lifted points, int[] corners, int onLoops, Chart chart, double fineness) {
    this.points = points;
    this.balance = new Balance(points, onLoops);
    this.chart = chart;
    this.limit = LIMIT * fineness * fineness;
    int n = points.size();
    this.net = Triangulation.of(new double[n], new double[n], corners);
    for (int i = 0; i < n; i++) {
      place(i);
    }
  }

  /**
   * Refines.
   *
   * @param points receives the points that are added
   * @param corners of the triangles to begin with, each counter-clockwise in the chart
   * @param onLoops the first so many points stay on the surfaces
   * @param fineness 1 as usual; less makes the triangles so much smaller
   * @return corners of the triangles
   */
  static int[] of(Lifted points, int[] corners, int onLoops, Chart chart, double fineness) {
    Refinement refinement = new Refinement(points, corners, onLoops, chart, fineness);
    boolean more = true;
    for (int i = 0; i < MOST_ROUNDS && more; i++) {
      more = refinement.round();
    }
    return refinement.net.corners();
  }

  /** Enters a point into the plane that keeps angles. */
  private void place(int i) {
    if (i == net.x.length) {
      net.x = Arrays.copyOf(net.x, i + i / 8 + 16);
      net.y = Arrays.copyOf(net.y, net.x.length);
    }
    net.x[i] = points.angle(i);
    net.y[i] = chart.mu(points.station(i));
  }

  /** Looks once at each triangle that is not as it was; tells whether one was divided. */
  private boolean round() {
    int before = points.size();
    boolean[] fresh = fresh();
    balance.renew(seen, fresh);
    int end = net.used;
    for (int t = 0; t < end; t += 3) {
      // Those of points added in this round are left to the next, which balances them.
      int newest = Math.max(net.corner[t], Math.max(net.corner[t + 1], net.corner[t + 2]));
      int side = newest < before && anyOf(fresh, net.corner, t) ? toHalve(t) : -1;
      if (side >= 0) {
        int middle = points.addMiddle(net.corner[side], net.corner[Sides.after(side)]);
        place(middle);
        net.split(side, middle);
      }
    }
    return points.size() > before;
  }

  /** Which points have other triangles than at the last look; takes note of those they have. */
  private boolean[] fresh() {
    boolean[] fresh = new boolean[points.size()];
    int[] now = net.corners();
    for (int t = 0; t < now.length; t += 3) {
      if (t >= seen.length || !Arrays.equals(now, t, t + 3, seen, t, t + 3)) {
        for (int i = t; i < t + 3; i++) {
          fresh[now[i]] = true;
          fresh[i < seen.length ? seen[i] : now[i]] = true;
        }
      }
    }
    seen = now;
    return fresh;
  }

  /** Whether some corner of a triangle is marked. */
  static boolean anyOf(boolean[] marked, int[] corners, int t) {
    return marked[corners[t]] || marked[corners[t + 1]] || marked[corners[t + 2]];
  }

  /** The side of a triangle to be halved, or -1 where it may stay. */
  private int toHalve(int t) {
    int worst = -1;
    int longest = -1;
    double[] middle = new double[3];
    for (int i = 0; i < 3; i++) {
      int a = net.corner[t + i];
      int b = net.corner[Sides.after(t + i)];
      points.chord(a, b, side[i]);
      middle[1] += 4.0 / 9 * side[i][1] - balance.inner(a) / 3;
      middle[2] += 4.0 / 9 * side[i][2] - balance.outer(a) / 3;
      side[i][1] -= (balance.inner(a) + balance.inner(b)) / 2;
      side[i][2] -= (balance.outer(a) + balance.outer(b)) / 2;
      if (isDivisible(t + i, side[i][0])) {
        worst = worst < 0 || error(side[i]) > error(side[worst]) ? i : worst;
        longest = longest < 0 || side[i][0] > side[longest][0] ? i : longest;
      }
    }
    if (worst < 0 || Math.max(error(side[worst]), error(middle)) <= limit) {
      return -1;
    }
    return t + (side[worst][0] < SLENDER * SLENDER * side[longest][0] ? longest : worst);
  }

  private static double error(double[] off) {
    return Math.max(Math.abs(off[1]), Math.abs(off[2]));
  }

  /** Not on the edge of the whole, nor on the slope of what is raised. */
  private boolean isDivisible(int side, double square) {
    return net.twin[side] >= 0
        && square > SHORTEST * SHORTEST
        && points.thickness(net.corner[side]) == points.thickness(net.corner[Sides.after(side)]);
  }
}
