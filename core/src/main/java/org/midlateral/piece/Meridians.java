package org.midlateral.piece;

import org.midlateral.digit.DigitSurface;
import org.midlateral.digit.Slice;

/**
 * Surfaces over the skin along the finger: their curves of constant share of the girth, each
 * developed into a plane, so that lengths along the skin stay and it bends there as it bends in
 * space towards and away from the finger.
 */
final class Meridians {
  private final double[] station;
  private final Slice[] slice;

  /**
   * Over a length of the finger.
   *
   * @param station places along it, increasing (mm)
   */
  Meridians(DigitSurface digit, double[] station) {
    this.station = station;
    this.slice = new Slice[station.length];
    for (int i = 0; i < station.length; i++) {
      slice[i] = digit.slice(station[i]);
    }
  }

  /**
   * A curve in its plane, the skin's ends level.
   *
   * @param x along it (mm)
   * @param y away from the finger (mm)
   * @param skinSlope angle of the skin under each point (rad)
   * @param off distance of each point from the skin (mm)
   */
  record Meridian(double[] x, double[] y, double[] skinSlope, double[] off) {

    /** How sharply it bends in at an inner point (1/mm), by its neighbours. */
    double bend(int i) {
      double ax = x[i] - x[i - 1];
      double ay = y[i] - y[i - 1];
      double bx = x[i + 1] - x[i];
      double by = y[i + 1] - y[i];
      double turn = Math.atan2(ax * by - ay * bx, ax * bx + ay * by);
      return 2 * turn / (Math.sqrt(ax * ax + ay * ay) + Math.sqrt(bx * bx + by * by));
    }

    /** The least distance from a point to those of another curve near it (mm). */
    double distance(int i, Meridian other, int near) {
      double least = Double.POSITIVE_INFINITY;
      for (int k = Math.max(0, i - near); k <= Math.min(x.length - 1, i + near); k++) {
        double dx = x[i] - other.x[k];
        double dy = y[i] - other.y[k];
        least = Math.min(least, dx * dx + dy * dy);
      }
      return Math.sqrt(least);
    }
  }

  /**
   * The skin's own curve at a share of the half girth, in its plane, its ends level.
   *
   * @param share from the volar midline (0) to the dorsal one (1 or -1)
   */
  SkinCurve skin(double share) {
    int n = station.length;
    double[] skin = new double[18];
    double[] point = new double[3 * n];
    double[] normal = new double[3 * n];
    double[] girth = new double[n];
    for (int i = 0; i < n; i++) {
      girth[i] = share * slice[i].circumference() / 2;
      slice[i].jet(slice[i].angle(girth[i]), skin);
      cross(skin, normal, 3 * i);
      System.arraycopy(skin, 0, point, 3 * i, 3);
    }
    double[] x = new double[n];
    double[] y = new double[n];
    double[] slope = new double[n];
    double turned = 0;
    for (int i = 1; i < n; i++) {
      double square = 0;
      double turn = 0;
      for (int k = 0; k < 3; k++) {
        double d = point[3 * i + k] - point[3 * i - 3 + k];
        square += d * d;
        turn += d * (normal[3 * i + k] - normal[3 * i - 3 + k]);
      }
      double length = Math.sqrt(square);
      double half = turn / length / 2;
      x[i] = x[i - 1] + length * Math.cos(turned - half);
      y[i] = y[i - 1] + length * Math.sin(turned - half);
      turned -= 2 * half;
      slope[i] = turned;
    }
    double tilt = Math.atan2(y[n - 1], x[n - 1]);
    double cos = Math.cos(tilt);
    double sin = Math.sin(tilt);
    for (int i = 0; i < n; i++) {
      slope[i] -= tilt;
      double along = x[i] * cos + y[i] * sin;
      y[i] = y[i] * cos - x[i] * sin;
      x[i] = along;
    }
    return new SkinCurve(station, girth, x, y, slope);
  }

  /**
   * The skin along the finger, in the curve's plane.
   *
   * @param station of each point (mm)
   * @param girth of each point (mm)
   * @param x along it (mm)
   * @param y away from the finger (mm)
   * @param slope angle of the skin at each point (rad)
   */
  record SkinCurve(double[] station, double[] girth, double[] x, double[] y, double[] slope) {

    /** What lies over it at a distance, along its normals. */
    Meridian offset(GapField field) {
      int n = station.length;
      double[] off = new double[n];
      double[] overX = new double[n];
      double[] overY = new double[n];
      for (int i = 0; i < n; i++) {
        off[i] = field.at(girth[i], station[i]);
        overX[i] = x[i] - off[i] * Math.sin(slope[i]);
        overY[i] = y[i] + off[i] * Math.cos(slope[i]);
      }
      return new Meridian(overX, overY, slope, off);
    }
  }

  private static void cross(double[] jet, double[] out, int at) {
    double nx = jet[4] * jet[8] - jet[5] * jet[7];
    double ny = jet[5] * jet[6] - jet[3] * jet[8];
    double nz = jet[3] * jet[7] - jet[4] * jet[6];
    double size = Math.sqrt(nx * nx + ny * ny + nz * nz);
    out[at] = nx / size;
    out[at + 1] = ny / size;
    out[at + 2] = nz / size;
  }
}
