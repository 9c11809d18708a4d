package org.midlateral.mechanics;

import org.midlateral.digit.DigitSurface;
import org.midlateral.digit.Slice;
import org.midlateral.piece.Piece;
import org.midlateral.solid.OffsetSurface;

/**
 * What it takes to push the dorsal shell over the trough: its mouth, the narrowest inside width
 * volar of the trough's widest point, must open to the trough's widest outside width; the round of
 * both rims counts, half a wall about the middle of the wall at its end. The shell is taken as a
 * thin curved beam in the girth direction, a strip of unit length spread by two equal and opposite
 * forces at its rims; by the unit-load method the opening is F/(E I) ∫ h² dl and the largest moment
 * F h_max, h the distance of a point from the line of the forces, so that modulus and force drop
 * out of the strain (S. Timoshenko, Strength of Materials, curved bars; from memory). A half ring
 * opens by (pi/2) F R³/(E I).
 *
 * @param station where it must open most (mm)
 * @param mouth narrowest inside width of the shell there (mm)
 * @param widest outside width of the trough there (mm)
 * @param spread by which the mouth must open (mm); 0 where the shell just drops on
 * @param slope largest by which half of the spread grows along the finger (1)
 * @param strain largest bending strain that costs anywhere along the shell, as a share
 */
