package org.midlateral.mechanics;

/**
 * A closed polygon in a plane across the finger, in y and n (mm); its last point is joined to the
 * first. Material lies on its left: outlines run counter-clockwise, holes clockwise.
 */
public final class Loop {
  private final double[] yn;

  /**
   * A polygon.
   *
   * @param yn points, k by 2, row-major (mm)
   * @throws IllegalArgumentException for an odd number of coordinates
   */
  public Loop(double[] yn) {
    if (yn.length % 2 != 0) {
      throw new IllegalArgumentException("points come as pairs of coordinates");
    }
    this.yn = yn.clone();
  }

  /** Number of points. */
  public int size() {
    return yn.length / 2;
  }

  /** The medio-lateral coordinate of a point (mm); point {@code size()} is point 0 again. */
  public double y(int i) {
    return yn[2 * (i % size())];
  }

  /** The dorsal coordinate of a point (mm); point {@code size()} is point 0 again. */
  public double n(int i) {
    return yn[2 * (i % size()) + 1];
  }
}
