package org.midlateral.solid;

import java.util.Arrays;

/** Rows of points, each offset by half a step from the last, inside loops and clear of them. */
final class Lattice {
  private final double[] angle;
  private final double[] station;

  private Lattice(double[] angle, double[] station) {
    this.angle = angle;
    this.station = station;
  }

  /**
   * The lattice points inside the first loop and outside the others.
   *
   * @param angle of the loops' points (rad)
   * @param station of the loops' points (mm)
   * @param loopStart index of each loop's first point, and the number of points at the end
   * @param spacing between points (mm)
   * @param keepOff least distance to a loop's point (mm)
   */
  static Lattice inside(
      double[] angle,
      double[] station,
      int[] loopStart,
      Chart chart,
      double spacing,
      double keepOff) {
    int n = angle.length;
    double[] u = new double[n];
    double[] v = new double[n];
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    double widest = 0;
    for (int i = 0; i < n; i++) {
      u[i] = chart.rho(station[i]) * angle[i];
      v[i] = chart.v(station[i]);
      low = Math.min(low, v[i]);
      high = Math.max(high, v[i]);
      widest = Math.max(widest, Math.abs(u[i]));
    }
    double rise = spacing * Math.sqrt(3) / 2;
    int rows = (int) Math.floor((high - low) / rise);
    if (rows < 1) {
      return new Lattice(new double[0], new double[0]);
    }
    // Rows stand evenly between the two ends.
    rise = (high - low) / (rows + 1);
    int half = (int) Math.ceil(widest / spacing) + 1;
    boolean[][] in = new boolean[rows][2 * half + 1];
    Rows grid = new Rows(low, rise, spacing, half, in);
    for (int l = 0; l + 1 < loopStart.length; l++) {
      grid.toggle(u, v, loopStart[l], loopStart[l + 1]);
    }
    grid.fill();
    for (int i = 0; i < n; i++) {
      grid.clear(u[i], v[i], angle[i] * chart.taper(station[i]), keepOff);
    }
    return grid.collect(chart);
  }

  int size() {
    return angle.length;
  }

  void copyTo(double[] angles, double[] stations, int from) {
    System.arraycopy(angle, 0, angles, from, angle.length);
    System.arraycopy(station, 0, stations, from, station.length);
  }

  /** The grid being filled: row r at v = low + (r + 1) rise, its points at (k - half) steps. */
  private record Rows(double low, double rise, double step, int half, boolean[][] in) {
    private double shift(int row) {
      return row % 2 == 0 ? 0 : 0.5;
    }

    /** Marks, row by row, the first point right of each crossing of a loop. */
    void toggle(double[] u, double[] v, int from, int to) {
      for (int i = from; i < to; i++) {
        int j = i + 1 < to ? i + 1 : from;
        double lower = Math.min(v[i], v[j]);
        double upper = Math.max(v[i], v[j]);
        int first = Math.max(0, (int) Math.ceil((lower - low) / rise) - 1);
        for (int r = first; r < in.length && low + (r + 1) * rise < upper; r++) {
          double at = low + (r + 1) * rise;
          if (at >= lower) {
            double cross = u[i] + (u[j] - u[i]) * (at - v[i]) / (v[j] - v[i]);
            int k = (int) Math.ceil(cross / step - shift(r)) + half;
            in[r][Math.max(0, Math.min(2 * half, k))] ^= true;
          }
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
    void clear(double u, double v, double shear, double distance) {
      int first = Math.max(0, (int) Math.ceil((v - distance - low) / rise) - 1);
      for (int r = first; r < in.length; r++) {
        double dv = low + (r + 1) * rise - v;
        if (dv > distance) {
          return;
        }
        double reach = Math.sqrt(Math.max(0, distance * distance - dv * dv));
        double middle = u + shear * dv;
        int from = (int) Math.ceil((middle - reach) / step - shift(r)) + half;
        int to = (int) Math.floor((middle + reach) / step - shift(r)) + half;
        for (int k = Math.max(0, from); k <= Math.min(2 * half, to); k++) {
          in[r][k] = false;
        }
      }
    }

    Lattice collect(Chart chart) {
      int most = in.length * (2 * half + 1);
      double[] angle = new double[most];
      double[] station = new double[most];
      int n = 0;
      for (int r = 0; r < in.length; r++) {
        double s = chart.station(low + (r + 1) * rise);
        double rho = chart.rho(s);
        for (int k = 0; k <= 2 * half; k++) {
          if (in[r][k]) {
            angle[n] = (k - half + shift(r)) * step / rho;
            station[n++] = s;
          }
        }
      }
      return new Lattice(Arrays.copyOf(angle, n), Arrays.copyOf(station, n));
    }
  }
}
