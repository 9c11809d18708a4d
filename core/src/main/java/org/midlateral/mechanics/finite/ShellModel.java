package org.midlateral.mechanics.finite;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.midlateral.measurement.NotComputable;
import org.midlateral.mechanics.element.Facet;
import org.midlateral.mechanics.element.Isotropic;

/**
 * A shell's mid-surface in triangles, its wall and its material. Immutable.
 *
 * <p>Every node belongs to at least one triangle and no triangle is degenerate; the front face of a
 * triangle is the one from which its corners run counter-clockwise.
 */
public final class ShellModel {
  private final double[] xyz;
  private final int[] corners;
  private final double[] thickness;
  private final Isotropic material;

  /** By node; null for one with freedoms of its own. */
  private final Tie[] ties;

  private ShellModel(double[] xyz, int[] corners, double[] thickness, Isotropic material) {
    this.xyz = xyz.clone();
    this.corners = corners.clone();
    this.thickness = thickness.clone();
    this.material = material;
    this.ties = new Tie[thickness.length];
    checkSizes();
    checkCorners();
  }

  /**
   * A shell.
   *
   * @param xyz nodes on the mid-surface, n by 3, row-major (mm)
   * @param corners nodes of each triangle, m by 3, row-major
   * @param thickness wall at each node, n values (mm)
   * @param material of the whole piece
   * @throws IllegalArgumentException if the arrays do not fit together, or a node belongs to no
   *     triangle
   * @throws NotComputable if a place is not finite, a wall is not positive or a triangle is
   *     degenerate
   */
  public static ShellModel of(double[] xyz, int[] corners, double[] thickness, Isotropic material)
      throws NotComputable {
    ShellModel model = new ShellModel(xyz, corners, thickness, material);
    Optional<String> fault = model.fault();
    if (fault.isPresent()) {
      throw new NotComputable(fault.get());
    }
    return model;
  }

  private ShellModel(ShellModel bare, List<Tie> ties) {
    xyz = bare.xyz;
    corners = bare.corners;
    thickness = bare.thickness;
    material = bare.material;
    this.ties = bare.ties.clone();
    for (Tie tie : ties) {
      this.ties[tie.node()] = tie;
    }
    for (Tie tie : ties) {
      for (int leader : tie.leaders()) {
        if (this.ties[leader] != null) {
          throw new IllegalArgumentException("node " + leader + " leads and follows");
        }
      }
    }
  }

  /**
   * The same shell with some nodes bonded to another layer.
   *
   * @param ties no node may both lead and follow
   */
  public ShellModel tied(List<Tie> ties) {
    return new ShellModel(this, ties);
  }

  /** What a node follows; null where it has freedoms of its own. */
  Tie tie(int node) {
    return ties[node];
  }

  public int nodeCount() {
    return thickness.length;
  }

  public int triangleCount() {
    return corners.length / 3;
  }

  public Isotropic material() {
    return material;
  }

  /** A node's place on the mid-surface (mm). */
  public Vector3D node(int node) {
    return Vector3D.of(xyz[3 * node], xyz[3 * node + 1], xyz[3 * node + 2]);
  }

  /**
   * The node at a corner of a triangle.
   *
   * @param triangle 0 to triangleCount - 1
   * @param corner 0, 1 or 2
   */
  public int corner(int triangle, int corner) {
    return corners[3 * triangle + corner];
  }

  /** The wall at a node (mm). */
  public double thickness(int node) {
    return thickness[node];
  }

  /** The mean wall of a triangle's three corners (mm). */
  public double meanThickness(int triangle) {
    return (thickness[corner(triangle, 0)]
            + thickness[corner(triangle, 1)]
            + thickness[corner(triangle, 2)])
        / 3;
  }

  /**
   * A point of a triangle (mm).
   *
   * @param weights of its three corners; their sum is 1
   */
  public Vector3D at(int triangle, double[] weights) {
    return node(corner(triangle, 0))
        .multiply(weights[0])
        .add(node(corner(triangle, 1)).multiply(weights[1]))
        .add(node(corner(triangle, 2)).multiply(weights[2]));
  }