public record Donning(
    double station, double mouth, double widest, double spread, double slope, double strain) {
  private static final double STEP = 1;
  private static final int POINTS = 120;

  /**
   * Measures two pieces against each other.
   *
   * @param trough the volar piece
   * @param shell the dorsal piece
   * @param overlap reach of the shell past the trough's edge (mm)
   */
  public static Donning of(Piece trough, Piece shell, double overlap) {
    Donning worst = null;
    double strain = 0;
    double slope = 0;
    double before = Double.NaN;
    double from = shell.outline().flankStart();
    double to = shell.outline().flankEnd();
    int n = Math.max(1, (int) Math.ceil((to - from) / STEP));
    OffsetSurface troughSurface = new OffsetSurface(trough);
    OffsetSurface shellSurface = new OffsetSurface(shell);
    for (int i = 0; i <= n; i++) {
      double station = from + (to - from) * i / n;
      double edge = trough.outline().wrap() / 2 * trough.digit().circumference(station);
      double wall = trough.wall();
      double seat = seat(trough, troughSurface, station, edge);
      ShellSection section = ShellSection.of(trough, troughSurface, station, seat, POINTS);
      ShellProfile outside = section.at(wall);
      ShellProfile rim = section.at(wall / 2);
      double reach = shell.outline().wrap() / 2 * shell.digit().circumference(station) + overlap;
      double end = seat(shell, shellSurface, station, reach);
      ShellSection over = ShellSection.of(shell, shellSurface, station, end, POINTS);
      ShellProfile inside = over.at(0);
      ShellProfile middle = over.at(shell.wall() / 2);
      boolean atRim = rim.ends() + wall > outside.widest();
      double widest = atRim ? rim.ends() + wall : outside.widest();
      double level = atRim ? rim.depthOfEnds() : outside.depthOfWidest();
      double mouth = Math.min(inside.narrowestBelow(level), middle.ends() - shell.wall());
      double spread = Math.max(0, widest - mouth);
      if (i > 0) {
        slope = Math.max(slope, Math.abs(spread - before) / 2 * n / (to - from));
      }
      before = spread;
      strain = Math.max(strain, middle.strain(spread, shell.wall()));
      if (worst == null || spread > worst.spread || spread == 0 && mouth - widest < worst.room()) {
        worst = new Donning(station, mouth, widest, spread, 0, 0);
      }
    }
    return worst.with(slope, strain);
  }

  /**
   * Girth of the middle of a rim's round: half a wall before the outline, as lengths count in the
   * middle of the wall.
   */
  private static double seat(Piece piece, OffsetSurface surface, double station, double reach) {
    double half = piece.wall() / 2;
    ShellProfile outer = ShellSection.of(piece, surface, station, reach, 1).at(half);
    ShellProfile inner = ShellSection.of(piece, surface, station, reach - half, 1).at(half);
    double length = Math.hypot(outer.y[0] - inner.y[0], outer.depth[0] - inner.depth[0]);
    return reach - half * half / length;
  }

  private Donning with(double anySlope, double anyStrain) {
    return new Donning(station, mouth, widest, spread, anySlope, anyStrain);
  }

  private double room() {
    return mouth - widest;
  }

  /**
   * A section of a piece's inner surface, from one edge to the other.
   *
   * @param points inner points and unit normals, n by 6, row-major
   * @param centre x and z of the section's centre (mm)
   * @param along x and z of the unit tangent there
   */
  private record ShellSection(double[] points, double[] centre, double[] along) {

    /**
     * The section at a station.
     *
     * @param reach girth from the piece's midline to each end (mm)
     * @param pieces it is cut into
     */
    static ShellSection of(
        Piece piece, OffsetSurface surface, double station, double reach, int pieces) {
      DigitSurface digit = piece.digit();
      Slice slice = digit.slice(station);
      double end = Math.min(reach, slice.circumference() / 2);
      double limit = piece.midline().angle(slice, end);
      double[] points = new double[6 * (pieces + 1)];
      for (int i = 0; i <= pieces; i++) {
        surface.at(slice, limit * (2.0 * i / pieces - 1), false, points, i);
      }
      var centre = digit.centre(station);
      var along = digit.tangent(station);
      return new ShellSection(
          points,
          new double[] {centre.getX(), centre.getZ()},
          new double[] {along.getX(), along.getZ()});
    }

    /** The curve at some height over the inner surface (mm). */
    ShellProfile at(double height) {
      int n = points.length / 6;
      double[] y = new double[n];
      double[] depth = new double[n];
      for (int i = 0; i < n; i++) {
        int p = 6 * i;
        y[i] = points[p + 1] + height * points[p + 4];
        double x = points[p] + height * points[p + 3] - centre[0];
        double z = points[p + 2] + height * points[p + 5] - centre[1];
        depth[i] = z * along[0] - x * along[1];
      }
      return new ShellProfile(y, depth);
    }
  }

  /** A section's curve: y and depth of points from one edge to the other. */
  record ShellProfile(double[] y, double[] depth) {

    /** Width between the two ends (mm): where a rim's round has its centres. */
    double ends() {
      return Math.abs(y[y.length - 1] - y[0]);
    }

    double depthOfEnds() {
      return Math.min(depth[0], depth[y.length - 1]);
    }

    double widest() {
      double least = 0;
      double most = 0;
      for (double v : y) {
        least = Math.min(least, v);
        most = Math.max(most, v);
      }
      return most - least;
    }

    /** Depth of the widest point on either side, whichever is more volar (mm). */
    double depthOfWidest() {
      int least = 0;
      int most = 0;
      for (int i = 0; i < y.length; i++) {
        least = y[i] < y[least] ? i : least;
        most = y[i] > y[most] ? i : most;
      }
      return Math.min(depth[least], depth[most]);
    }

    /** Narrowest width between the two sides, among points volar of a depth and the two ends. */
    double narrowestBelow(double level) {
      double negative = Math.min(y[0], y[y.length - 1]);
      double positive = Math.max(y[0], y[y.length - 1]);
      for (int i = 0; i < y.length; i++) {
        if (depth[i] <= level) {
          if (y[i] > 0) {
            positive = Math.min(positive, y[i]);
          } else {
            negative = Math.max(negative, y[i]);
          }
        }
      }
      return positive - negative;
    }

    /** Largest bending strain of a strip with this middle line whose ends are spread (share). */
    double strain(double spread, double wall) {
      double line = (depth[0] + depth[y.length - 1]) / 2;
      double sum = 0;
      double largest = 0;
      for (int i = 1; i < y.length; i++) {
        double h = (depth[i - 1] + depth[i]) / 2 - line;
        sum += h * h * Math.hypot(y[i] - y[i - 1], depth[i] - depth[i - 1]);
        largest = Math.max(largest, Math.abs(depth[i] - line));
      }
      return spread == 0 ? 0 : spread * wall / 2 * largest / sum;
    }
  }
}
