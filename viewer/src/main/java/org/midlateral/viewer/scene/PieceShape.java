package org.midlateral.viewer.scene;

import java.util.Arrays;
import java.util.stream.IntStream;
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
    int[] open = IntStream.range(0, shape.triangleCount()).toArray();
    while (true) {
      open = Arrays.stream(open).filter(t -> isOpen(t, known)).toArray();
      if (open.length == 0) {
        return all;
      }
      if (!step(open, all, known)) {
        throw new IllegalStateException("part of the rim is not joined to the piece");
      }
    }
  }

  private boolean isOpen(int triangle, boolean[] known) {
    return !known[shape.corner(triangle, 0)]
        || !known[shape.corner(triangle, 1)]
        || !known[shape.corner(triangle, 2)];
  }

  /**
   * Gives each vertex next to known ones their mean.
   *
   * @param open the triangles of which a corner is not known
   * @return whether there is such a vertex
   */
  private boolean step(int[] open, double[] all, boolean[] known) {
    double[] sum = new double[all.length];
    int[] count = new int[all.length];
    for (int t : open) {
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
    boolean found = false;
    for (int v = 0; v < all.length; v++) {
      if (count[v] > 0) {
        all[v] = sum[v] / count[v];
        known[v] = true;
        found = true;
      }
    }
    return found;
  }
}
