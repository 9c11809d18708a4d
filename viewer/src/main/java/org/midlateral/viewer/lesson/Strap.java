package org.midlateral.viewer.lesson;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.algorithm.ConvexHull;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.midlateral.mechanics.Loop;

/**
 * A strap laid taut round a section of finger and pieces: along their convex hull.
 *
 * @param line once round, y and n (mm)
 * @param rims where it leaves a piece for the skin, y and n (mm): two of an open trough, none where
 *     pieces are all round the finger
 */
record Strap(Loop line, List<Rim> rims) {
  private static final GeometryFactory FACTORY = new GeometryFactory();

  /** A point of the section (mm). */
  record Rim(double y, double n) {}

  Strap {
    rims = List.copyOf(rims);
  }

  /** How far it reaches to either side: y (mm). */
  double widest() {
    double most = 0;
    for (int i = 0; i < line.size(); i++) {
      most = Math.max(most, Math.abs(line.y(i)));
    }
    return most;
  }

  /** Round pieces and skin; which of the two a point is of stands in its third coordinate. */
  static Strap round(List<Loop> pieces, Loop skin) {
    List<Coordinate> points = new ArrayList<>();
    for (Loop piece : pieces) {
      add(piece, 1, points);
    }
    add(skin, 0, points);
    Coordinate[] hull =
        new ConvexHull(points.toArray(Coordinate[]::new), FACTORY).getConvexHull().getCoordinates();
    // The last point is the first again.
    int n = hull.length - 1;
    double[] yn = new double[2 * n];
    List<Rim> rims = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      yn[2 * i] = hull[i].getX();
      yn[2 * i + 1] = hull[i].getY();
      boolean leaves = hull[(i + 1) % n].getZ() == 0 || hull[(i + n - 1) % n].getZ() == 0;
      if (hull[i].getZ() == 1 && leaves) {
        rims.add(new Rim(hull[i].getX(), hull[i].getY()));
      }
    }
    return new Strap(new Loop(yn), rims);
  }

  private static void add(Loop loop, double of, List<Coordinate> points) {
    for (int i = 0; i < loop.size(); i++) {
      points.add(new Coordinate(loop.y(i), loop.n(i), of));
    }
  }
}
