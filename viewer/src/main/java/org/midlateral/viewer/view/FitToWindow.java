package org.midlateral.viewer.view;

import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.midlateral.viewer.render.Orbit;
import org.midlateral.viewer.render.SceneItem;

/** Brings all that is shown into the window. */
final class FitToWindow {
  /** Room left for names and scale, as a share of the window. */
  private static final double MARGIN = 1.3;

  private FitToWindow() {}

  /** The view from the same side in which all items fill a window of some size. */
  static Orbit of(List<SceneItem> items, Orbit from, int width, int height) {
    Vector3D toRight = from.right();
    Vector3D toUp = from.up();
    double left = Double.POSITIVE_INFINITY;
    double right = Double.NEGATIVE_INFINITY;
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (SceneItem item : items) {
      for (int v = 0; v < item.shape().vertexCount(); v++) {
        Vector3D p =
            Vector3D.of(item.shape().at(v, 0), item.shape().at(v, 1), item.shape().at(v, 2))
                .add(item.place());
        double x = p.dot(toRight);
        double y = p.dot(toUp);
        left = Math.min(left, x);
        right = Math.max(right, x);
        low = Math.min(low, y);
        high = Math.max(high, y);
      }
    }
    if (left > right) {
      return from;
    }
    Vector3D middle = Vector3D.ZERO.add((left + right) / 2, toRight).add((low + high) / 2, toUp);
    double shorter = Math.min(width, height);
    double span =
        MARGIN / 2 * Math.max((right - left) * shorter / width, (high - low) * shorter / height);
    return from.withTarget(middle).withSpan(span);
  }
}
