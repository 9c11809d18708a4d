package org.midlateral.mechanics.held;

import java.util.Arrays;
import org.midlateral.mechanics.finite.SurfacePoint;

/** Finds the triangle of a layer at a station and an angle. Holds nothing but the layer's map. */
final class LayerLocator {
  private static final double BIN = 1;

  private final double[] station;
  private final double[] turn;
  private final int[] corners;
  private final double from;

  /** Triangles that reach into each bin of stations. */
  private final int[][] bins;

  LayerLocator(ShellLayer layer) {
    station = layer.station;
    turn = layer.turn;
    corners = layer.corners;
    from = Arrays.stream(station).min().orElseThrow();
    double to = Arrays.stream(station).max().orElseThrow();
    bins = new int[(int) ((to - from) / BIN) + 1][];
    int[] count = new int[bins.length];
    visit((t, bin) -> count[bin]++);
    for (int b = 0; b < bins.length; b++) {
      bins[b] = new int[count[b]];
    }
    visit((t, bin) -> bins[bin][--count[bin]] = t);
  }

  private interface Visitor {
    void visit(int triangle, int bin);
  }

  private void visit(Visitor visitor) {
    for (int t = 0; t < corners.length / 3; t++) {
      double a = station[corners[3 * t]];
      double b = station[corners[3 * t + 1]];
      double c = station[corners[3 * t + 2]];
      int last = bin(Math.max(a, Math.max(b, c)));
      for (int k = bin(Math.min(a, Math.min(b, c))); k <= last; k++) {
        visitor.visit(t, k);
      }
    }
  }

  private int bin(double at) {
    return Math.max(0, Math.min(bins.length - 1, (int) Math.floor((at - from) / BIN)));
  }

  /**
   * The triangle at a place, or beside the edge the one nearest to holding it.
   *
   * @param atStation mm
   * @param atTurn angle about the centreline off the piece's midline (rad)
   */
  SurfacePoint find(double atStation, double atTurn) {
    SurfacePoint best = null;
    for (int t : bins[bin(atStation)]) {
      SurfacePoint spot = new SurfacePoint(t, weights(t, atStation, atTurn));
      if (best == null || spot.depth() > best.depth()) {
        best = spot;
      }
    }
    return best;
  }

  private double[] weights(int t, double x, double y) {
    int a = corners[3 * t];
    int b = corners[3 * t + 1];
    int c = corners[3 * t + 2];
    double bx = station[b] - station[a];
    double by = turn[b] - turn[a];
    double cx = station[c] - station[a];
    double cy = turn[c] - turn[a];
    double px = x - station[a];
    double py = y - turn[a];
    double twice = bx * cy - by * cx;
    double v = (px * cy - py * cx) / twice;
    double w = (bx * py - by * px) / twice;
    return new double[] {1 - v - w, v, w};
  }
}
