package org.midlateral.mechanics.finite;

/**
 * The shell element: stiffness and strains of one triangle in the global freedoms.
 *
 * <p>The energy is written as half the sum of squares of 27 weighted strains, so that the stiffness
 * is a sum of outer products of rows: symmetric and never indefinite, whatever the rounding.
 */
final class ShellTriangle {
  /** Numbers in the packed lower triangle of an 18 by 18 matrix. */
  static final int PACKED = 171;

  private static final double[][] EDGE_MIDDLES = {{.5, .5, 0}, {0, .5, .5}, {.5, 0, .5}};
  private static final double[] MIDDLE = {1 / 3.0, 1 / 3.0, 1 / 3.0};

  private final Facet facet;
  private final Isotropic material;
  private final double wall;
  private final MembraneTriangle membrane;
  private final BendingTriangle bending;

  ShellTriangle(ShellModel model, int triangle) {
    facet = new Facet(model, triangle);
    material = model.material();
    wall = model.meanThickness(triangle);
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
    java.util.Arrays.fill(out, offset, offset + PACKED, 0);
    double volume = facet.area * wall;
    double inertia = volume * wall * wall / 12;
    double higher = volume * MembraneTriangle.higherShare(material.poisson());
    double shear = volume * material.shearModulus() * BendingTriangle.SHEAR_SHARE;
    addPlane(membrane.basic(), volume, out, offset);
    for (int p = 0; p < 3; p++) {
      addPlane(membrane.higher(p), higher, out, offset);
      addPlane(bending.curvature(EDGE_MIDDLES[p]), inertia / 3, out, offset);
      for (double[] row : bending.shear(EDGE_MIDDLES[p])) {
        addSquare(row, shear / 3, out, offset);
      }
    }
  }

  /** Adds the energy of plane strains: sum, difference and shear do not couple. */
  private void addPlane(double[][] strain, double weight, double[] out, int offset) {
    double nu = material.poisson();
    double bulk = weight * material.modulus() / (2 * (1 - nu));
    double shear = weight * material.shearModulus();
    for (int c = 0; c < 18; c++) {
      double xx = strain[0][c];
      double yy = strain[1][c];
      strain[0][c] = xx + yy;
      strain[1][c] = xx - yy;
    }
    addSquare(strain[0], bulk, out, offset);
    addSquare(strain[1], shear, out, offset);
    addSquare(strain[2], shear, out, offset);
  }

  private void addSquare(double[] local, double weight, double[] out, int offset) {
    double[] row = toGlobal(local);
    int at = offset;
    for (int i = 0; i < 18; i++) {
      double factor = weight * row[i];
      for (int j = 0; j <= i; j++) {
        out[at + j] += factor * row[j];
      }
      at += i + 1;
    }
  }

  /** A row on the local freedoms as a row on the global ones. */
  private double[] toGlobal(double[] local) {
    double[] row = new double[18];
    double[] e = facet.axes;
    for (int b = 0; b < 18; b += 3) {
      for (int k = 0; k < 3; k++) {
        row[b + k] = local[b] * e[k] + local[b + 1] * e[3 + k] + local[b + 2] * e[6 + k];
      }
    }
    return row;
  }

  /**
   * The strains at the triangle's middle.
   *
   * @param moved the 18 displacements and rotations of the corners, global
   * @param height distance from the mid-surface toward the front (mm)
   * @return xx, yy, xy (engineering shear) in the facet's plane
   */
  double[] strain(double[] moved, double height) {
    double[][] stretch = membrane.basic();
    double[][] curvature = bending.curvature(MIDDLE);
    double[] strain = new double[3];
    for (int r = 0; r < 3; r++) {
      double[] s = toGlobal(stretch[r]);
      double[] k = toGlobal(curvature[r]);
      for (int c = 0; c < 18; c++) {
        strain[r] += (s[c] + height * k[c]) * moved[c];
      }
    }
    return strain;
  }
}
