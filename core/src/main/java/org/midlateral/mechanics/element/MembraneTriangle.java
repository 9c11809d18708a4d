package org.midlateral.mechanics.element;

/**
 * Strains in the plane of a flat triangle with corner rotations: Felippa's optimal triangle (2003),
 * with his notation and corner numbers from 0.
 *
 * <p>The stiffness is a basic part, in which a constant strain does the work, and a higher part
 * made from the corner rotations less the rotation of the triangle as a whole. Both are given as
 * rows that turn the local freedoms (u, v, w, rotations about e1, e2, e3 at each corner: 18) into
 * strains (xx, yy, xy).
 */
public final class MembraneTriangle {
  /** Free factor of the basic part; 3/2 makes the triangle exact in bending in its plane. */
  private static final double ALPHA = 1.5;

  /** The optimal higher strains at corner 0 from the three rotations, by edge. */
  private static final double[][] BETA = {{1, 2, 1}, {0, 1, -1}, {-1, -1, -2}};

  /** The sum of two neighbours' (corner, corner + 1), by edge and rotation. */
  private static final double[][][] SUMS = sums();

  private final Facet facet;

  public MembraneTriangle(Facet facet) {
    this.facet = facet;
  }

  /** The constant strain, 3 by 18; exact at the triangle's middle. */
  public double[][] basic() {
    double[][] rows = new double[3][18];
    double scale = 1 / (2 * facet.area);
    for (int i = 0; i < 3; i++) {
      int j = i + 1;
      int k = i + 2;
      double yjk = facet.dy(j, k);
      double xkj = facet.dx(k, j);
      rows[0][6 * i] = scale * yjk;
      rows[1][6 * i + 1] = scale * xkj;
      rows[2][6 * i] = scale * xkj;
      rows[2][6 * i + 1] = scale * yjk;
      double yik = facet.dy(i, k);
      double yji = facet.dy(j, i);
      double xki = facet.dx(k, i);
      double xij = facet.dx(i, j);
      rows[0][6 * i + 5] = scale * ALPHA / 6 * yjk * (yik - yji);
      rows[1][6 * i + 5] = scale * ALPHA / 6 * xkj * (xki - xij);
      rows[2][6 * i + 5] = scale * ALPHA / 3 * (xki * yik - xij * yji);
    }
    return rows;
  }

  /** The share of the higher part that is optimal for a material. */
  public static double higherShare(double poisson) {
    return 0.75 * Math.max(0.5 * (1 - 4 * poisson * poisson), 0.01);
  }

  /** The higher strains at the middle of each edge (corner, corner + 1), 3 by 3 by 18. */
  public double[][][] higher() {
    double[][] fromNatural = fromNatural();
    double[] whole = wholeRotation();
    double[][][] higher = new double[3][3][18];
    for (int corner = 0; corner < 3; corner++) {
      for (int edge = 0; edge < 3; edge++) {
        double dx = facet.dx(edge + 1, edge);
        double dy = facet.dy(edge + 1, edge);
        double scale = facet.area / (3 * (dx * dx + dy * dy));
        for (int r = 0; r < 3; r++) {
          double natural = scale * SUMS[corner][edge][r];
          for (int strain = 0; strain < 3; strain++) {
            higher[corner][strain][6 * r + 5] += fromNatural[strain][edge] * natural;
          }
        }
      }
      for (double[] row : higher[corner]) {
        double all = row[5] + row[11] + row[17];
        for (int c = 0; c < 18; c += 6) {
          row[c] = all * whole[c / 3];
          row[c + 1] = all * whole[c / 3 + 1];
        }
      }
    }
    return higher;
  }

  private static double[][][] sums() {
    double[][][] sums = new double[3][3][3];
    for (int corner = 0; corner < 3; corner++) {
      for (int edge = 0; edge < 3; edge++) {
        for (int r = 0; r < 3; r++) {
          sums[corner][edge][r] = at(corner, edge, r) + at(corner + 1, edge, r);
        }
      }
    }
    return sums;
  }

  /** The optimal coefficient at a corner: corner 0's pattern, turned. */
  private static double at(int corner, int edge, int rotation) {
    int c = corner % 3;
    return BETA[(edge - c + 3) % 3][(rotation - c + 3) % 3];
  }

  /** Strains along the three edges into xx, yy and xy. */
  private double[][] fromNatural() {
    double[][] t = new double[3][3];
    double scale = 1 / (4 * facet.area * facet.area);
    for (int edge = 0; edge < 3; edge++) {
      int i = edge;
      int j = edge + 1;
      int k = edge + 2;
      double dx = facet.dx(j, i);
      double dy = facet.dy(j, i);
      double s = scale * (dx * dx + dy * dy);
      t[0][edge] = s * facet.dy(j, k) * facet.dy(i, k);
      t[1][edge] = s * facet.dx(j, k) * facet.dx(i, k);
      t[2][edge] = s * (facet.dy(j, k) * facet.dx(k, i) + facet.dx(k, j) * facet.dy(i, k));
    }
    return t;
  }

  /** What u and v of each corner take off its rotation: the triangle's own as a whole; 6. */
  private double[] wholeRotation() {
    double[] row = new double[6];
    double scale = 1 / (4 * facet.area);
    for (int i = 0; i < 3; i++) {
      row[2 * i] = scale * facet.dx(i + 2, i + 1);
      row[2 * i + 1] = scale * facet.dy(i + 2, i + 1);
    }
    return row;
  }
}
