package org.midlateral.digit;

/**
 * The point of the skin nearest to a point in space, by Newton's method from a first guess. Holds
 * what it found last; not for use by two threads at once.
 */
public final class SkinFoot {
  private static final int MOST_STEPS = 30;

  /**
   * The last step (mm): it leaves the foot within its square over a finger's radius, and the
   * distance within less, since that is corrected for the step.
   */
  private static final double LAST_STEP = 2e-3;

  private final DigitSurface digit;
  private final double[] jet = new double[18];
  private double angle;
  private double station;
  private double distance;
  private double stepAngle;
  private double stepStation;

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
      Slice slice = digit.slice(Math.min(last, station));
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
      stepAngle = (bt * ss - bs * ts) / det;
      double before = Math.min(last, station);
      angle += stepAngle;
      station = Math.min(last, before + (bs * tt - bt * ts) / det);
      stepStation = station - before;
      if (Math.abs(stepAngle) * slice.halfWidth() + Math.abs(stepStation) < LAST_STEP) {
        break;
      }
    }
    measure(x, y, z);
  }

  private double dot(int i, int j) {
    return jet[i] * jet[j] + jet[i + 1] * jet[j + 1] + jet[i + 2] * jet[j + 2];
  }

  /** Height over the tangent plane, and how far the skin falls away from it over the last step. */
  private void measure(double x, double y, double z) {
    double nx = jet[4] * jet[8] - jet[5] * jet[7];
    double ny = jet[5] * jet[6] - jet[3] * jet[8];
    double nz = jet[3] * jet[7] - jet[4] * jet[6];
    double tt = stepAngle * stepAngle / 2;
    double ts = stepAngle * stepStation;
    double ss = stepStation * stepStation / 2;
    double rx = x - jet[0] - tt * jet[9] - ts * jet[12] - ss * jet[15];
    double ry = y - jet[1] - tt * jet[10] - ts * jet[13] - ss * jet[16];
    double rz = z - jet[2] - tt * jet[11] - ts * jet[14] - ss * jet[17];
    distance = (rx * nx + ry * ny + rz * nz) / Math.sqrt(nx * nx + ny * ny + nz * nz);
  }

  /** Station of the foot (mm). */
  public double station() {
    return station;
  }

  /** Girth of the foot from the volar midline (mm). */
  public double girth() {
    return digit.slice(station).girth(angle);
  }

  /** Distance of the point from the skin (mm): positive outside, negative inside. */
  public double distance() {
    return distance;
  }
}
