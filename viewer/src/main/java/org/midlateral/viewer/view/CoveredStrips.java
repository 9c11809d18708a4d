package org.midlateral.viewer.view;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.midlateral.viewer.render.Orbit;
import org.midlateral.viewer.render.Projection;
import org.midlateral.viewer.render.SceneItem;
import org.midlateral.viewer.render.SurfaceShape;

/** Where things of a scene are seen, as the rectangles about thin slices of them. */
final class CoveredStrips {
  /** Thickness of a slice along the finger (mm), wider than the triangles of any shape. */
  private static final double SLICE = 2.5;

  /** Of so many vertices one is looked at. */
  private static final int EVERY = 10;

  private CoveredStrips() {}

  /** The rectangles, in pixels. */
  static List<Rectangle2D> of(List<SceneItem> items, Orbit orbit, int width, int height) {
    List<Rectangle2D> all = new ArrayList<>();
    Projection seen = orbit.projection(width, height);
    for (SceneItem item : items) {
      Vector3D place = item.place();
      TreeMap<Double, Rectangle2D> strips = new TreeMap<>();
      SurfaceShape shape = item.shape();
      double from = Double.NaN;
      Rectangle2D strip = null;
      for (int v = 0; v < shape.vertexCount(); v += EVERY) {
        double px = shape.at(v, 0) + place.getX();
        double py = shape.at(v, 1) + place.getY();
        double pz = shape.at(v, 2) + place.getZ();
        double x = seen.x(px, py, pz);
        double y = seen.y(px, py, pz);
        // The next vertex mostly lies in the same slice.
        if (strip == null || px < from || px >= from + SLICE) {
          from = SLICE * Math.floor(px / SLICE);
          strip = strips.computeIfAbsent(from, k -> new Rectangle2D.Double(x, y, 1, 1));
        }
        strip.add(x, y);
      }
      all.addAll(strips.values());
    }
    return all;
  }
}
