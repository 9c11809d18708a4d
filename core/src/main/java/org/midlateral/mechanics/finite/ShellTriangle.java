package org.midlateral.mechanics.finite;

import org.midlateral.mechanics.element.BendingTriangle;
import org.midlateral.mechanics.element.Facet;
import org.midlateral.mechanics.element.Isotropic;
import org.midlateral.mechanics.element.MembraneTriangle;

/**
 * The shell element: stiffness and strains of one triangle in the global freedoms.
 *
 * <p>The energy is written as half the sum of squares of 33 weighted strains, so that the stiffness
 * is a sum of outer products of rows, symmetric and not indefinite, turned as a whole into the
 * global freedoms.
 *
 * <p>The wall is curved although the facet is flat. At a height z, lengths along a direction of
 * radius R are 1 + z/R of those on the mid-surface, and a wall that thins moves that height nearer;
 * both enter the strains at two Gauss points through the wall. Without them a trough whose wall is
 * a third of its radius comes out 3 % too soft.
 */
final class ShellTriangle {
  /** Numbers in the packed lower triangle of an 18 by 18 matrix. */
  static final int PACKED = 171;

  private static final double[][] EDGE_MIDDLES = {{.5, .5, 0}, {0, .5, .5}, {.5, 0, .5}};

  /** Heights of the two Gauss points as a share of the wall. */
  private static final double GAUSS = 0.5 / Math.sqrt(3);

  private static final double[] MIDDLE = {1 / 3.0, 1 / 3.0, 1 / 3.0};

  private final Facet facet;
  private final Isotropic material;
  private final double wall;
  private final double[] bend;
  private final MembraneTriangle membrane;
  private final BendingTriangle bending;

  /** The rows at hand, on the local freedoms: 18 would be made anew. */
  private final double[][] local = new double[3][18];

  ShellTriangle(ShellModel model, MeshCurvature bends, int triangle) {
    facet = model.facet(triangle);
    material = model.material();
    wall = model.meanThickness(triangle);
    bend = bends.at(triangle);
    membrane = new MembraneTriangle(facet);
    bending = new BendingTriangle(facet, wall, material.poisson());
  }

  /**
   * Writes the stiffness.
   *
   * @param out packed lower triangle by rows, {@link #PACKED} numbers
   * @param offset where it begins
   */
  void stiffness(double[] out, int offset) {
    double[] sum = new double[PACKED];
    double volume = facet.area * wall;
    double higher = volume * MembraneTriangle.higherShare(material.poisson());
    double shear = volume * material.shearModulus() * BendingTriangle.SHEAR_SHARE;
    double[][] stretch = membrane.basic();
    double[][][] edges = membrane.higher();
    for (int p = 0; p < 3; p++) {
      addPlane(edges[p], higher, sum);
      double[][] curvature = bending.curvature(EDGE_MIDDLES[p]);
      for (double height : new double[] {-GAUSS * wall, GAUSS * wall}) {
        strainAt(height, stretch, curvature);
        addPlane(local, volume / 6 * growth(height), sum);
      }
      double[][] slip = bending.shear(EDGE_MIDDLES[p]);
      addSquares(slip, new double[] {shear / 3, shear / 3}, sum);
    }
    turn(sum, out, offset);
  }

  /** The area at a height over the area on the mid-surface. */
  private double growth(double z) {
    return (1 + z * bend[0]) * (1 + z * bend[1]) - z * bend[2] * z * bend[2];
  }

  /**
   * Writes the local rows of the strains at a height z: (E + z K + z thinning B) (I + z B)^-1, its
   * symmetric part, with E and K the stretch and curvature of the mid-surface and B the surface's
   * own curvature.
   */
  private void strainAt(double z, double[][] stretch, double[][] curvature) {
    double growth = growth(z);
    double mx = (1 + z * bend[1]) / growth;
    double my = (1 + z * bend[0]) / growth;
    double mxy = -z * bend[2] / growth;
    double thinning = -material.poisson() / (1 - material.poisson());
    for (int c = 0; c < 18; c++) {
      double raised = z * thinning * (stretch[0][c] + stretch[1][c]);
      double xx = stretch[0][c] + z * curvature[0][c] + raised * bend[0];
      double yy = stretch[1][c] + z * curvature[1][c] + raised * bend[1];
      double half = (stretch[2][c] + z * curvature[2][c]) / 2 + raised * bend[2];
      local[0][c] = xx * mx + half * mxy;
      local[1][c] = yy * my + half * mxy;
      local[2][c] = (xx + yy) * mxy + half * (mx + my);
    }
  }

