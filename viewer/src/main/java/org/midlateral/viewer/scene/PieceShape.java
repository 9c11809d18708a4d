package org.midlateral.viewer.scene;

import org.midlateral.solid.Solid;
import org.midlateral.viewer.render.SurfaceShape;

/**
 * A piece and what is drawn of it.
 *
 * @param solid the piece
 * @param shape its surface
 */
public record PieceShape(Solid solid, SurfaceShape shape) {
  /** The shape of a solid. */
  public static PieceShape of(Solid solid) {
    return new PieceShape(solid, SurfaceShape.of(solid.mesh()));
  }

  /** Whether it lies on the back of the finger. */
  public boolean isDorsal() {
    return solid.piece().dorsal();
  }

  /**
   * Values at the inner vertices spread to all: an outer vertex takes its inner one's, the rim what
   * is next to it.
   *
   * @param inner one value an inner vertex
   * @return one value a vertex of the shape
   */
  public double[] spread(double[] inner) {
    double[] all = new double[shape.vertexCount()];
    boolean[] known = new boolean[all.length];
    for (int i = 0; i < inner.length; i++) {
      all[i] = inner[i];
      all[i + inner.length] = inner[i];
      known[i] = true;
      known[i + inner.length] = true;
    }
    int left = all.length - 2 * inner.length;
    while (left > 0) {
      int found = step(all, known);
      if (found == 0) {
        throw new IllegalStateException("part of the rim is not joined to the piece");
      }
      left -= found;
    }
    return all;
  }

  /** Gives each vertex next to known ones their mean. */
  private int step(double[] all, boolean[] known) {
    double[] sum = new double[all.length];
    int[] count = new int[all.length];
    for (int t = 0; t < shape.triangleCount(); t++) {
      for (int c = 0; c < 3; c++) {
        int to = shape.corner(t, c);
        for (int d = 1; d < 3 && !known[to]; d++) {
          int from = shape.corner(t, (c + d) % 3);
          if (known[from]) {
            sum[to] += all[from];
            count[to]++;
          }
        }
      }
    }
    int found = 0;
    for (int v = 0; v < all.length; v++) {
      if (count[v] > 0) {
        all[v] = sum[v] / count[v];
        known[v] = true;
        found++;
      }
    }
    return found;
  }
}
