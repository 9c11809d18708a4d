package org.midlateral.piece;

import java.util.Arrays;

/**
 * The upper envelope of equal circles. Of the upper halves of two such circles the left one is the
 * higher up to some place, and the right one from there on; so those that come out are found in one
 * pass from left to right, and their heights in another.
 */
final class CircleEnvelope {
  private final double radius;

  /** The circles that come out, from left to right. */
  private final double[] x;

  private final double[] y;

  /** From where on each of them does. */
  private final double[] from;

  private int count;

  private CircleEnvelope(int most, double radius) {
    this.radius = radius;
    this.x = new double[most];
    this.y = new double[most];
    this.from = new double[most];
  }

  /**
   * The envelope of circles.
   *
   * @param x of their middles (mm), nearly in order
   * @param y of the same
   * @param radius of each
   */
  static CircleEnvelope of(double[] x, double[] y, double radius) {
    CircleEnvelope envelope = new CircleEnvelope(x.length, radius);
    int[] order = ascending(x);
    for (int i : order) {
      envelope.add(x[i], y[i]);
    }
    return envelope;
  }

  /** By insertion: a curve along the finger runs back at its sharpest bends alone. */
  private static int[] ascending(double[] x) {
    int[] order = new int[x.length];
    for (int i = 0; i < x.length; i++) {
      int k = i;
      for (; k > 0 && x[order[k - 1]] > x[i]; k--) {
        order[k] = order[k - 1];
      }
      order[k] = i;
    }
    return order;
  }

  private void add(double right, double height) {
    double out = right - radius;
    while (count > 0) {
      out = crossing(count - 1, right, height);
      if (out > from[count - 1]) {
        break;
      }
      count--;
      out = right - radius;
    }
    x[count] = right;
    y[count] = height;
    from[count++] = out;
  }

  /** From where on a circle farther right is higher than one that came out. */
  private double crossing(int left, double right, double height) {
    double dx = right - x[left];
    double dy = height - y[left];
    double square = dx * dx + dy * dy;
    double rest = radius * radius - square / 4;
    if (rest > 0) {
      double up = Math.sqrt(rest / square);
      if (up * dx >= Math.abs(dy) / 2) {
        return x[left] + dx / 2 - up * dy;
      }
    }
    // One lies over the other, or beside it.
    return dy > 0 ? right - radius : x[left] + radius;
  }

  /**
   * Its heights at even places; minus infinity where no circle reaches.
   *
   * @param first place (mm)
   * @param step between two (mm)
   * @param places how many
   */
  double[] heights(double first, double step, int places) {
    double[] heights = new double[places];
    Arrays.fill(heights, Double.NEGATIVE_INFINITY);
    int circle = 0;
    for (int i = 0; i < places; i++) {
      double at = first + i * step;
      while (circle + 1 < count && from[circle + 1] <= at) {
        circle++;
      }
      double off = at - x[circle];
      double square = radius * radius - off * off;
      if (square >= 0) {
        heights[i] = y[circle] + Math.sqrt(square);
      }
    }
    return heights;
  }
}
