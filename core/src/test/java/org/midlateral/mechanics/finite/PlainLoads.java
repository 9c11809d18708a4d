package org.midlateral.mechanics.finite;

import org.apache.commons.geometry.euclidean.threed.Vector3D;

/** The loads of published cases and closed forms. */
public final class PlainLoads {
  private PlainLoads() {}

  /**
   * A force and a moment on one node.
   *
   * @param force in global components (N)
   * @param moment in global components (N·mm)
   */
  public static ShellLoad atNode(ShellModel model, int node, Vector3D force, Vector3D moment) {
    ShellLoad load = ShellLoad.none(model);
    load.addTo(node, force, moment);
    return load;
  }

  /**
   * An even traction on some triangles, in one direction.
   *
   * @param triangles their numbers; one that stands twice is loaded twice
   * @param height where the traction acts: distance from the mid-surface toward the front, as a
   *     share of the wall; -0.5 is the back face, 0.5 the front. Its moment about the mid-surface
   *     is taken along.
   * @param total the sum of the forces (N)
   * @throws IllegalArgumentException if there is no triangle
   */
  public static ShellLoad onTriangles(
      ShellModel model, int[] triangles, double height, Vector3D total) {
    double area = 0;
    for (int t : triangles) {
      area += model.area(t);
    }
    if (!(area > 0)) {
      throw new IllegalArgumentException("no triangle to put the load on");
    }
    ShellLoad load = ShellLoad.none(model);
    for (int t : triangles) {
      Vector3D force = total.multiply(model.area(t) / area / 3);
      Vector3D arm = model.areaNormal(t).normalize().multiply(height * model.meanThickness(t));
      Vector3D moment = arm.cross(force);
      for (int c = 0; c < 3; c++) {
        load.addTo(model.corner(t, c), force, moment);
      }
    }
    return load;
  }

  /**
   * An even traction on the narrow face along some edges, in one direction.
   *
   * @param edges pairs of nodes, k by 2, row-major
   * @param total the sum of the forces (N)
   * @throws IllegalArgumentException if there is no edge
   */
  public static ShellLoad onEdges(ShellModel model, int[] edges, Vector3D total) {
    double area = 0;
    for (int e = 0; e < edges.length; e += 2) {
      area += edgeArea(model, edges[e], edges[e + 1]);
    }
    if (!(area > 0)) {
      throw new IllegalArgumentException("no edge to put the load on");
    }
    ShellLoad load = ShellLoad.none(model);
    for (int e = 0; e < edges.length; e += 2) {
      double share = edgeArea(model, edges[e], edges[e + 1]) / area / 2;
      load.addTo(edges[e], total.multiply(share), Vector3D.ZERO);
      load.addTo(edges[e + 1], total.multiply(share), Vector3D.ZERO);
    }
    return load;
  }

  private static double edgeArea(ShellModel model, int from, int to) {
    return model.node(from).distance(model.node(to))
        * (model.thickness(from) + model.thickness(to))
        / 2;
  }
}
