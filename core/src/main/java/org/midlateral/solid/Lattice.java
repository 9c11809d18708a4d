package org.midlateral.solid;

import java.util.Arrays;

/** Rows of points, each offset by half a step from the last, inside loops and clear of them. */
final class Lattice {
  /** Points keep this share of an edge's length from its ends, so that none comes to lie on it. */
  private static final double KEEP_OFF_EDGE = 0.6;

  private final double[] angle;
  private final double[] station;

  private Lattice(double[] angle, double[] station) {
    this.angle = angle;
    this.station = station;
  }

  /**
   * The lattice points inside the first loop and outside the others.
   *
   * @param angle of the loops' points, then of contours' (rad)
   * @param station of the same points (mm)
   * @param loopStart index of each loop's first point, and the number of points at the end
   * @param density spacing between points
   * @param keepOff least distance to a loop's point, as a share of the spacing
   */
  static Lattice inside(
      double[] angle,
      double[] station,
      int[] loopStart,
      Chart chart,
      SizingField density,
      double keepOff) {
    int n = angle.length;
    double[] u = new double[n];
    double[] v = new double[n];
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    double widest = 0;
    for (int i = 0; i < n; i++) {
      u[i] = chart.rho(station[i]) * density.stretched(angle[i]);
      v[i] = chart.v(station[i]);
      low = Math.min(low, v[i]);
      high = Math.max(high, v[i]);
      widest = Math.max(widest, Math.abs(u[i]));
    }
    Rows rows = Rows.between(low, high, widest, chart, density);
    for (int l = 0; l + 1 < loopStart.length; l++) {
      rows.toggle(u, v, loopStart[l], loopStart[l + 1]);
    }
    rows.fill();
    double[] longest = longestEdges(u, v, loopStart);
    for (int i = 0; i < n; i++) {
      rows.clear(
          u[i],
          v[i],
          density.stretched(angle[i]) * chart.taper(station[i]),
          i < longest.length
              ? Math.max(keepOff * density.spacing(station[i]), KEEP_OFF_EDGE * longest[i])
              : Contours.keepOff(density, station[i]));
    }
    return rows.collect(chart, density);
  }

  /** The longer of the two edges at each point of the loops. */
  private static double[] longestEdges(double[] u, double[] v, int[] loopStart) {
    double[] longest = new double[loopStart[loopStart.length - 1]];
    for (int l = 0; l + 1 < loopStart.length; l++) {
      for (int i = loopStart[l]; i < loopStart[l + 1]; i++) {
        int j = i + 1 < loopStart[l + 1] ? i + 1 : loopStart[l];
        double length = Math.hypot(u[j] - u[i], v[j] - v[i]);
        longest[i] = Math.max(longest[i], length);
        longest[j] = Math.max(longest[j], length);
      }
    }
    return longest;
  }

  int size() {
    return angle.length;
  }

  void copyTo(double[] angles, double[] stations, int from) {
    System.arraycopy(angle, 0, angles, from, angle.length);
    System.arraycopy(station, 0, stations, from, station.length);
  }

  /**
   * The rows being filled: row r at v[r], its points at (k - half[r]) steps, by turns half a step
   * on.
   */
  private record Rows(double[] v, double[] step, int[] half, boolean[][] in) {

    /** Rows that stand evenly between two ends, each as far from the last as its spacing asks. */
    static Rows between(double low, double high, double widest, Chart chart, SizingField density) {
      double[] at = new double[16];
      int n = 0;
      double next = low;
      while (next < high) {
        if (n == at.length) {
          at = Arrays.copyOf(at, 2 * n);
        }
        at[n++] = next;
        next += density.spacing(chart.station(next)) * Math.sqrt(3) / 2;
      }
      double stretch = (high - low) / (next - low);
      int rows = Math.max(0, n - 1);
      double[] v = new double[rows];
      double[] step = new double[rows];
      int[] half = new int[rows];
      boolean[][] in = new boolean[rows][];
      for (int r = 0; r < rows; r++) {
        v[r] = low + (at[r + 1] - low) * stretch;
        step[r] = density.spacing(chart.station(v[r]));
        half[r] = (int) Math.ceil(widest / step[r]) + 1;
        in[r] = new boolean[2 * half[r] + 1];
      }
      return new Rows(v, step, half, in);
    }

    private double shift(int row) {
      return row % 2 == 0 ? 0 : 0.5;
    }

    /** The first row at or above a height. */
    private int firstRow(double height) {
      int r = Arrays.binarySearch(v, height);
      return r >= 0 ? r : -r - 1;
    }

    /** Marks, row by row, the first point right of each crossing of a loop. */
    void toggle(double[] u, double[] w, int from, int to) {
      for (int i = from; i < to; i++) {
        int j = i + 1 < to ? i + 1 : from;
        double upper = Math.max(w[i], w[j]);
        for (int r = firstRow(Math.min(w[i], w[j])); r < v.length && v[r] < upper; r++) {
          double cross = u[i] + (u[j] - u[i]) * (v[r] - w[i]) / (w[j] - w[i]);
          int k = (int) Math.ceil(cross / step[r] - shift(r)) + half[r];
          in[r][Math.max(0, Math.min(2 * half[r], k))] ^= true;
        }
      }
    }

    /** Turns the marks into runs of inside points. */
    void fill() {
      for (boolean[] row : in) {
        boolean inside = false;
        for (int k = 0; k < row.length; k++) {
          inside ^= row[k];
          row[k] = inside;
        }
      }
    }

    /**
     * Takes out the points nearer than a distance to an edge point.
     *
     * @param shear how far a meridian leans over in the plane, du/dv
     */
    void clear(double u, double w, double shear, double distance) {
      for (int r = firstRow(w - distance); r < v.length && v[r] <= w + distance; r++) {
        double dv = v[r] - w;
        double reach = Math.sqrt(Math.max(0, distance * distance - dv * dv));
        double middle = u + shear * dv;
        int from = (int) Math.ceil((middle - reach) / step[r] - shift(r)) + half[r];
        int to = (int) Math.floor((middle + reach) / step[r] - shift(r)) + half[r];
        for (int k = Math.max(0, from); k <= Math.min(2 * half[r], to); k++) {
          in[r][k] = false;
        }
      }
    }

    Lattice collect(Chart chart, SizingField density) {
      int most = 0;
      for (boolean[] row : in) {
        most += row.length;
      }
      double[] angle = new double[most];
      double[] station = new double[most];
      int n = 0;
      for (int r = 0; r < v.length; r++) {
        double s = chart.station(v[r]);
        double rho = chart.rho(s);
        for (int k = 0; k <= 2 * half[r]; k++) {
          if (in[r][k]) {
            angle[n] = density.angle((k - half[r] + shift(r)) * step[r] / rho);
            station[n++] = s;
          }
        }
      }
      return new Lattice(Arrays.copyOf(angle, n), Arrays.copyOf(station, n));
    }
  }
}
