package org.midlateral.mechanics.finite;

/**
 * The principal strains on one face of the wall, at a triangle's middle.
 *
 * @param triangle its number
 * @param side which face
 * @param major the larger (algebraically) principal strain in the face
 * @param minor the smaller one
 */
public record SurfaceStrain(int triangle, WallFace side, double major, double minor) {

  static SurfaceStrain of(int triangle, WallFace side, double[] strain) {
    double mean = (strain[0] + strain[1]) / 2;
    double radius = Math.hypot((strain[0] - strain[1]) / 2, strain[2] / 2);
    return new SurfaceStrain(triangle, side, mean + radius, mean - radius);
  }

  /** The principal strain furthest from zero, with its sign. */
  public double extreme() {
    return Math.abs(major) >= Math.abs(minor) ? major : minor;
  }
}
