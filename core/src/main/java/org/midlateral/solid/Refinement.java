package org.midlateral.solid;

import org.midlateral.accuracy.ErrorBudget;
import org.midlateral.mesh.plane.DelaunayMesh;
import org.midlateral.mesh.plane.PlanePoints;
import org.midlateral.mesh.plane.PlaneTriangulation;

/**
 * Adds points to a triangulated domain where flat triangles would stand too far from the surfaces
 * they are lifted to, or come out as slivers there (G9). An edge stands off them at its middle by
 * dq . dn / 8, the difference of its ends times that of their normals, to fourth order; a triangle
 * at its middle by four ninths of what its edges do together.
 */
final class Refinement {
  /** Edges are not halved under this length (mm). */
  private static final double SHORTEST = 0.25;

  /**
   * An edge is halved no further than to this share of its triangle's longest, which goes first.
   */
  private static final double SLENDER = 0.85;

  /** A triangle's longest edge is halved where it has a smaller angle than this. */
  private static final double SMALLEST = Math.toRadians(13);

  private static final double COSINE = Math.cos(SMALLEST);

  private static final int MOST_ROUNDS = 8;

  private final Lifted points;
  private final Chart chart;
  private final double limit;
  private final DelaunayMesh mesh;

  /** Of the triangle looked at last: by side, how far its middle stands off, inside and outside. */
  private final double[] inner = new double[3];

  private final double[] outer = new double[3];

  /** And its squared length (mm²). */
  private final double[] square = new double[3];

  private final double[] outerSquare = new double[3];

  private Refinement(Lifted points, PlaneTriangulation triangles, Chart chart, double fineness) {
    this.points = points;
    this.chart = chart;
    this.limit = ErrorBudget.CHORD_OF_FACES * fineness * fineness;
    this.mesh = new DelaunayMesh(inPlane(points, chart), triangles);
  }

  /** The points in the plane that keeps angles. */
  private static PlanePoints inPlane(Lifted points, Chart chart) {
    double[] x = new double[points.size()];
    double[] y = new double[points.size()];
    for (int i = 0; i < x.length; i++) {
      x[i] = points.angle(i);
      boolean sameRow = i > 0 && points.station(i) == points.station(i - 1);
      y[i] = sameRow ? y[i - 1] : chart.mu(points.station(i));
    }
    return new PlanePoints(x, y);
  }

  /**
   * Refines.
   *
   * @param points receives the points that are added
   * @param triangles to begin with, each counter-clockwise in the chart
   * @param fineness 1 as usual; less makes the triangles so much smaller
   * @return corners of the triangles
   */
  static int[] of(Lifted points, PlaneTriangulation triangles, Chart chart, double fineness) {
    Refinement refinement = new Refinement(points, triangles, chart, fineness);
    boolean more = true;
    for (int i = 0; i < MOST_ROUNDS && more; i++) {
      more = refinement.round();
    }
    return refinement.mesh.corners();
  }

  /**
   * Looks at each triangle there is, if it has not stood the same test before; tells whether one
   * was divided.
   */
  private boolean round() {
    int before = points.size();
    int end = mesh.sides();
    for (int t = 0; t < end; t += 3) {
      int side = mesh.takeChange(t / 3) ? toHalve(t) : -1;
      if (side >= 0) {
        halve(side);
      }
    }
    return points.size() > before;
  }

  /** Halves an edge, unless its middle in the plane lies beyond the triangles beside it. */
  private void halve(int side) {
    int a = mesh.from(side);
    int b = mesh.to(side);
    double angle = (points.angle(a) + points.angle(b)) / 2;
    double station = (points.station(a) + points.station(b)) / 2;
    if (mesh.split(side, angle, chart.mu(station))) {
      points.add(angle, station, a);
    }
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
      return isSliver(square) || isSliver(outerSquare) ? t + longest : -1;
    }
    return t + (square[worst] < SLENDER * SLENDER * square[longest] ? longest : worst);
  }

  /** Whether the smallest angle, that between the longer two of three edges, is too small. */
  private static boolean isSliver(double[] square) {
    double a = square[0];
    double b = square[1];
    double c = square[2];
    double shortest = Math.min(a, Math.min(b, c));
    double longest = Math.max(a, Math.max(b, c));
    double between = a + b + c - shortest - longest;
    double cosine = between + longest - shortest;
    return cosine > 0 && cosine * cosine > 4 * COSINE * COSINE * between * longest;
  }

  private double error(int i) {
    return Math.max(Math.abs(inner[i]), Math.abs(outer[i]));
  }

  private void measure(int t, int i) {
    int a = mesh.from(t + i);
    int b = mesh.to(t + i);
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
    double thickness = (points.thickness(a) + points.thickness(b)) / 2;
    outerSquare[i] = qq + thickness * (2 * qn + thickness * nn);
    inner[i] = qn / 8;
    outer[i] = (qn + thickness * nn) / 8;
  }

  /** Not on the edge of the whole, nor on the slope of what is raised. */
  private boolean isDivisible(int side, double square) {
    return !mesh.isBoundary(side)
        && square > SHORTEST * SHORTEST
        && points.thickness(mesh.from(side)) == points.thickness(mesh.to(side));
  }
}
