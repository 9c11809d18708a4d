package org.midlateral.document.pattern;

import org.midlateral.digit.Slice;
import org.midlateral.mesh.TriangleMesh;
import org.midlateral.solid.Solid;

/**
 * The surface midway between inside and outside of a piece, as triangles over the unrolled plane.
 *
 * @param mesh the surface (mm), its triangles counter-clockwise over the unrolled plane
 * @param girth of each vertex on the skin under it, from the piece's midline (mm)
 * @param station of each vertex (mm)
 */
public record MidSurface(TriangleMesh mesh, Values girth, Values station) {

  /** One number for each vertex. */
  @FunctionalInterface
  public interface Values {
    double at(int vertex);
  }

  /** The middle of a solid. */
  public static MidSurface of(Solid solid) {
    // The outer surface's triangles: counter-clockwise seen from outside, as in the plane.
    TriangleMesh outer = solid.outer();
    double[] middle = outer.coordinates();
    double[] inner = solid.inner().coordinates();
    for (int i = 0; i < middle.length; i++) {
      middle[i] = (middle[i] + inner[i]) / 2;
    }
    double[] girth = new double[outer.vertexCount()];
    for (int v = 0; v < girth.length; v++) {
      Slice slice = solid.piece().digit().slice(solid.station(v));
      girth[v] = solid.piece().midline().girth(slice, solid.angle(v));
    }
    return new MidSurface(
        new TriangleMesh(middle, outer.triangles()), v -> girth[v], solid::station);
  }
}
