package org.midlateral.digit;

/** An elliptic section: half-width a along y, half-depth b, y = a sin t and depth = -b cos t. */
final class EllipticSlice implements Slice {
  private final double station;
  private final double circumference;
  private final double circumferenceRate;
  private final double[] a;
  private final double[] b;
  private final double x;
  private final double z;
  private final double cos;
  private final double sin;
  private final double curvature;
  private final double curvatureRate;

  /** Made when first asked for; made twice it is the same. */
  private EllipticArc arc;

  /**
   * A section and how it changes.
   *
   * @param a half-width with its first and second derivative along the station
   * @param b half-depth likewise
   * @param point x and z of the centreline (mm)
   * @param turned the centreline's angle to the volar side (rad)
   */
  EllipticSlice(
      double station,
      double circumference,
      double circumferenceRate,
      double[] a,
      double[] b,
      double[] point,
      double turned,
      double curvature,
      double curvatureRate) {
    this.station = station;
    this.circumference = circumference;
    this.circumferenceRate = circumferenceRate;
    this.a = a;
    this.b = b;
    this.x = point[0];
    this.z = point[1];
    this.cos = Math.cos(turned);
    this.sin = Math.sin(turned);
    this.curvature = curvature;
    this.curvatureRate = curvatureRate;
  }

  @Override
  public double station() {
    return station;
  }

  @Override
  public double circumference() {
    return circumference;
  }

  @Override
  public double circumferenceByStation() {
    return circumferenceRate;
  }

  @Override
  public double halfWidth() {
    return a[0];
  }

  @Override
  public double halfDepth() {
    return b[0];
  }

  @Override
  public double girthByAngle(double t) {
    // Not Math.hypot, which guards against overflows that no finger has and takes ten times as
    // long.
    double along = a[0] * Math.cos(t);
    double down = b[0] * Math.sin(t);
    return Math.sqrt(along * along + down * down);
  }

  @Override
  public double girth(double t) {
    return arc().length(t);
  }

  @Override
  public double girthAlongStation(double t) {
    return arc().change(t, a[1], b[1]);
  }

  private EllipticArc arc() {
    EllipticArc made = arc;
    if (made == null) {
      made = new EllipticArc(a[0], b[0]);
      arc = made;
    }
    return made;
  }

  @Override
  public double angle(double girth) {
    double size = Math.abs(girth);
    double quarter = circumference / 4;
    if (size > quarter) {
      return Math.copySign(Math.PI - quarterAngle(2 * quarter - size), girth);
    }
    return Math.copySign(quarterAngle(size), girth);
  }

  /** Newton's method from a series' first terms: two steps, or three on a flat section. */
  private double quarterAngle(double girth) {
    EllipticArc arc = arc();
    double t = arc.nearly(girth * 2 * Math.PI / circumference);
    for (int i = 0; i < 20; i++) {
      double step = (arc.length(t) - girth) / girthByAngle(t);
      t -= step;
      // What is left goes as the square of the step.
      if (Math.abs(step) < 1e-8) {
        break;
      }
    }
    return t;
  }

  @Override
  public void jet(double t, double[] jet) {
    double c = Math.cos(t);
    double s = Math.sin(t);
    // Depth is along n = (sin, 0, cos), distance along the tangent (cos, 0, -sin);
    // tangent' = -curvature n and n' = curvature tangent.
    double d = -b[0] * c;
    double d1 = -b[1] * c;
    double d2 = -b[2] * c;
    double k = curvature;
    put(jet, 0, 0, a[0] * s, d);
    jet[0] += x;
    jet[2] += z;
    put(jet, 3, 0, a[0] * c, b[0] * s);
    put(jet, 6, 1 + k * d, a[1] * s, d1);
    put(jet, 9, 0, -a[0] * s, -d);
    put(jet, 12, k * b[0] * s, a[1] * c, b[1] * s);
    put(jet, 15, 2 * k * d1 + curvatureRate * d, a[2] * s, d2 - k * (1 + k * d));
  }

  /** Writes a vector given along the tangent, y and the dorsal normal. */
  private void put(double[] jet, int at, double along, double y, double depth) {
    jet[at] = cos * along + sin * depth;
    jet[at + 1] = y;
    jet[at + 2] = cos * depth - sin * along;
  }
}