  /** Adds the energy of plane strains: sum, difference and shear do not couple. */
  private void addPlane(double[][] strain, double weight, double[] sum) {
    double nu = material.poisson();
    double bulk = weight * material.modulus() / (2 * (1 - nu));
    double shear = weight * material.shearModulus();
    for (int c = 0; c < 18; c++) {
      double xx = strain[0][c];
      double yy = strain[1][c];
      strain[0][c] = xx + yy;
      strain[1][c] = xx - yy;
    }
    addSquares(strain, new double[] {bulk, shear, shear}, sum);
  }

  /** Adds the squares of two or three rows, each with its weight. */
  private static void addSquares(double[][] rows, double[] weights, double[] sum) {
    double[] a = rows[0];
    double[] b = rows[1];
    boolean two = weights.length == 2;
    double[] c = two ? b : rows[2];
    double third = two ? 0 : weights[2];
    int at = 0;
    for (int i = 0; i < 18; i++) {
      double s = weights[0] * a[i];
      double t = weights[1] * b[i];
      double u = third * c[i];
      // Stretch and shear have half of the freedoms each.
      if (s != 0 || t != 0 || u != 0) {
        for (int j = 0; j <= i; j++) {
          sum[at + j] += s * a[j] + t * b[j] + u * c[j];
        }
      }
      at += i + 1;
    }
  }

  /** Writes a packed matrix on the local freedoms as that on the global ones, by 3 by 3 blocks. */
  private void turn(double[] sum, double[] out, int offset) {
    double[] e = facet.axes;
    double[] block = new double[9];
    double[] half = new double[9];
    for (int i = 0; i < 18; i += 3) {
      for (int j = 0; j <= i; j += 3) {
        for (int r = 0; r < 3; r++) {
          int row = (i + r) * (i + r + 1) / 2;
          for (int c = 0; c < 3; c++) {
            boolean below = i != j || c <= r;
            block[3 * r + c] = sum[below ? row + j + c : (i + c) * (i + c + 1) / 2 + j + r];
          }
        }
        for (int r = 0; r < 9; r += 3) {
          for (int c = 0; c < 3; c++) {
            half[r + c] = block[r] * e[c] + block[r + 1] * e[3 + c] + block[r + 2] * e[6 + c];
          }
        }
        for (int r = 0; r < 3; r++) {
          int row = offset + (i + r) * (i + r + 1) / 2 + j;
          int end = i == j ? r + 1 : 3;
          for (int c = 0; c < end; c++) {
            out[row + c] = e[r] * half[c] + e[3 + r] * half[3 + c] + e[6 + r] * half[6 + c];
          }
        }
      }
    }
  }

  /** Turns a row on the local freedoms into one on the global ones. */
  private void toGlobal(double[] row) {
    double[] e = facet.axes;
    for (int b = 0; b < 18; b += 3) {
      double x = row[b];
      double y = row[b + 1];
      double z = row[b + 2];
      row[b] = x * e[0] + y * e[3] + z * e[6];
      row[b + 1] = x * e[1] + y * e[4] + z * e[7];
      row[b + 2] = x * e[2] + y * e[5] + z * e[8];
    }
  }

  /**
   * The strains at the triangle's middle.
   *
   * @param moved the 18 displacements and rotations of the corners, global
   * @param height distance from the mid-surface toward the front (mm)
   * @return xx, yy, xy (engineering shear) in the facet's plane
   */
  double[] strain(double[] moved, double height) {
    strainAt(height, membrane.basic(), bending.curvature(MIDDLE));
    double[] strain = new double[3];
    for (int r = 0; r < 3; r++) {
      toGlobal(local[r]);
      for (int c = 0; c < 18; c++) {
        strain[r] += local[r][c] * moved[c];
      }
    }
    return strain;
  }
}
