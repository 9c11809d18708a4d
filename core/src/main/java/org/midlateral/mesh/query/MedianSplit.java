package org.midlateral.mesh.query;

import java.util.Arrays;

/**
 * An order of triangles for a complete binary tree with small boxes: halved again and again across
 * the widest extent of their middles, down to groups of {@value #GROUP}. Where middles lie as near
 * as a share of that extent, the half a triangle comes to is left to chance.
 */
public final class MedianSplit {
  /** Leaves of a group. */
  static final int GROUP = 8;

  private static final int BINS = 64;

  private final double[] middles;
  private final int[] order;
  private final int[] right;
  private final int[] bins = new int[BINS];

  private MedianSplit(double[] middles) {
    this.middles = middles;
    this.order = new int[middles.length / 3];
    this.right = new int[order.length];
    Arrays.setAll(order, t -> t);
  }

  /** Leaves of a complete tree over so many triangles: the next power of two. */
  static int leaves(int triangles) {
    return triangles <= 1 ? 1 : Integer.highestOneBit(triangles - 1) << 1;
  }

  /**
   * Orders the triangles of a mesh.
   *
   * @param xyz coordinates, n by 3, row-major
   * @param corners vertex numbers, m by 3, row-major
   * @return triangle numbers
   */
  public static int[] order(double[] xyz, int[] corners) {
    double[] middles = new double[corners.length];
    for (int t = 0; t < corners.length; t += 3) {
      int a = 3 * corners[t];
      int b = 3 * corners[t + 1];
      int c = 3 * corners[t + 2];
      middles[t] = xyz[a] + xyz[b] + xyz[c];
      middles[t + 1] = xyz[a + 1] + xyz[b + 1] + xyz[c + 1];
      middles[t + 2] = xyz[a + 2] + xyz[b + 2] + xyz[c + 2];
    }
    MedianSplit split = new MedianSplit(middles);
    split.split(0, corners.length / 3, leaves(corners.length / 3));
    return split.order;
  }

  private void split(int from, int to, int leaves) {
    if (leaves <= GROUP || to - from <= GROUP) {
      return;
    }
    int middle = Math.min(to, from + leaves / 2);
    if (middle < to) {
      part(from, to, middle - from);
      split(middle, to, leaves / 2);
    }
    split(from, middle, leaves / 2);
  }

  /** Brings as many of the lowest along the widest extent to the front. */
  private void part(int from, int to, int front) {
    double lowX = Double.POSITIVE_INFINITY;
    double lowY = lowX;
    double lowZ = lowX;
    double highX = Double.NEGATIVE_INFINITY;
    double highY = highX;
    double highZ = highX;
    for (int i = from; i < to; i++) {
      int at = 3 * order[i];
      double x = middles[at];
      double y = middles[at + 1];
      double z = middles[at + 2];
      lowX = x < lowX ? x : lowX;
      highX = x > highX ? x : highX;
      lowY = y < lowY ? y : lowY;
      highY = y > highY ? y : highY;
      lowZ = z < lowZ ? z : lowZ;
      highZ = z > highZ ? z : highZ;
    }
    double wideX = highX - lowX;
    double wideY = highY - lowY;
    double wideZ = highZ - lowZ;
    double width = Math.max(wideX, Math.max(wideY, wideZ));
    if (width > 0) {
      int axis = wideX == width ? 0 : wideY == width ? 1 : 2;
      double low = axis == 0 ? lowX : axis == 1 ? lowY : lowZ;
      part(from, to, front, axis, low, (BINS - 1) / width);
    }
  }

  /** Counts into bins, then deals out; without branches, which nobody could foretell. */
  private void part(int from, int to, int front, int axis, double low, double scale) {
    Arrays.fill(bins, 0);
    for (int i = from; i < to; i++) {
      bins[(int) ((middles[3 * order[i] + axis] - low) * scale)]++;
    }
    int bin = 0;
    int left = front;
    while (bins[bin] < left) {
      left -= bins[bin++];
    }
    int first = from;
    int second = 0;
    for (int i = from; i < to; i++) {
      int t = order[i];
      int in = (int) ((middles[3 * t + axis] - low) * scale);
      int before = (in - bin) >>> 31;
      int within = ((in ^ bin) - 1 & -left) >>> 31;
      left -= within;
      order[first] = t;
      right[second] = t;
      first += before + within;
      second += 1 - before - within;
    }
    System.arraycopy(right, 0, order, first, second);
  }
}