  /** The middle of a triangle (mm). */
  public Vector3D centroid(int triangle) {
    return node(corner(triangle, 0))
        .add(node(corner(triangle, 1)))
        .add(node(corner(triangle, 2)))
        .multiply(1 / 3.0);
  }

  /** A triangle's normal, of length twice its area (mm²), toward the front. */
  public Vector3D areaNormal(int triangle) {
    int a = 3 * corner(triangle, 0);
    int b = 3 * corner(triangle, 1);
    int c = 3 * corner(triangle, 2);
    double x1 = xyz[b] - xyz[a];
    double y1 = xyz[b + 1] - xyz[a + 1];
    double z1 = xyz[b + 2] - xyz[a + 2];
    double x2 = xyz[c] - xyz[a];
    double y2 = xyz[c + 1] - xyz[a + 1];
    double z2 = xyz[c + 2] - xyz[a + 2];
    return Vector3D.of(y1 * z2 - z1 * y2, z1 * x2 - x1 * z2, x1 * y2 - y1 * x2);
  }

  /** A triangle's area (mm²). */
  public double area(int triangle) {
    return areaNormal(triangle).norm() / 2;
  }

  /** Index into an array of 3 numbers a node, without making a vector. */
  public double coordinate(int node, int axis) {
    return xyz[3 * node + axis];
  }

  private void checkSizes() {
    if (xyz.length != 3 * thickness.length || corners.length % 3 != 0 || corners.length == 0) {
      throw new IllegalArgumentException(
          "need three coordinates and one thickness a node, and three corners a triangle; got "
              + String.format(
                  Locale.ROOT,
                  "%d coordinates, %d thicknesses, %d corners",
                  xyz.length,
                  thickness.length,
                  corners.length));
    }
  }

  private void checkCorners() {
    boolean[] used = new boolean[nodeCount()];
    for (int c : corners) {
      if (c < 0 || c >= used.length) {
        throw new IllegalArgumentException("a triangle names node " + c + " of " + used.length);
      }
      used[c] = true;
    }
    for (int i = 0; i < used.length; i++) {
      if (!used[i]) {
        throw new IllegalArgumentException("node " + i + " belongs to no triangle");
      }
    }
  }

  /** The first node or triangle that makes no surface, if there is one. */
  private Optional<String> fault() {
    for (int i = 0; i < thickness.length; i++) {
      if (!(thickness[i] > 0) || !node(i).isFinite()) {
        return Optional.of(
            "node " + i + ": place must be finite and thickness above 0, not " + thickness[i]);
      }
    }
    for (int t = 0; t < triangleCount(); t++) {
      Vector3D a = node(corner(t, 0));
      double longest = Math.max(a.distance(node(corner(t, 1))), a.distance(node(corner(t, 2))));
      if (!(area(t) > 1e-9 * longest * longest)) {
        return Optional.of("triangle " + t + " has no area");
      }
    }
    return Optional.empty();
  }

  /**
   * A tie that bonds a node to a triangle.
   *
   * @param weights of the triangle's corners at the foot
   */
  public Tie bond(int triangle, double[] weights, int node) {
    Vector3D foot = at(triangle, weights);
    Vector3D off = foot.vectorTo(node(node));
    int[] leaders = new int[3];
    Vector3D[] arms = new Vector3D[3];
    for (int c = 0; c < 3; c++) {
      leaders[c] = corner(triangle, c);
      arms[c] = node(leaders[c]).vectorTo(foot).multiply(0.5).add(off);
    }
    return new Tie(node, leaders, weights.clone(), List.of(arms));
  }

  /** A triangle in its own plane. */
  Facet facet(int triangle) {
    double[] corners = new double[9];
    for (int c = 0; c < 3; c++) {
      System.arraycopy(xyz, 3 * corner(triangle, c), corners, 3 * c, 3);
    }
    return new Facet(corners);
  }
}
