package org.midlateral.mechanics.finite;

/**
 * The principal strains on one face of the wall, at a triangle's middle.
 *
 * @param triangle its number
 * @param major the larger (algebraically) principal strain in the face
 * @param minor the smaller one
 */
record SurfaceStrain(int triangle, double major, double minor) {

  static SurfaceStrain of(ShellResult result, int triangle, WallFace side) {
    double[] strain = result.strainComponents(triangle, side);
    double mean = (strain[0] + strain[1]) / 2;
    double radius = Math.hypot((strain[0] - strain[1]) / 2, strain[2] / 2);
    return new SurfaceStrain(triangle, mean + radius, mean - radius);
  }

  /** The principal strain furthest from zero on either face, over all triangles' middles. */
  static SurfaceStrain largest(ShellResult result) {
    SurfaceStrain largest = of(result, 0, WallFace.FRONT);
    for (int t = 0; t < result.model().triangleCount(); t++) {
      for (WallFace side : WallFace.values()) {
        SurfaceStrain s = of(result, t, side);
        if (Math.abs(s.extreme()) > Math.abs(largest.extreme())) {
          largest = s;
        }
      }
    }
    return largest;
  }

  /** The principal strain furthest from zero, with its sign. */
  double extreme() {
    return Math.abs(major) >= Math.abs(minor) ? major : minor;
  }
}
