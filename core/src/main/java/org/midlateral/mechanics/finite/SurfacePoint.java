package org.midlateral.mechanics.finite;

import org.apache.commons.geometry.euclidean.threed.Vector3D;

/**
 * A point in a triangle.
 *
 * @param triangle its number
 * @param weights of the triangle's corners; their sum is 1
 */
public record SurfacePoint(int triangle, double[] weights) {

  /** How far the point lies inside, as a share of a height; negative outside. */
  public double depth() {
    return Math.min(weights[0], Math.min(weights[1], weights[2]));
  }

  /** How far the point moves: exact for even bending, as in {@link Tie}. */
  public Vector3D displacement(ShellModel model, Motion motion) {
    Vector3D place = model.at(triangle, weights);
    Vector3D moved = Vector3D.ZERO;
    for (int c = 0; c < 3; c++) {
      int node = model.corner(triangle, c);
      Vector3D arm = model.node(node).vectorTo(place).multiply(0.5);
      moved = moved.add(motion.at(node, arm).multiply(weights[c]));
    }
    return moved;
  }

  /** How a point at an arm (mm) from a node moves with it (mm). */
  public interface Motion {
    Vector3D at(int node, Vector3D arm);
  }
}
