package org.midlateral.recipe.plate;

import java.util.Arrays;
import org.apache.commons.geometry.euclidean.threed.AffineTransformMatrix3D;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.midlateral.mesh.TriangleMesh;

/**
 * The outline that a turned part has from above, as cells of a grid: every cell that any of it
 * reaches. So it is a little larger than the part, by less than a cell on each side.
 */
final class Footprint {
  /** Side of a cell (mm). */
  static final double CELL = 0.5;

  private final int width;
  private final int height;
  private final long[][] rows;
  private final double lowX;
  private final double lowY;

  private Footprint(int width, int height, double lowX, double lowY) {
    this.width = width;
    this.height = height;
    this.lowX = lowX;
    this.lowY = lowY;
    this.rows = new long[height][(width + 63) / 64];
  }

  /** Cells from left to right. */
  int width() {
    return width;
  }

  /** Cells from front to back. */
  int height() {
    return height;
  }

  /** Where the first cell begins, in the turned part's own frame (mm). */
  double lowX() {
    return lowX;
  }

  /** Where the first row begins, in the turned part's own frame (mm). */
  double lowY() {
    return lowY;
  }

  /** One row's cells, the first of them the lowest bit of the first word. */
  long[] row(int y) {
    return rows[y];
  }

  /** Area of all cells (mm²). */
  double area() {
    long cells = 0;
    for (long[] row : rows) {
      cells += Arrays.stream(row).map(Long::bitCount).sum();
    }
    return cells * CELL * CELL;
  }

  /** The footprint of a mesh under a turn. */
  static Footprint of(TriangleMesh mesh, AffineTransformMatrix3D turn) {
    double[] x = new double[mesh.vertexCount()];
    double[] y = new double[x.length];
    for (int v = 0; v < x.length; v++) {
      Vector3D place = turn.apply(mesh.vertex(v));
      x[v] = place.getX();
      y[v] = place.getY();
    }
    double lowX = Arrays.stream(x).min().orElseThrow();
    double lowY = Arrays.stream(y).min().orElseThrow();
    int width = 1 + (int) ((Arrays.stream(x).max().orElseThrow() - lowX) / CELL);
    int height = 1 + (int) ((Arrays.stream(y).max().orElseThrow() - lowY) / CELL);
    Footprint print = new Footprint(width, height, lowX, lowY);
    double[] corners = new double[6];
    for (int t = 0; t < mesh.triangleCount(); t++) {
      for (int k = 0; k < 3; k++) {
        corners[2 * k] = (x[mesh.corner(t, k)] - lowX) / CELL;
        corners[2 * k + 1] = (y[mesh.corner(t, k)] - lowY) / CELL;
      }
      print.fill(corners);
    }
    return print;
  }

  /** Marks every cell that a triangle reaches; corners in cells. */
  private void fill(double[] c) {
    int from = (int) Math.min(c[1], Math.min(c[3], c[5]));
    int to = (int) Math.max(c[1], Math.max(c[3], c[5]));
    for (int row = from; row <= to; row++) {
      double left = Double.MAX_VALUE;
      double right = -Double.MAX_VALUE;
      for (int k = 0; k < 3; k++) {
        int next = (k + 1) % 3;
        double[] reach = within(c[2 * k], c[2 * k + 1], c[2 * next], c[2 * next + 1], row);
        left = Math.min(left, reach[0]);
        right = Math.max(right, reach[1]);
      }
      for (int cell = (int) left; cell <= (int) right; cell++) {
        rows[row][cell >> 6] |= 1L << cell;
      }
    }
  }

  /** How far an edge reaches to the left and to the right within a row. */
  private static double[] within(double x0, double y0, double x1, double y1, int row) {
    double low = Math.max(row, Math.min(y0, y1));
    double high = Math.min(row + 1, Math.max(y0, y1));
    if (low > high) {
      return new double[] {Double.MAX_VALUE, -Double.MAX_VALUE};
    }
    if (y0 == y1) {
      return new double[] {Math.min(x0, x1), Math.max(x0, x1)};
    }
    double a = x0 + (x1 - x0) * (low - y0) / (y1 - y0);
    double b = x0 + (x1 - x0) * (high - y0) / (y1 - y0);
    return new double[] {Math.min(a, b), Math.max(a, b)};
  }

  /** The same with room round it, so that it is larger by so many cells on each side. */
  Footprint grown(int cells) {
    Footprint grown =
        new Footprint(
            width + 2 * cells, height + 2 * cells, lowX - cells * CELL, lowY - cells * CELL);
    for (int dy = -cells; dy <= cells; dy++) {
      // A cell's own extent counts: half a cell more keeps the room all round.
      int dx = (int) Math.ceil(Math.sqrt((cells + 0.5) * (cells + 0.5) - dy * dy) - 0.5);
      for (int y = 0; y < height; y++) {
        for (int x = 0; x < width; x++) {
          if ((rows[y][x >> 6] & 1L << x) != 0) {
            grown.run(y + cells + dy, x + cells - dx, x + cells + dx);
          }
        }
      }
    }
    return grown;
  }

  private void run(int y, int from, int to) {
    for (int x = Math.max(0, from); x <= Math.min(width - 1, to); x++) {
      rows[y][x >> 6] |= 1L << x;
    }
  }
}
