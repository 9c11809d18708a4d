package org.midlateral.solid;

import java.util.Arrays;
import java.util.List;
import org.midlateral.mesh.plane.DelaunayTriangulation;
import org.midlateral.mesh.plane.PlaneTriangulation;

/**
 * The triangulated domain of a piece: points by angle off its midline and station, triangles
 * counter-clockwise seen from outside the skin. The points of the loops come first, loop after
 * loop.
 */
final class PlaneMesh {
  /** Points keep this share of the spacing from the edge, so that every edge stays a triangle's. */
  private static final double KEEP_OFF = 0.53;

  private final double[] angle;
  private final double[] station;
  private final PlaneTriangulation triangles;
  private final int onLoops;

  private PlaneMesh(double[] angle, double[] station, PlaneTriangulation triangles, int onLoops) {
    this.angle = angle;
    this.station = station;
    this.triangles = triangles;
    this.onLoops = onLoops;
  }

  /**
   * Fills the domain inside the first loop and outside the others with near-equilateral triangles.
   *
   * @param contours further points that must be kept
   * @param density spacing of the points on the mid-surface
   */
  static PlaneMesh fill(List<EdgeLoop> loops, Contours contours, Chart chart, SizingField density) {
    int onLoops = loops.stream().mapToInt(EdgeLoop::vertices).sum();
    double[] angle = new double[onLoops];
    double[] station = new double[onLoops];
    int[] loopStart = new int[loops.size() + 1];
    int n = 0;
    for (int l = 0; l < loops.size(); l++) {
      loopStart[l] = n;
      for (int i = 0; i < loops.get(l).vertices(); i++) {
        angle[n] = loops.get(l).angle(2 * i);
        station[n++] = loops.get(l).station(2 * i);
      }
    }
    loopStart[loops.size()] = n;
    angle = contours.anglesAfter(angle);
    station = contours.stationsAfter(station);
    int fixed = onLoops + contours.size();
    Lattice lattice = Lattice.inside(angle, station, loopStart, chart, density, KEEP_OFF);
    int all = fixed + lattice.size();
    angle = Arrays.copyOf(angle, all);
    station = Arrays.copyOf(station, all);
    lattice.copyTo(angle, station, fixed);
    double[] mu = new double[all];
    for (int i = 0; i < all; i++) {
      mu[i] = i > fixed && station[i] == station[i - 1] ? mu[i - 1] : chart.mu(station[i]);
    }
    double[] stretched = new double[all];
    for (int i = 0; i < all; i++) {
      stretched[i] = density.stretched(angle[i]);
    }
    PlaneTriangulation triangles = within(DelaunayTriangulation.of(stretched, mu), loopStart);
    LaplacianSmoothing.nearLoops(angle, station, triangles.corners(), onLoops, fixed, chart);
    return new PlaneMesh(angle, station, triangles, onLoops);
  }

  /**
   * Drops the triangles outside the domain. Every loop's edge is an edge of the triangulation, so
   * only a triangle with all corners on one loop can lie outside; it does when its corners, taken
   * in the loop's order, turn clockwise.
   */
  private static PlaneTriangulation within(PlaneTriangulation hull, int[] loopStart) {
    int[] loop = new int[loopStart[loopStart.length - 1]];
    for (int l = 0; l + 1 < loopStart.length; l++) {
      Arrays.fill(loop, loopStart[l], loopStart[l + 1], l);
    }
    return hull.only(
        side -> {
          int a = hull.corners()[side];
          int b = hull.corners()[side + 1];
          int c = hull.corners()[side + 2];
          boolean oneLoop =
              Math.max(a, Math.max(b, c)) < loop.length && loop[a] == loop[b] && loop[b] == loop[c];
          boolean ascending = a < b && b < c || b < c && c < a || c < a && a < b;
          return !oneLoop || ascending;
        });
  }

  int size() {
    return angle.length;
  }

  /** Number of points on the loops; they come first. */
  int onLoops() {
    return onLoops;
  }

  double[] angles() {
    return angle.clone();
  }

  double[] stations() {
    return station.clone();
  }

  PlaneTriangulation triangles() {
    return triangles;
  }
}
