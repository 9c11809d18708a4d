package org.midlateral.mechanics.closure;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.locationtech.jts.algorithm.ConvexHull;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.midlateral.digit.DigitSurface;
import org.midlateral.digit.Slice;
import org.midlateral.solid.Solid;
import org.midlateral.solid.TriangleMesh;

/** The girth of finger and orthosis together, with a taut thread laid round. */
public final class OuterGirth {
  /** Points of the skin's section; their hull is short of it by 2 parts in a million. */
  private static final int SKIN_POINTS = 720;

  private final DigitSurface digit;
  private final List<Solid> solids;

  /**
   * Of a finger that wears something.
   *
   * @param solids all that is worn; may be empty
   */
  public OuterGirth(DigitSurface digit, List<Solid> solids) {
    this.digit = digit;
    this.solids = List.copyOf(solids);
  }

  /** Length once round at a station (mm). */
  public double at(double station) {
    List<Coordinate> points = skin(station);
    for (Solid solid : solids) {
      points.addAll(cut(digit, solid.mesh(), station));
    }
    return new ConvexHull(points.toArray(Coordinate[]::new), new GeometryFactory())
        .getConvexHull()
        .getLength();
  }

  private List<Coordinate> skin(double station) {
    Slice slice = digit.slice(station);
    Vector3D centre = digit.centre(station);
    Vector3D dorsal = dorsal(digit, station);
    List<Coordinate> points = new ArrayList<>();
    double[] jet = new double[18];
    for (int i = 0; i < SKIN_POINTS; i++) {
      slice.jet(2 * Math.PI * i / SKIN_POINTS - Math.PI, jet);
      Vector3D off = centre.vectorTo(Vector3D.of(jet[0], jet[1], jet[2]));
      points.add(new Coordinate(off.getY(), off.dot(dorsal)));
    }
    return points;
  }

  /** The direction square to the centreline that points dorsally. */
  private static Vector3D dorsal(DigitSurface digit, double station) {
    return digit.tangent(station).cross(Vector3D.Unit.PLUS_Y);
  }

  /**
   * Where the edges of a mesh meet the plane square to the centreline at a station.
   *
   * @return x along y of the frame, y dorsally from the centreline (mm); two points for each
   *     triangle that is cut, one after the other
   */
  public static List<Coordinate> cut(DigitSurface digit, TriangleMesh mesh, double station) {
    Vector3D centre = digit.centre(station);
    Vector3D along = digit.tangent(station);
    Vector3D dorsal = dorsal(digit, station);
    double[] height = new double[mesh.vertexCount()];
    double level = centre.dot(along);
    for (int v = 0; v < height.length; v++) {
      height[v] =
          mesh.x(v) * along.getX() + mesh.y(v) * along.getY() + mesh.z(v) * along.getZ() - level;
    }
    List<Coordinate> points = new ArrayList<>();
    for (int t = 0; t < mesh.triangleCount(); t++) {
      int a = mesh.corner(t, 0);
      int b = mesh.corner(t, 1);
      int c = mesh.corner(t, 2);
      boolean below = height[a] < 0;
      if (below == height[b] < 0 && below == height[c] < 0) {
        continue;
      }
      cross(mesh, height, a, b, centre, dorsal, points);
      cross(mesh, height, b, c, centre, dorsal, points);
      cross(mesh, height, c, a, centre, dorsal, points);
    }
    return points;
  }

  private static void cross(
      TriangleMesh mesh,
      double[] height,
      int a,
      int b,
      Vector3D centre,
      Vector3D dorsal,
      List<Coordinate> points) {
    if (height[a] < 0 != height[b] < 0) {
      // From the lower to the higher number: both triangles of an edge find the same point.
      int from = Math.min(a, b);
      int to = Math.max(a, b);
      double share = height[from] / (height[from] - height[to]);
      Vector3D at = mesh.vertex(from).lerp(mesh.vertex(to), share);
      points.add(new Coordinate(at.getY(), centre.vectorTo(at).dot(dorsal)));
    }
  }
}
