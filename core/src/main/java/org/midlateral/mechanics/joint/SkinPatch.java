package org.midlateral.mechanics.joint;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.midlateral.digit.Slice;
import org.midlateral.solid.Solid;

/**
 * A few square millimetres of a piece's inside that press as one on the skin under them.
 *
 * @param piece 0 the trough, 1 the dorsal shell
 * @param parts its vertices
 * @param station of its middle on the skin (mm)
 * @param radius of a circle as long as the skin's section there (mm)
 * @param place of it (mm)
 * @param angle of the skin there, 0 at the volar midline, positive toward +y (rad)
 * @param girth from the volar midline, positive toward +y (mm)
 * @param gap mean distance from skin to piece (mm)
 * @param area of skin (mm²)
 */
record SkinPatch(
    int piece,
    List<SkinVertex> parts,
    double station,
    double radius,
    Vector3D place,
    double angle,
    double girth,
    double gap,
    double area) {

  SkinPatch {
    parts = List.copyOf(parts);
  }

  /** Share of a part in the patch's area. */
  double share(SkinVertex part) {
    return part.area() / area;
  }

  /**
   * The patches of a piece: its vertices gathered in cells of station and girth, which lie alike on
   * both sides of its midline.
   *
   * @param size length and width of a cell (mm)
   * @param wanted which vertices take part
   */
  static List<SkinPatch> of(
      int piece,
      Solid solid,
      List<SkinVertex> vertices,
      double size,
      Predicate<SkinVertex> wanted) {
    Map<Long, List<SkinVertex>> cells = new TreeMap<>();
    for (SkinVertex v : vertices) {
      if (wanted.test(v) && v.area() > 0) {
        double radius = solid.piece().digit().circumference(v.station()) / (2 * Math.PI);
        long across = Math.round(solid.angle(v.vertex()) * radius / size);
        long along = Math.round(v.station() / size);
        cells.computeIfAbsent(along * 4096 + across, key -> new ArrayList<>()).add(v);
      }
    }
    return cells.values().stream().map(parts -> patch(piece, solid, parts)).toList();
  }

  private static SkinPatch patch(int piece, Solid solid, List<SkinVertex> parts) {
    double area = 0;
    double station = 0;
    double gap = 0;
    double y = 0;
    double volar = 0;
    for (SkinVertex v : parts) {
      area += v.area();
      station += v.area() * v.station();
      gap += v.area() * v.gap();
      y += v.area() * Math.sin(v.angle());
      volar += v.area() * Math.cos(v.angle());
    }
    double middle = station / area;
    double angle = Math.atan2(y, volar);
    Slice slice = solid.piece().digit().slice(middle);
    double radius = slice.circumference() / (2 * Math.PI);
    return new SkinPatch(
        piece,
        parts,
        middle,
        radius,
        slice.point(angle),
        angle,
        slice.girth(angle),
        gap / area,
        area);
  }
}
