package org.midlateral.viewer.view;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.midlateral.viewer.render.Orbit;
import org.midlateral.viewer.render.SceneItem;
import org.midlateral.viewer.render.SurfaceShape;

/** Where things of a scene are seen, as the rectangles about thin slices of them. */
final class CoveredStrips {
  /** Thickness of a slice along the finger (mm), wider than the triangles of any shape. */
  private static final double SLICE = 2.5;

  /** Of so many vertices one is looked at. */
  private static final int EVERY = 5;

  private CoveredStrips() {}

  /** The rectangles, in pixels. */
  static List<Rectangle2D> of(List<SceneItem> items, Orbit orbit, int width, int height) {
    List<Rectangle2D> all = new ArrayList<>();
    Vector3D right = orbit.right();
    Vector3D up = orbit.up();
    double pixel = orbit.pixel(width, height);
    for (SceneItem item : items) {
      Vector3D origin = orbit.project(item.place(), width, height);
      TreeMap<Integer, Rectangle2D> strips = new TreeMap<>();
      SurfaceShape shape = item.shape();
      int last = 0;
      Rectangle2D strip = null;
      for (int v = 0; v < shape.vertexCount(); v += EVERY) {
        double px = shape.at(v, 0);
        double py = shape.at(v, 1);
        double pz = shape.at(v, 2);
        double x =
            origin.getX() + (px * right.getX() + py * right.getY() + pz * right.getZ()) / pixel;
        double y = origin.getY() - (px * up.getX() + py * up.getY() + pz * up.getZ()) / pixel;
        int slice = (int) Math.floor(px / SLICE);
        // The next vertex mostly lies in the same one.
        if (strip == null || slice != last) {
          strip = strips.computeIfAbsent(slice, k -> new Rectangle2D.Double(x, y, 1, 1));
          last = slice;
        }
        strip.add(x, y);
      }
      all.addAll(strips.values());
    }
    return all;
  }
}
