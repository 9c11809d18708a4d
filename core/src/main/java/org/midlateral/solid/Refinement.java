package org.midlateral.solid;

import java.util.Arrays;
import org.midlateral.accuracy.ErrorBudget;
import org.midlateral.mesh.HalfEdges;

/**
 * Adds points to a triangulated domain where flat triangles would stand too far from the surfaces
 * they are lifted to (G9). An edge stands off them at its middle by dq . dn / 8, the difference of
 * its ends times that of their normals, to fourth order; a triangle at its middle by four ninths of
 * what its edges do together.
 */
final class Refinement {
  /** Edges are not halved under this length (mm). */
  private static final double SHORTEST = 0.4;

  /**
   * An edge is halved no further than to this share of its triangle's longest, which goes first.
   */
  private static final double SLENDER = 0.85;

  private static final int MOST_ROUNDS = 8;

  private final Lifted points;
  private final Chart chart;
  private final double limit;
  private final Triangulation net;

  /** Of the triangle looked at last: by side, how far its middle stands off, inside and outside. */
  private final double[] inner = new double[3];

  private final double[] outer = new double[3];
  private final double[] square = new double[3];

  private Refinement(Lifted points, int[] corners, Chart chart, double fineness) {
    this.points = points;
    this.chart = chart;
    this.limit = ErrorBudget.CHORD_OF_FACES * fineness * fineness;
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
   * @param fineness 1 as usual; less makes the triangles so much smaller
   * @return corners of the triangles
   */
  static int[] of(Lifted points, int[] corners, Chart chart, double fineness) {
    Refinement refinement = new Refinement(points, corners, chart, fineness);
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

  /** Looks once at each triangle there is; tells whether one was divided. */
  private boolean round() {
    int before = points.size();
    int end = net.used;
    for (int t = 0; t < end; t += 3) {
      int side = toHalve(t);
      if (side >= 0) {
        int middle = points.addMiddle(net.corner[side], net.corner[HalfEdges.after(side)]);
        place(middle);
        net.split(side, middle);
      }
    }
    return points.size() > before;
  }

  /** The side of a triangle to be halved, or -1 where it may stay. */
  private int toHalve(int t) {
    int worst = -1;
    int longest = -1;
    for (int i = 0; i < 3; i++) {
      measure(t, i);
      if (isDivisible(t + i, square[i])) {
        worst = worst < 0 || error(i) > error(worst) ? i : worst;
        longest = longest < 0 || square[i] > square[longest] ? i : longest;
      }
    }
    if (worst < 0) {
      return -1;
    }
    double in = Math.abs(inner[0] + inner[1] + inner[2]);
    double out = Math.abs(outer[0] + outer[1] + outer[2]);
    double middle = 4.0 / 9 * Math.max(in, out);
    if (Math.max(error(worst), middle) <= limit) {
      return -1;
    }
    return t + (square[worst] < SLENDER * SLENDER * square[longest] ? longest : worst);
  }

  private double error(int i) {
    return Math.max(Math.abs(inner[i]), Math.abs(outer[i]));
  }

  private void measure(int t, int i) {
    int a = net.corner[t + i];
    int b = net.corner[HalfEdges.after(t + i)];
    double qq = 0;
    double qn = 0;
    double nn = 0;
    for (int k = 0; k < 3; k++) {
      double dq = points.frame(b, k) - points.frame(a, k);
      double dn = points.frame(b, k + 3) - points.frame(a, k + 3);
      qq += dq * dq;
      qn += dq * dn;
      nn += dn * dn;
    }
    square[i] = qq;
    inner[i] = qn / 8;
    outer[i] = (qn + (points.thickness(a) + points.thickness(b)) / 2 * nn) / 8;
  }

  /** Not on the edge of the whole, nor on the slope of what is raised. */
  private boolean isDivisible(int side, double square) {
    return net.twin[side] >= 0
        && square > SHORTEST * SHORTEST
        && points.thickness(net.corner[side])
            == points.thickness(net.corner[HalfEdges.after(side)]);
  }
}
