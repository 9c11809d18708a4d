package org.midlateral.mechanics.held;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.midlateral.measurement.NotComputable;
import org.midlateral.mechanics.finite.ShellLoad;
import org.midlateral.mechanics.finite.ShellModel;

/**
 * A part of the trough's rim between two vertices of its edge.
 *
 * @param a one vertex of the edge
 * @param b the other
 * @param crestA the node on the crest beside the first
 * @param crestB the node on the crest beside the other
 * @param from where the part begins, as a share of the way from a to b
 * @param to where it ends
 */
record RimSegment(int a, int b, int crestA, int crestB, double from, double to) {
  /** A traction spread evenly round half a circle acts this share of its radius from the edge. */
  private static final double OUT = 2 / Math.PI;

  /** The trough's rim on one side of the finger (the sign of y) along a zone. */
  static List<RimSegment> of(FingerShell shell, HeldJoint.Zone zone, double side) {
    ShellLayer layer = shell.layer(0);
    List<RimSegment> parts = new ArrayList<>();
    for (int e = 0; e < layer.crest.length; e += 2) {
      int crestA = layer.crest[e];
      int crestB = layer.crest[e + 1];
      double low = layer.station[crestA];
      double rise = layer.station[crestB] - low;
      double one = (zone.from() - low) / rise;
      double other = (zone.to() - low) / rise;
      double from = Math.max(0, Math.min(one, other));
      double to = Math.min(1, Math.max(one, other));
      boolean outer = crestA - layer.inner < layer.solid.firstLoop();
      if (outer && layer.turn[crestA] * side > 0 && from < to) {
        parts.add(
            new RimSegment(crestA - layer.inner, crestB - layer.inner, crestA, crestB, from, to));
      }
    }
    return parts;
  }

  double length(ShellModel model) {
    return (to - from) * model.node(crestA).distance(model.node(crestB));
  }

  /**
   * An even traction round the rims of some parts (N in all).
   *
   * @throws NotComputable if there is no part
   */
  static ShellLoad load(ShellModel model, List<RimSegment> parts, Vector3D total)
      throws NotComputable {
    double length = 0;
    for (RimSegment part : parts) {
      length += part.length(model);
    }
    if (!(length > 0)) {
      throw new NotComputable("no rim to put the load on");
    }
    ShellLoad load = ShellLoad.none(model);
    for (RimSegment part : parts) {
      Vector3D force = total.multiply(part.length(model) / length);
      double second = (part.from + part.to) / 2;
      Vector3D out = force.multiply(OUT);
      Vector3D in = force.multiply(1 - OUT);
      load.add(part.a, in.multiply(1 - second));
      load.add(part.b, in.multiply(second));
      load.add(part.crestA, out.multiply(1 - second));
      load.add(part.crestB, out.multiply(second));
    }
    return load;
  }
}
