package org.midlateral.viewer.view;

import java.awt.Point;
import java.awt.geom.Line2D;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleConsumer;
import java.util.function.Supplier;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.midlateral.digit.DigitSurface;
import org.midlateral.viewer.render.Orbit;
import org.midlateral.viewer.render.Projection;
import org.midlateral.viewer.scene.DesignShapes;
import org.midlateral.viewer.section.Stations;

/** The section's hoop, dragged along the finger. */
final class HoopDrag implements DragHandle {
  /** How near the pointer must be (px). */
  private static final double NEAR = 6;

  private static final double STEP = 0.25;

  private final DesignShapes design;
  private final Orbit orbit;
  private final int width;
  private final int height;
  private final DoubleConsumer onStation;

  /** From where the pointer is to where the hoop's middle is seen (px). */
  private final double offX;

  private final double offY;

  private HoopDrag(
      DesignShapes design,
      Orbit orbit,
      int width,
      int height,
      double offX,
      double offY,
      DoubleConsumer onStation) {
    this.design = design;
    this.orbit = orbit;
    this.width = width;
    this.height = height;
    this.offX = offX;
    this.offY = offY;
    this.onStation = onStation;
  }

  /**
   * The hoop, where the pointer is on it.
   *
   * @param station where it stands (mm)
   * @param inFront depth of what is met under the pointer (mm): the hoop behind that is not held;
   *     asked only where the pointer is near
   */
  static Optional<DragHandle> at(
      Point pointer,
      DesignShapes design,
      double station,
      Orbit orbit,
      int width,
      int height,
      Supplier<Optional<Double>> inFront,
      DoubleConsumer onStation) {
    List<Vector3D> path = Stations.hoopPath(design, station);
    Projection projection = orbit.projection(width, height);
    double depth = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < path.size(); i++) {
      Vector3D from = projection.of(path.get(i));
      Vector3D to = projection.of(path.get((i + 1) % path.size()));
      double away =
          Line2D.ptSegDist(from.getX(), from.getY(), to.getX(), to.getY(), pointer.x, pointer.y);
      if (away < NEAR) {
        depth = Math.max(depth, Math.max(from.getZ(), to.getZ()));
      }
    }
    boolean near = depth > Double.NEGATIVE_INFINITY;
    if (!near || inFront.get().orElse(Double.NEGATIVE_INFINITY) > depth) {
      return Optional.empty();
    }
    DigitSurface digit = design.orthosis().digit();
    Vector3D middle = projection.of(digit.centre(station));
    return Optional.of(
        new HoopDrag(
            design,
            orbit,
            width,
            height,
            middle.getX() - pointer.x,
            middle.getY() - pointer.y,
            onStation));
  }

  @Override
  public void dragTo(Point to) {
    DigitSurface digit = design.orthosis().digit();
    Projection projection = orbit.projection(width, height);
    double best = Double.NaN;
    double least = Double.POSITIVE_INFINITY;
    for (double s = Stations.first(design); s <= Stations.last(design); s += STEP) {
      Vector3D seen = projection.of(digit.centre(s));
      double away = Math.hypot(seen.getX() - to.x - offX, seen.getY() - to.y - offY);
      if (away < least) {
        least = away;
        best = s;
      }
    }
    onStation.accept(best);
  }

  @Override
  public void drop() {}
}
