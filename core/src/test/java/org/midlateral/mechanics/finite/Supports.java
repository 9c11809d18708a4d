package org.midlateral.mechanics.finite;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Collects constraints; a freedom held twice counts once. */
final class Supports {
  private final Map<List<Object>, Constraint> held = new LinkedHashMap<>();

  Supports hold(int[] nodes, DegreeOfFreedom... freedoms) {
    for (int node : nodes) {
      for (DegreeOfFreedom f : freedoms) {
        held.put(List.of(node, f), Constraint.fixed(node, f));
      }
    }
    return this;
  }

  Supports clamp(int[] nodes) {
    return hold(nodes, DegreeOfFreedom.values());
  }

  /** A plane of symmetry square to x, y or z (0, 1, 2). */
  Supports mirror(int[] nodes, int axis) {
    DegreeOfFreedom[] all = DegreeOfFreedom.values();
    return hold(nodes, all[axis], all[3 + (axis + 1) % 3], all[3 + (axis + 2) % 3]);
  }

  /** A diaphragm square to x: stiff in its plane, loose out of it. */
  Supports diaphragm(int[] nodes) {
    return hold(nodes, DegreeOfFreedom.ALONG_Y, DegreeOfFreedom.ALONG_Z, DegreeOfFreedom.ABOUT_X);
  }

  List<Constraint> list() {
    return List.copyOf(held.values());
  }
}
