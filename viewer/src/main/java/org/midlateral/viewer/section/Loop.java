package org.midlateral.viewer.section;

/**
 * A closed line in the plane of a section. Its inside lies to the left.
 *
 * @param points n by 2, row-major: y, z (mm)
 */
public record Loop(double[] points) {
  public Loop {
    points = points.clone();
  }

  @Override
  public double[] points() {
    return points.clone();
  }

  public int size() {
    return points.length / 2;
  }

  /** A coordinate of point i, which may run past the end: axis 0 is y, 1 is z (mm). */
  public double at(int i, int axis) {
    return points[2 * Math.floorMod(i, size()) + axis];
  }

  /** Distance of a point from the line (mm). */
  public double distance(double y, double z) {
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < size(); i++) {
      double ey = at(i + 1, 0) - at(i, 0);
      double ez = at(i + 1, 1) - at(i, 1);
      double square = ey * ey + ez * ez;
      double along = square > 0 ? ((y - at(i, 0)) * ey + (z - at(i, 1)) * ez) / square : 0;
      double share = Math.max(0, Math.min(1, along));
      double dy = y - at(i, 0) - share * ey;
      double dz = z - at(i, 1) - share * ez;
      least = Math.min(least, Math.hypot(dy, dz));
    }
    return least;
  }

  /** How far ahead of a point, along a unit direction, the line is first met (mm); or infinite. */
  double ahead(double y, double z, double dy, double dz) {
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < size(); i++) {
      double ey = at(i + 1, 0) - at(i, 0);
      double ez = at(i + 1, 1) - at(i, 1);
      double det = dz * ey - dy * ez;
      double ry = at(i, 0) - y;
      double rz = at(i, 1) - z;
      double along = (rz * ey - ry * ez) / det;
      double share = (dy * rz - dz * ry) / det;
      if (share >= 0 && share <= 1 && along >= 0) {
        least = Math.min(least, along);
      }
    }
    return least;
  }
}
