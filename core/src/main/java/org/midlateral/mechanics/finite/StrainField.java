package org.midlateral.mechanics.finite;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.midlateral.mechanics.element.Facet;

/**
 * Strains at the nodes of both faces: a plane is laid through the strains at the middles of the
 * triangles around a node, which are where they are best, and read at the node (the patch recovery
 * of O. C. Zienkiewicz and J. Z. Zhu, Int. J. Numer. Methods Engrg. 33 (1992) 1331-1364). So an
 * edge gets what holds at the edge, not what holds half a triangle inside.
 */
public final class StrainField {
  /** Pull of the planes toward an even strain, where there are too few triangles for a slope. */
  private static final double PULL = 1e-3;

  private final ShellModel model;

  /** Extreme principal strain by node, front then back. */
  private final double[][] extreme = new double[2][];

  public StrainField(ShellResult result) {
    model = result.model();
    MeshCurvature bends = result.bends();
    Facet[] facets =
        IntStream.range(0, model.triangleCount())
            .parallel()
            .mapToObj(t -> model.facet(t))
            .toArray(Facet[]::new);
    double[][][] strains = new double[2][][];
    for (WallFace side : WallFace.values()) {
      strains[side.ordinal()] =
          IntStream.range(0, facets.length)
              .parallel()
              .mapToObj(t -> result.strainComponents(t, side))
              .toArray(double[][]::new);
      extreme[side.ordinal()] = new double[model.nodeCount()];
    }
    IntStream.range(0, model.nodeCount())
        .parallel()
        .forEach(i -> fit(i, bends.trianglesAround(i), facets, strains));
  }

  /** The principal strain furthest from zero at a node. */
  public double at(int node, WallFace side) {
    return extreme[side.ordinal()][node];
  }

  /** The largest principal strain at any node, without its sign. */
  public double largest() {
    return Arrays.stream(extreme).flatMapToDouble(Arrays::stream).map(Math::abs).max().orElse(0);
  }

  private void fit(int node, int[] around, Facet[] facets, double[][][] strains) {
    Vector3D normal = Vector3D.ZERO;
    for (int t : around) {
      normal = normal.add(model.areaNormal(t));
    }
    Vector3D n = normal.normalize();
    Vector3D e1 = n.orthogonal();
    Vector3D e2 = n.cross(e1);
    int rows = around.length + 2;
    DMatrixRMaj terms = new DMatrixRMaj(rows, 3);
    DMatrixRMaj values = new DMatrixRMaj(rows, 6);
    double size = Math.sqrt(normal.norm() / around.length);
    for (int r = 0; r < around.length; r++) {
      Vector3D arm = model.node(node).vectorTo(model.centroid(around[r]));
      double x = arm.dot(e1) / size;
      double y = arm.dot(e2) / size;
      double weight = 1 / (1 + x * x + y * y);
      terms.set(r, 0, weight);
      terms.set(r, 1, weight * x);
      terms.set(r, 2, weight * y);
      double[] axes = facets[around[r]].axes;
      Vector3D along = Vector3D.of(axes[0], axes[1], axes[2]);
      double turn = Math.atan2(along.dot(e2), along.dot(e1));
      for (int side = 0; side < 2; side++) {
        double[] turned = turned(strains[side][around[r]], turn);
        for (int k = 0; k < 3; k++) {
          values.set(r, 3 * side + k, weight * turned[k]);
        }
      }
    }
    terms.set(rows - 2, 1, PULL);
    terms.set(rows - 1, 2, PULL);
    DMatrixRMaj plane = new DMatrixRMaj(3, 6);
    CommonOps_DDRM.solve(terms, values, plane);
    for (int side = 0; side < 2; side++) {
      double[] here = {
        plane.get(0, 3 * side), plane.get(0, 3 * side + 1), plane.get(0, 3 * side + 2)
      };
      extreme[side][node] = furthest(here);
    }
  }

  /** The principal strain furthest from zero, with its sign, of xx, yy and xy (engineering). */
  private static double furthest(double[] strain) {
    double mean = (strain[0] + strain[1]) / 2;
    double radius = Math.hypot((strain[0] - strain[1]) / 2, strain[2] / 2);
    double major = mean + radius;
    double minor = mean - radius;
    return Math.abs(major) >= Math.abs(minor) ? major : minor;
  }

  /** The strains xx, yy, xy of axes that stand at an angle to the ones asked for. */
  private static double[] turned(double[] strain, double angle) {
    double mean = (strain[0] + strain[1]) / 2;
    double half = (strain[0] - strain[1]) / 2;
    double shear = strain[2] / 2;
    double c = Math.cos(2 * angle);
    double s = Math.sin(2 * angle);
    double turned = half * c - shear * s;
    return new double[] {mean + turned, mean - turned, 2 * (half * s + shear * c)};
  }
}
