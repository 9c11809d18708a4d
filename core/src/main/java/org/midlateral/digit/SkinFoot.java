package org.midlateral.digit;

/**
 * The point of the skin nearest to a point in space, by Newton's method from a first guess. Holds
 * what it found last; not for use by two threads at once.
 */
public final class SkinFoot {
  private static final int MOST_STEPS = 30;
  private static final double TOLERANCE = 1e-9;

  private final DigitSurface digit;
  private final double[] jet = new double[18];
  private double angle;
  private double station;
  private double distance;
  private Slice slice;

  public SkinFoot(DigitSurface digit) {
    this.digit = digit;
  }

  /**
   * Finds the foot of a point.
   *
   * @param x in mm, as y and z
   * @param firstAngle where to start (rad)
   * @param firstStation where to start (mm)
   */
  public void find(double x, double y, double z, double firstAngle, double firstStation) {
    angle = firstAngle;
    station = firstStation;
    double last = digit.pulpEnd() - 1e-6;
    for (int i = 0; i < MOST_STEPS; i++) {
      slice = digit.slice(Math.min(last, station));
      slice.jet(angle, jet);
      double rx = x - jet[0];
      double ry = y - jet[1];
      double rz = z - jet[2];
      double bt = rx * jet[3] + ry * jet[4] + rz * jet[5];
      double bs = rx * jet[6] + ry * jet[7] + rz * jet[8];
      double tt = dot(3, 3) - rx * jet[9] - ry * jet[10] - rz * jet[11];
      double ts = dot(3, 6) - rx * jet[12] - ry * jet[13] - rz * jet[14];
      double ss = dot(6, 6) - rx * jet[15] - ry * jet[16] - rz * jet[17];
      double det = tt * ss - ts * ts;
      if (!(det > 0)) {
        // Too far off for Newton's method: a plain least-squares step.
        tt = dot(3, 3);
        ts = dot(3, 6);
        ss = dot(6, 6);
        det = tt * ss - ts * ts;
      }
      double dt = (bt * ss - bs * ts) / det;
      double ds = (bs * tt - bt * ts) / det;
      angle += dt;
      station = Math.min(last, station + ds);
      if (Math.abs(dt) * slice.halfWidth() + Math.abs(ds) < TOLERANCE) {
        break;
      }
    }
    measure(x, y, z);
  }

  private double dot(int i, int j) {
    return jet[i] * jet[j] + jet[i + 1] * jet[j + 1] + jet[i + 2] * jet[j + 2];
  }

  private void measure(double x, double y, double z) {
    double nx = jet[4] * jet[8] - jet[5] * jet[7];
    double ny = jet[5] * jet[6] - jet[3] * jet[8];
    double nz = jet[3] * jet[7] - jet[4] * jet[6];
    double size = Math.sqrt(nx * nx + ny * ny + nz * nz);
    distance = ((x - jet[0]) * nx + (y - jet[1]) * ny + (z - jet[2]) * nz) / size;
  }

  /** Angle of the foot (rad). */
  public double angle() {
    return angle;
  }

  /** Station of the foot (mm). */
  public double station() {
    return station;
  }

  /** Girth of the foot from the volar midline (mm). */
  public double girth() {
    return slice.girth(angle);
  }

  /** Distance of the point from the skin (mm): positive outside, negative inside. */
  public double distance() {
    return distance;
  }
}
