package org.midlateral.mechanics.joint;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.midlateral.digit.Slice;
import org.midlateral.mesh.TriangleMesh;
import org.midlateral.piece.Piece;
import org.midlateral.solid.Solid;

/**
 * A vertex of a piece's inner surface, the skin under it, and its share of the surface.
 *
 * @param vertex its number
 * @param station on the skin (mm)
 * @param angle of the skin, 0 at the volar midline, positive toward +y (rad)
 * @param girth from the volar midline, positive toward +y (mm)
 * @param skin the point of the skin (mm)
 * @param out the skin's normal there
 * @param gap from skin to piece along it (mm)
 * @param area of skin (mm²)
 */
record SkinVertex(
    int vertex,
    double station,
    double angle,
    double girth,
    Vector3D skin,
    Vector3D out,
    double gap,
    double area) {

  /** The place on the inside of the piece (mm). */
  Vector3D inside() {
    return skin.add(out.multiply(gap));
  }

  /** All vertices of a piece's inner surface. */
  static List<SkinVertex> of(Solid solid) {
    Piece piece = solid.piece();
    int n = solid.innerVertices();
    Vector3D[] skin = new Vector3D[n];
    Vector3D[] out = new Vector3D[n];
    double[] angle = new double[n];
    double[] girth = new double[n];
    for (int i = 0; i < n; i++) {
      angle[i] = piece.midline().skinAngle(solid.angle(i));
      Slice slice = piece.digit().slice(solid.station(i));
      skin[i] = slice.point(angle[i]);
      out[i] = slice.normal(angle[i]);
      girth[i] = slice.girth(angle[i]);
    }
    double[] area = areas(solid, skin);
    List<SkinVertex> vertices = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      double gap = piece.gap().at(girth[i], solid.station(i));
      vertices.add(
          new SkinVertex(i, solid.station(i), angle[i], girth[i], skin[i], out[i], gap, area[i]));
    }
    return vertices;
  }

  private static double[] areas(Solid solid, Vector3D[] skin) {
    double[] area = new double[skin.length];
    TriangleMesh mesh = solid.mesh();
    for (int t = 0; t < solid.innerTriangles(); t++) {
      int a = mesh.corner(t, 0);
      int b = mesh.corner(t, 1);
      int c = mesh.corner(t, 2);
      double third = skin[a].vectorTo(skin[b]).cross(skin[a].vectorTo(skin[c])).norm() / 6;
      area[a] += third;
      area[b] += third;
      area[c] += third;
    }
    return area;
  }
}
