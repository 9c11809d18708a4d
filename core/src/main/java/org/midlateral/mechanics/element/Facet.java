package org.midlateral.mechanics.element;

/**
 * One flat triangle seen in its own plane: the axes e1 (along the first edge), e2 and e3 (toward
 * the front), and the corners in (e1, e2) from the first corner.
 */
public final class Facet {
  /** Rows e1, e2, e3 in global components, 3 by 3, row-major. */
  public final double[] axes = new double[9];

  /** Corners in the plane, counted round: 3 is 0 again and 4 is 1 (mm). */
  private final double[] x = new double[5];

  private final double[] y = new double[5];

  public final double area;

  /**
   * A facet.
   *
   * @param corners coordinates of the three corners, 3 by 3, row-major (mm)
   */
  public Facet(double[] corners) {
    double[] side = new double[6];
    for (int k = 0; k < 3; k++) {
      side[k] = corners[3 + k] - corners[k];
      side[3 + k] = corners[6 + k] - corners[k];
    }
    double[] normal = {
      side[1] * side[5] - side[2] * side[4],
      side[2] * side[3] - side[0] * side[5],
      side[0] * side[4] - side[1] * side[3]
    };
    double length = Math.sqrt(dot(side, 0, side, 0));
    double twiceArea = Math.sqrt(dot(normal, 0, normal, 0));
    for (int k = 0; k < 3; k++) {
      axes[k] = side[k] / length;
      axes[6 + k] = normal[k] / twiceArea;
    }
    axes[3] = axes[7] * axes[2] - axes[8] * axes[1];
    axes[4] = axes[8] * axes[0] - axes[6] * axes[2];
    axes[5] = axes[6] * axes[1] - axes[7] * axes[0];
    x[1] = length;
    x[2] = dot(side, 3, axes, 0);
    y[2] = dot(side, 3, axes, 3);
    x[4] = x[1];
    area = twiceArea / 2;
  }

  /** The difference of two corners' first coordinates, corners counted round: 0 to 4. */
  double dx(int i, int j) {
    return x[i] - x[j];
  }

  double dy(int i, int j) {
    return y[i] - y[j];
  }

  private static double dot(double[] a, int i, double[] b, int j) {
    return a[i] * b[j] + a[i + 1] * b[j + 1] + a[i + 2] * b[j + 2];
  }
}
