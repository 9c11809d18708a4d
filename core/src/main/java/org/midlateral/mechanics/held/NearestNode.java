package org.midlateral.mechanics.held;

import java.util.Comparator;
import java.util.stream.IntStream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.midlateral.mechanics.finite.ShellModel;

/**
 * Finds the node of a shell that is nearest to a place: the nodes are kept in their order along x,
 * about the finger's length, and looked at outward from the place until none farther can be nearer.
 * Immutable.
 */
public final class NearestNode {
  private final int[] nodes;

  /** Places in that order, n by 3, row-major (mm). */
  private final double[] xyz;

  /**
   * Sorts nodes.
   *
   * @param from the first of them
   * @param to the end of them, exclusive; more than {@code from}
   */
  public NearestNode(ShellModel model, int from, int to) {
    nodes =
        IntStream.range(from, to)
            .boxed()
            .sorted(Comparator.comparingDouble(i -> model.coordinate(i, 0)))
            .mapToInt(Integer::intValue)
            .toArray();
    xyz = new double[3 * nodes.length];
    for (int k = 0; k < nodes.length; k++) {
      for (int c = 0; c < 3; c++) {
        xyz[3 * k + c] = model.coordinate(nodes[k], c);
      }
    }
  }

  /** The node nearest to a place (mm); of two as near, either. */
  public int to(Vector3D place) {
    int low = 0;
    int high = nodes.length;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (xyz[3 * middle] < place.getX()) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    int best = -1;
    double least = Double.POSITIVE_INFINITY;
    for (int k = low; k < nodes.length && square(k, place) < least; k++) {
      double distance = distance(k, place);
      if (distance < least) {
        least = distance;
        best = k;
      }
    }
    for (int k = low - 1; k >= 0 && square(k, place) < least; k--) {
      double distance = distance(k, place);
      if (distance < least) {
        least = distance;
        best = k;
      }
    }
    return nodes[best];
  }

  /** The least that the squared distance can be: that along x. */
  private double square(int k, Vector3D place) {
    double x = xyz[3 * k] - place.getX();
    return x * x;
  }

  private double distance(int k, Vector3D place) {
    double y = xyz[3 * k + 1] - place.getY();
    double z = xyz[3 * k + 2] - place.getZ();
    return square(k, place) + y * y + z * z;
  }
}
