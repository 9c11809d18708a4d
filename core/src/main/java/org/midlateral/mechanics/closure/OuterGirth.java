package org.midlateral.mechanics.closure;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.locationtech.jts.algorithm.ConvexHull;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.midlateral.digit.DigitSurface;
import org.midlateral.digit.Slice;
import org.midlateral.mechanics.Loop;
import org.midlateral.mechanics.MeshCut;
import org.midlateral.mechanics.SectionPlane;
import org.midlateral.solid.Solid;

/** The girth of finger and orthosis together, with a taut thread laid round. */
public final class OuterGirth {
  /** Points of the skin's section; their hull is short of it by 2 parts in a million. */
  private static final int SKIN_POINTS = 720;

  private final DigitSurface digit;
  private final List<MeshCut> cuts;

  /**
   * Of a finger that wears something.
   *
   * @param solids all that is worn; may be empty
   */
  public OuterGirth(DigitSurface digit, List<Solid> solids) {
    this.digit = digit;
    this.cuts = solids.stream().map(solid -> MeshCut.of(solid.mesh())).toList();
  }

  /** Length once round at a station (mm). */
  public double at(double station) {
    List<Coordinate> points = skin(station);
    for (MeshCut cut : cuts) {
      for (Loop loop : cut.at(SectionPlane.at(digit, station))) {
        for (int i = 0; i < loop.size(); i++) {
          points.add(new Coordinate(loop.y(i), loop.n(i)));
        }
      }
    }
    return new ConvexHull(points.toArray(Coordinate[]::new), new GeometryFactory())
        .getConvexHull()
        .getLength();
  }

  private List<Coordinate> skin(double station) {
    Slice slice = digit.slice(station);
    SectionPlane plane = SectionPlane.at(digit, station);
    Vector3D dorsal = plane.dorsal();
    List<Coordinate> points = new ArrayList<>();
    for (int i = 0; i < SKIN_POINTS; i++) {
      Vector3D off = plane.origin().vectorTo(slice.point(2 * Math.PI * i / SKIN_POINTS - Math.PI));
      points.add(new Coordinate(off.getY(), off.dot(dorsal)));
    }
    return points;
  }
}
