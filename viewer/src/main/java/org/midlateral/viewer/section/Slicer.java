package org.midlateral.viewer.section;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.midlateral.viewer.stage.Shape;

/** Cuts a closed surface with a plane. */
final class Slicer {
  private final Shape shape;
  private final CutPlane plane;
  private final double[] height;

  private Slicer(Shape shape, CutPlane plane) {
    this.shape = shape;
    this.plane = plane;
    height = new double[shape.vertexCount()];
    for (int v = 0; v < height.length; v++) {
      double h = plane.height(shape.at(v, 0), shape.at(v, 1), shape.at(v, 2));
      // No vertex lies in the plane: one that does is counted as just distal of it.
      height[v] = h == 0 ? Double.MIN_NORMAL : h;
    }
  }

  /** The loops in which a plane meets a surface; none where it misses it. */
  static List<Loop> cut(Shape shape, CutPlane plane) {
    return new Slicer(shape, plane).loops();
  }

  private List<Loop> loops() {
    Map<Long, Long> next = new HashMap<>();
    for (int t = 0; t < shape.triangleCount(); t++) {
      link(t, next);
    }
    List<Loop> loops = new ArrayList<>();
    while (!next.isEmpty()) {
      List<Long> crossings = new ArrayList<>();
      Long at = next.keySet().iterator().next();
      while (at != null) {
        crossings.add(at);
        at = next.remove(at);
      }
      loops.add(loop(crossings.subList(0, crossings.size() - 1)));
    }
    return loops;
  }

  /** Links the crossing by which the outline enters a triangle to the one by which it leaves. */
  private void link(int t, Map<Long, Long> next) {
    long enter = -1;
    long leave = -1;
    for (int c = 0; c < 3; c++) {
      int a = shape.corner(t, c);
      int b = shape.corner(t, (c + 1) % 3);
      if (height[a] < 0 && height[b] > 0) {
        leave = crossing(a, b);
      } else if (height[a] > 0 && height[b] < 0) {
        enter = crossing(a, b);
      }
    }
    if (enter >= 0) {
      next.put(enter, leave);
    }
  }

  private static long crossing(int a, int b) {
    return (long) Math.min(a, b) << 32 | Math.max(a, b);
  }

  private Loop loop(List<Long> crossings) {
    double[] points = new double[2 * crossings.size()];
    for (int i = 0; i < crossings.size(); i++) {
      int a = (int) (crossings.get(i) >> 32);
      int b = (int) (long) crossings.get(i);
      double share = height[a] / (height[a] - height[b]);
      double x = shape.at(a, 0) + share * (shape.at(b, 0) - shape.at(a, 0));
      double y = shape.at(a, 1) + share * (shape.at(b, 1) - shape.at(a, 1));
      double z = shape.at(a, 2) + share * (shape.at(b, 2) - shape.at(a, 2));
      points[2 * i] = y;
      points[2 * i + 1] = plane.dorsal(x, y, z);
    }
    return new Loop(points);
  }
}
