package org.midlateral.mechanics.finite;

import java.util.Arrays;
import org.midlateral.measurement.NotComputable;
import org.midlateral.mechanics.element.Isotropic;

/** Shells of one thickness throughout, as handbooks have them. */
public final class UniformShell {
  private UniformShell() {}

  /**
   * The shell.
   *
   * @param xyz nodes on the mid-surface, n by 3, row-major (mm)
   * @param corners nodes of each triangle, m by 3, row-major
   * @param thickness the wall (mm), above 0
   */
  public static ShellModel of(double[] xyz, int[] corners, double thickness, Isotropic material) {
    double[] wall = new double[xyz.length / 3];
    Arrays.fill(wall, thickness);
    try {
      return ShellModel.of(xyz, corners, wall, material);
    } catch (NotComputable e) {
      // A test that lays a shell wrongly is itself wrong.
      throw new IllegalArgumentException(e.getMessage(), e);
    }
  }
}
