package org.midlateral.solid;

import java.util.Arrays;

/**
 * Evens out the points next to the loops: between an edge and the first row of the lattice there is
 * more or less room by chance, and moving the nearest points to the mean of their neighbours shares
 * it out.
 */
final class LaplacianSmoothing {
  /** Points up to this many edges off a loop move. */
  private static final int LAYERS = 5;

  private static final int SWEEPS = 8;

  private LaplacianSmoothing() {}

  /**
   * Moves points in place.
   *
   * @param angle of the points, those of the loops first
   * @param station of the points
   * @param corners of the triangles
   * @param onLoops number of points on the loops
   * @param fixed number of points that stay, those of the loops among them
   * @param chart of the piece
   */
  static void nearLoops(
      double[] angle, double[] station, int[] corners, int onLoops, int fixed, Chart chart) {
    int n = angle.length;
    byte[] layer = layers(n, corners, onLoops, fixed);
    // Averaged in the view along the finger and in the length along it: fair over the pulp too.
    double[][] at = new double[3][n];
    int[] steps = steps(corners, layer);
    boolean[] met = new boolean[n];
    for (int i : steps) {
      met[i] = true;
    }
    for (int i = 0; i < n; i++) {
      if (!met[i]) {
        continue;
      }
      double rho = chart.rho(station[i]);
      at[0][i] = rho * Math.sin(angle[i]);
      at[1][i] = rho * Math.cos(angle[i]);
      at[2][i] = chart.v(station[i]);
    }
    for (int sweep = 0; sweep < SWEEPS; sweep++) {
      sweep(at, steps, layer, fixed);
    }
    for (int i = fixed; i < n; i++) {
      if (layer[i] > 0) {
        angle[i] = Math.atan2(at[0][i], at[1][i]);
        station[i] = chart.station(at[2][i]);
      }
    }
  }

  /** From each moving point to a neighbour, pair after pair: round it every one is met once. */
  private static int[] steps(int[] corners, byte[] layer) {
    int[] steps = new int[2 * corners.length];
    int n = 0;
    for (int t = 0; t < corners.length; t++) {
      if (layer[corners[t]] > 0) {
        steps[n++] = corners[t];
        steps[n++] = corners[t % 3 == 2 ? t - 2 : t + 1];
      }
    }
    return Arrays.copyOf(steps, n);
  }

  private static void sweep(double[][] at, int[] steps, byte[] layer, int fixed) {
    int n = layer.length;
    double[][] sum = new double[3][n];
    int[] count = new int[n];
    for (int t = 0; t < steps.length; t += 2) {
      for (int k = 0; k < 3; k++) {
        sum[k][steps[t]] += at[k][steps[t + 1]];
      }
      count[steps[t]]++;
    }
    for (int i = fixed; i < n; i++) {
      for (int k = 0; count[i] > 0 && k < 3; k++) {
        at[k][i] = sum[k][i] / count[i];
      }
    }
  }

  /** 0 for points that stay; the number of edges to the nearest loop for those that move. */
  private static byte[] layers(int n, int[] corners, int onLoops, int fixed) {
    byte[] layer = new byte[n];
    for (int k = 1; k <= LAYERS; k++) {
      for (int t = 0; t < corners.length; t += 3) {
        boolean near = false;
        for (int c = 0; c < 3; c++) {
          int v = corners[t + c];
          near |= k == 1 ? v < onLoops : layer[v] == k - 1;
        }
        for (int c = 0; near && c < 3; c++) {
          int v = corners[t + c];
          if (v >= fixed && layer[v] == 0) {
            layer[v] = (byte) k;
          }
        }
      }
    }
    return layer;
  }
}
