package org.midlateral.mesh.plane;

import java.util.Arrays;
import java.util.function.IntPredicate;
import org.midlateral.mesh.HalfEdges;

/**
 * Triangles of numbered points of the plane, and which lie against each other.
 *
 * @param corners m by 3, counter-clockwise
 * @param twin by side, numbered as in {@link HalfEdges}: the side it lies against, or -1 at the
 *     outline
 */
public record PlaneTriangulation(int[] corners, int[] twin) {
  /**
   * Finds which triangles lie against each other.
   *
   * @param points number of points
   * @param corners m by 3, counter-clockwise
   */
  public static PlaneTriangulation of(int points, int[] corners) {
    return new PlaneTriangulation(corners, new HalfEdges(points, corners).twin);
  }

  /** The triangles that are kept, given by the number of their first side; in the same order. */
  public PlaneTriangulation only(IntPredicate kept) {
    int[] number = new int[corners.length];
    int n = 0;
    for (int side = 0; side < corners.length; side += 3) {
      boolean keep = kept.test(side);
      for (int i = side; i < side + 3; i++) {
        number[i] = keep ? n++ : -1;
      }
    }
    int[] left = new int[n];
    int[] against = new int[n];
    for (int side = 0; side < corners.length; side++) {
      if (number[side] >= 0) {
        left[number[side]] = corners[side];
        against[number[side]] = twin[side] < 0 ? -1 : number[twin[side]];
      }
    }
    return new PlaneTriangulation(left, against);
  }

  /** The same triangles of points that have other numbers. */
  PlaneTriangulation renumbered(int[] number) {
    int[] corner = new int[corners.length];
    Arrays.setAll(corner, i -> number[corners[i]]);
    return new PlaneTriangulation(corner, twin);
  }
}
