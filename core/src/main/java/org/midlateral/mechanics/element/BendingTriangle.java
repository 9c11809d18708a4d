package org.midlateral.mechanics.element;

/**
 * Bending and transverse shear of a flat triangle: Katili's discrete Kirchhoff-Mindlin triangle
 * (1993).
 *
 * <p>The wall's rotations vary linearly, and along each edge by a parabola besides, whose height
 * follows from the edge taken as a shear-flexible beam; so the nine corner freedoms are all there
 * is. Given as rows that turn the local freedoms (u, v, w, rotations about e1, e2, e3 at each
 * corner: 18) into curvatures (strain per distance toward the front) and transverse shear strains.
 */
public final class BendingTriangle {
  /** Share of the section that carries shear evenly, for a rectangle. */
  public static final double SHEAR_SHARE = 5.0 / 6;

  /** The local freedoms that bend and shear the wall: w and the rotations about e1 and e2. */
  private static final int[] ACROSS = {2, 3, 4, 8, 9, 10, 14, 15, 16};

  private final Facet facet;

  /** Cosine and sine of each edge (corner e to e + 1). */
  private final double[] cos = new double[3];

  private final double[] sin = new double[3];

  /** Height of each edge's parabola, and each edge's shear strain, from the freedoms: 3 by 18. */
  private final double[][] parabola = new double[3][18];

  private final double[][] edgeShear = new double[3][18];

  public BendingTriangle(Facet facet, double thickness, double poisson) {
    this.facet = facet;
    for (int e = 0; e < 3; e++) {
      double dx = facet.dx(e + 1, e);
      double dy = facet.dy(e + 1, e);
      double length = Math.sqrt(dx * dx + dy * dy);
      cos[e] = dx / length;
      sin[e] = dy / length;
      double ratio = thickness / length;
      double flexibility = 2 * ratio * ratio / (SHEAR_SHARE * (1 - poisson));
      fillEdge(e, length, flexibility);
    }
  }

  private void fillEdge(int e, double length, double flexibility) {
    double[] slip = new double[18];
    int i = 6 * e;
    int j = 6 * ((e + 1) % 3);
    slip[i + 2] = -1 / length;
    slip[j + 2] = 1 / length;
    for (int corner : new int[] {i, j}) {
      slip[corner + 4] = cos[e] / 2;
      slip[corner + 3] = -sin[e] / 2;
    }
    for (int c : ACROSS) {
      parabola[e][c] = -1.5 / (1 + flexibility) * slip[c];
      edgeShear[e][c] = flexibility / (1 + flexibility) * slip[c];
    }
  }

  /**
   * Curvatures (xx, yy, xy) at a point, 3 by 18.
   *
   * @param weight the point's three area coordinates
   */
  public double[][] curvature(double[] weight) {
    double[][] rows = new double[3][18];
    double scale = 1 / (2 * facet.area);
    for (int i = 0; i < 3; i++) {
      double nx = scale * facet.dy(i + 1, i + 2);
      double ny = scale * facet.dx(i + 2, i + 1);
      rows[0][6 * i + 4] += nx;
      rows[1][6 * i + 3] -= ny;
      rows[2][6 * i + 4] += ny;
      rows[2][6 * i + 3] -= nx;
      int j = (i + 1) % 3;
      double px = 4 * (nx * weight[j] + scale * facet.dy(i + 2, i) * weight[i]);
      double py = 4 * (ny * weight[j] + scale * facet.dx(i, i + 2) * weight[i]);
      double xx = px * cos[i];
      double yy = py * sin[i];
      double xy = py * cos[i] + px * sin[i];
      for (int c : ACROSS) {
        double height = parabola[i][c];
        rows[0][c] += xx * height;
        rows[1][c] += yy * height;
        rows[2][c] += xy * height;
      }
    }
    return rows;
  }

  /**
   * Transverse shear strains (xz, yz) at a point, 2 by 18.
   *
   * @param weight the point's three area coordinates
   */
  public double[][] shear(double[] weight) {
    double[][] rows = new double[2][18];
    for (int i = 0; i < 3; i++) {
      int m = (i + 2) % 3;
      double scale = weight[i] / (cos[i] * sin[m] - cos[m] * sin[i]);
      for (int c : ACROSS) {
        rows[0][c] += scale * (sin[m] * edgeShear[i][c] - sin[i] * edgeShear[m][c]);
        rows[1][c] += scale * (cos[i] * edgeShear[m][c] - cos[m] * edgeShear[i][c]);
      }
    }
    return rows;
  }
}
